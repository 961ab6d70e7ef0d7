package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Sheets;

/**
 * Old sheets that were kept, and what became of them.
 *
 * @param kept on finished jobs
 * @param failed of those, since
 */
public record KeptSheets(
    @Column(
            value = "kept_sheets",
            unit = "sheet",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 1,
            most = 1e7,
            rule = "old sheets kept on finished jobs")
        Figure<Sheets> kept,
    @Column(
            value = "failed",
            unit = "sheet",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 0,
            most = 1e7,
            rule = "of those kept; 0 where none has")
        Figure<Sheets> failed) {

  private static final Columns COLUMNS = Columns.of(KeptSheets.class);

  public KeptSheets {
    kept = COLUMNS.let("kept", kept);
    failed = COLUMNS.let("failed", failed);
  }

  /** So many kept; how many failed is still to be said. */
  public static KeptSheets kept(Figure<Sheets> all) {
    return new KeptSheets(all, null);
  }

  public KeptSheets failed(Figure<Sheets> some) {
    return new KeptSheets(kept, some);
  }
}
