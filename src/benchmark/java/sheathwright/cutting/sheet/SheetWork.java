package sheathwright.cutting.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import sheathwright.tuning.Turns;

/**
 * Sheets, bound and work of the hard ones among our sheet lists and the published ones; then the
 * number of cuts, and the largest rest in thousandths of a sheet.
 */
public final class SheetWork implements BiFunction<Path, Long, List<long[]>> {

  /** Those that take more than twenty million turns. */
  private static final List<String> HARD =
      List.of(
          ("small16_n20_s1 roof16_n50_s1 small16_n50_s1 roof16_n200_s1 small24_n50_s1 "
                  + "small24_n100_s1 roof24_n200_s1 small24_n200_s1 small16_n20_s2 roof16_n200_s2 "
                  + "small16_n200_s2 small24_n200_s2 CLASS01_020_03 CLASS01_040_03 CLASS01_100_01 "
                  + "CLASS02_040_01 CLASS03_020_01 CLASS03_020_02 CLASS03_020_03 CLASS03_020_05 "
                  + "CLASS03_040_01 CLASS03_040_02 CLASS03_100_01 CLASS05_020_01 CLASS05_020_02 "
                  + "CLASS05_020_05 CLASS05_040_03 CLASS05_040_04 CLASS05_040_05 CLASS05_100_01 "
                  + "CLASS06_040_02 CLASS07_040_02 CLASS07_040_03 CLASS07_040_05 CLASS07_100_01 "
                  + "CLASS08_020_02 CLASS08_040_01 CLASS08_040_02 CLASS08_040_03 CLASS08_100_01 "
                  + "CLASS09_040_01 CLASS09_040_03 CLASS10_020_04 CLASS10_040_02 CLASS10_100_01 gcut11")
              .split(" "));

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    return orders(folder).stream().map(order -> measured(order, turns)).toList();
  }

  /** The hard lists. */
  static List<SheetOrder> orders(Path folder) {
    return orders(folder, HARD);
  }

  static List<SheetOrder> orders(Path folder, List<String> names) {
    Map<String, SheetOrder> orders = new LinkedHashMap<>();
    try {
      orders.putAll(SheetInstances.orders(SheetInstances.resource("domain_2d.txt")));
      for (String set : List.of("class", "gcut")) {
        orders.putAll(
            SheetInstances.orders(SheetInstances.file(folder.resolve("2d_" + set + ".txt"))));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return names.stream().map(orders::get).toList();
  }

  static long[] measured(SheetOrder order, long turns) {
    long start = Turns.done;
    SheetPlan plan = SheetCutting.plan(order, () -> (turns - Turns.done + start) / 1e6);
    return new long[] {
      plan.newSheets(),
      plan.atLeast(),
      Turns.done - start,
      plan.sheets().stream().mapToLong(sheet -> sheet.cuts().size()).sum(),
      plan.sheets().stream().mapToLong(sheet -> sheet.rest().area()).max().orElse(0)
          * 1000
          / (order.sheetWidth() * order.sheetHeight())
    };
  }
}
