package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;

/**
 * How far a rafter may span.
 *
 * @param span on the horizontal projection, not capped
 * @param inFeetAndInches the same to the nearest inch, {@code 13-5}
 * @param governs what limits it
 */
public record RafterSpan(
    @Column(value = "span_in", marked = Marked.DOWN) Figure<Length> span,
    @Column("span_ft_in") Choice<String> inFeetAndInches,
    @Column("governs") Choice<Governs> governs) {

  /** What limits a span. */
  public enum Governs implements Option<Governs> {
    BENDING,
    DEFLECTION
  }
}
