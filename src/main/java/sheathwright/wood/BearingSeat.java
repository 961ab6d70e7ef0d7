package sheathwright.wood;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The place where a rafter sits on its plate. */
public final class BearingSeat {

  private static final Source RULE = RepetitiveMember.NDS_2018.at("3.10.4");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> SHORT = inches("short_seat_in", 6, "6 in");
  private static final Figure<Length> FROM_END = inches("seat_from_end_in", 3, "3 in");
  private static final Figure<Length> SPREAD = inches("seat_spread_in", 0.375, "3/8 in");

  private BearingSeat() {}

  /** Its length, 0.5 in to 12 in. */
  public static Figure<Length> length(Figure<Length> length) {
    return length
        .within(
            "bearing_in",
            Units.INCH,
            Limits.between(0.5, 12, "1-1/2 on wood and 3 on masonry are the IRC's least"))
        .symbol("l_b");
  }

  /** From the seat to the nearer end of the stick, 0 in to 240 in. */
  public static Figure<Length> endDistance(Figure<Length> distance) {
    return distance.within(
        "end_distance_in", Units.INCH, Limits.between(0, 240, "0 where the stick ends there"));
  }

  /** C_b = (l_b + 3/8 in) ÷ l_b for a short seat that is not at the stick's end. */
  public static Figure<Ratio> areaFactor(Figure<Length> seat, Figure<Length> endDistance) {
    Condition isSpread = Condition.all(seat.isLessThan(SHORT), endDistance.isAtLeast(FROM_END));
    return Figure.choose(isSpread, seat.plus(SPREAD).dividedBy(seat).in(Units.RATIO), ONE)
        .as("bearing_area_factor", Units.RATIO, RULE)
        .symbol("C_b");
  }

  private static Figure<Length> inches(String name, double number, String print) {
    return Figure.constant(name, number, Units.INCH, RULE).symbol(print);
  }
}
