package sheathwright.cutting.stick;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import sheathwright.tuning.Turns;

/** Cost, bound and work of our stick lists and of half of the hardest published ones. */
public final class StickWork implements BiFunction<Path, Long, List<long[]>> {

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<StickList> lists = new ArrayList<>(StickList.priced(StickList.OURS));
    List<StickList> hard = StickList.published(folder, "hard28");
    lists.addAll(hard.subList(0, hard.size() / 2));
    return lists.stream().map(list -> measured(list.order(), turns)).toList();
  }

  static long[] measured(StickOrder order, long turns) {
    long start = Turns.done;
    StickPlan plan = StickCutting.plan(order, () -> (turns - Turns.done + start) / 1e6);
    return new long[] {plan.cost(), plan.atLeast(), Turns.done - start};
  }
}
