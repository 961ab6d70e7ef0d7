package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * What is asked of a piece of panel.
 *
 * @param minLength least length asked for; 48 in in windy places
 * @param minWidth least width without supported edges
 * @param minBearing least bearing of each end
 */
public record PieceRules(
    @Column(
            value = "min_length_in",
            preset = "0",
            least = 0,
            most = 192,
            rule = "48 is advised where winds are high")
        Figure<Length> minLength,
    @Column(
            value = "min_width_in",
            preset = "24",
            least = 0,
            most = 48,
            rule = "24 is what the table calls for")
        Figure<Length> minWidth,
    @Column(value = "min_bearing_in", preset = "1/2", least = 0, most = 2.5, rule = "1/2 is usual")
        Figure<Length> minBearing) {

  private static final Columns COLUMNS = Columns.of(PieceRules.class);

  /** What the span table wants, and no least length. */
  public static final PieceRules BY_THE_SPAN_TABLE = new PieceRules(null, null, null);

  public PieceRules {
    minLength = COLUMNS.let("minLength", minLength);
    minWidth = COLUMNS.let("minWidth", minWidth);
    minBearing = COLUMNS.let("minBearing", minBearing);
  }

  /** A least length, and the usual rules besides. */
  public static PieceRules minLength(Figure<Length> given) {
    return new PieceRules(given, null, null);
  }

  public PieceRules minWidth(Figure<Length> given) {
    return new PieceRules(minLength, given, minBearing);
  }

  public PieceRules minBearing(Figure<Length> given) {
    return new PieceRules(minLength, minWidth, given);
  }
}
