package sheathwright.cutting.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;

/** The same of three hard lists of a hundred pieces and more, of which patterns are but sampled. */
public final class LargeSheetWork implements BiFunction<Path, Long, List<long[]>> {

  private static final List<String> LISTS =
      List.of("small24_n100_s1", "roof16_n200_s2", "small16_n200_s2");

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    return SheetWork.orders(folder, LISTS).stream()
        .map(order -> SheetWork.measured(order, turns))
        .toList();
  }
}
