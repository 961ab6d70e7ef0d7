package sheathwright.job.zone;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.job.table.Field;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;

/** What was seen is no more than there is, and who saw it says how much of it was bad. */
public final class SeenRules {

  private SeenRules() {}

  /**
   * Says what is wrong with the lines of a table.
   *
   * @param all how many there are
   * @param seen how many of them somebody has seen
   * @param bad how many of those were bad
   */
  public static void hold(
      ReadTable table,
      Field<Figure<Ratio>> all,
      Field<Figure<Ratio>> seen,
      Field<Figure<Ratio>> bad) {
    for (Row row : table.rows()) {
      table.atMost(row, seen, all, "no more is seen than is there");
      table.atMost(row, bad, seen, "only what was seen is known to be bad");
      if (row.has(bad) && !row.has(seen)) {
        table.problem(
            row,
            seen,
            "it is empty, but %s is given; say of how many that were seen, such as 12"
                .formatted(bad.name()));
      }
      if (!row.has(bad) && row.read(seen).filter(some -> some.value() > 0).isPresent()) {
        table.problem(
            row,
            bad,
            "it is empty, though %s were seen; give 0 if all of them were sound"
                .formatted(row.of(seen).plain()));
      }
    }
  }
}
