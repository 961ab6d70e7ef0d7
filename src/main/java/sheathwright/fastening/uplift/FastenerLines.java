package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * Nails or clips on lines.
 *
 * @param spacing from nail to nail or clip to clip
 * @param lines from rafter to rafter or seam to seam
 */
public record FastenerLines(
    @Column(value = "spacing_in", least = 1, most = 96, rule = "6 is usual") Figure<Length> spacing,
    @Column(value = "line_spacing_in", least = 1, most = 96, rule = "16 and 24 are usual")
        Figure<Length> lines) {

  private static final Columns COLUMNS = Columns.of(FastenerLines.class);

  public FastenerLines {
    spacing = COLUMNS.let("spacing", spacing);
    lines = COLUMNS.let("lines", lines);
  }

  /** Fasteners so far apart on their line; how far the lines are apart is still to be said. */
  public static FastenerLines spacing(Figure<Length> along) {
    return new FastenerLines(along, null);
  }

  public FastenerLines lines(Figure<Length> across) {
    return new FastenerLines(spacing, across);
  }
}
