package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;

/**
 * How far apart clips may stand.
 *
 * @param spacing from clip to clip, exactly
 * @param governs what decides it
 */
public record ClipSpacing(
    @Column(value = "spacing_in", marked = Marked.DOWN) Figure<Length> spacing,
    @Column("governs") Choice<Governs> governs) {

  /** What limits the spacing of clips. */
  public enum Governs implements Option<Governs> {
    SCREWS,
    CLIP,
    SEAM,
    MAKER
  }

  @Override
  public String toString() {
    return "clips %s apart, by %s".formatted(spacing, governs);
  }
}
