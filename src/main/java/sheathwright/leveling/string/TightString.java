package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;

/**
 * A string pulled tight between two blocks.
 *
 * @param length from block to block
 * @param weight of the string
 * @param tension that it is pulled with
 */
public record TightString(
    @Column(value = "string_ft", least = 1, most = 200, rule = "from block to block")
        Figure<Length> length,
    @Column(
            value = "line_lb_per_ft",
            preset = "0.0015",
            least = 0,
            most = 1,
            rule = "0.0015 is a thin line")
        Figure<LineForce> weight,
    @Column(value = "tension_lb", preset = "20", least = 1, most = 500, rule = "20 is a hard pull")
        Figure<Force> tension) {

  private static final Columns COLUMNS = Columns.of(TightString.class);

  public TightString {
    length = COLUMNS.let("length", length);
    weight = COLUMNS.let("weight", weight);
    tension = COLUMNS.let("tension", tension);
  }

  /** A thin line of this length, pulled hard unless its weight and tension are said. */
  public static TightString length(Figure<Length> betweenBlocks) {
    return new TightString(betweenBlocks, null, null);
  }

  public TightString weight(Figure<LineForce> ofTheLine) {
    return new TightString(length, ofTheLine, tension);
  }

  public TightString tension(Figure<Force> pull) {
    return new TightString(length, weight, pull);
  }
}
