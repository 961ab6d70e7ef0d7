package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Shown;
import sheathwright.forecast.Chances;

/** How likely counts of bad sheets are, as the columns of an answer. */
final class Percentiles {

  /** The columns, in order. */
  static final List<String> HEADINGS =
      List.of(
          "mean",
          "sd",
          "p_none",
          "p10_sheets",
          "p50_sheets",
          "p80_sheets",
          "p90_sheets",
          "p95_sheets");

  private static final double[] OF_TEN = {0.10, 0.50, 0.80, 0.90, 0.95};

  private Percentiles() {}

  /** The cells of a line. */
  static List<String> of(Chances chances) {
    List<String> cells = new ArrayList<>();
    cells.add(Shown.plain(chances.mean()));
    cells.add(Shown.plain(chances.sd()));
    cells.add(Shown.plain(chances.of(0)));
    for (double chance : OF_TEN) {
      cells.add(String.valueOf(chances.percentile(chance)));
    }
    return cells;
  }
}
