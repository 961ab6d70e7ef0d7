package sheathwright.cutting.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The same of invented orders of 3 to 32 small patches, of which many come from one sheet. */
public final class SmallPatchesWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int ORDERS = 30;

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    return IntStream.range(0, ORDERS)
        .mapToObj(
            order ->
                SheetWork.measured(
                    FineSheetsWork.order(new Random(order), 3 + order, 12, 10), turns))
        .toList();
  }
}
