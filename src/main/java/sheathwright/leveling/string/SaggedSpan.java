package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A rafter that sags between its bearings.
 *
 * @param sag greatest drop below the string
 * @param span bearing to bearing along the rafter
 */
public record SaggedSpan(
    @Column(value = "sag_in", least = 0, most = 24, rule = "low is positive") Figure<Length> sag,
    @Column(value = "span_ft", least = 2, most = 40, rule = "bearing to bearing along the rafter")
        Figure<Length> span) {

  private static final Columns COLUMNS = Columns.of(SaggedSpan.class);

  public SaggedSpan {
    sag = COLUMNS.let("sag", sag);
    span = COLUMNS.let("span", span);
  }

  /** A rafter that sags so much; its span is still to be said. */
  public static SaggedSpan sag(Figure<Length> greatest) {
    return new SaggedSpan(greatest, null);
  }

  public SaggedSpan span(Figure<Length> alongTheRafter) {
    return new SaggedSpan(sag, alongTheRafter);
  }
}
