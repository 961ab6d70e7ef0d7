package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * A strut, or a purlin on struts, below a rafter. It is a support only if it was seen to stand on a
 * bearing wall.
 *
 * @param at how far from the plate it meets the rafter, on the horizontal projection; 0 without one
 * @param onWall whether it stands on a bearing wall
 */
public record Strut(
    @Column(
            value = "strut_ft",
            preset = "0",
            least = 0,
            most = ClearSpan.MOST_FT,
            rule = "from the plate, on the horizontal projection; 0 without a strut")
        Figure<Length> at,
    @Column(value = "strut_on_bearing_wall", preset = "unknown") OneOf<BearsOnWall> onWall) {

  private static final Columns COLUMNS = Columns.of(Strut.class);
  private static final Source RULE = Source.fromMemory("IRC 2021, R802.4.5");
  private static final Figure<Length> NONE = Figure.of(0, Units.INCH);

  public Strut {
    at = COLUMNS.let("at", at);
    onWall = COLUMNS.let("onWall", onWall);
  }

  /** A strut at this place, of which nobody knows what it stands on. */
  public static Strut at(Figure<Length> fromThePlate) {
    return new Strut(fromThePlate, null);
  }

  public Strut onWall(OneOf<BearsOnWall> seen) {
    return new Strut(at, seen);
  }

  /**
   * The longest that a rafter spans between its supports, of a span from plate to ridge. A strut
   * beyond the ridge holds nothing.
   */
  Figure<Length> longest(Figure<Length> span) {
    var below = at.min(span).as("strut_in", Units.INCH);
    var strutted = below.max(span.minus(below)).as("longest_between_supports_in", Units.INCH, RULE);
    return Figure.choose(
            Condition.all(onWall.choice().is(BearsOnWall.ON_BEARING_WALL), below.isMoreThan(NONE)),
            strutted,
            span)
        .as("span_between_supports_in", Units.INCH, RULE);
  }
}
