package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * The place where a stick sits on what carries it.
 *
 * @param bearing length of its seat
 * @param endDistance from the seat to the nearer end of the stick
 */
public record Seat(
    @Column(
            value = "bearing_in",
            preset = "1.5",
            least = Seat.LEAST_IN,
            most = Seat.MOST_IN,
            rule = Seat.RULE,
            symbol = "l_b")
        Figure<Length> bearing,
    @Column(
            value = "end_distance_in",
            preset = "0",
            least = 0,
            most = 240,
            rule = "0 where the stick ends there")
        Figure<Length> endDistance) {

  /** The range of a seat's length, wherever one is a column. */
  public static final double LEAST_IN = 0.5;

  public static final double MOST_IN = 12;
  public static final String RULE = "1-1/2 on wood and 3 on masonry are the IRC's least";

  private static final Columns COLUMNS = Columns.of(Seat.class);
  private static final Source AREA = RepetitiveMember.NDS_2018.at("3.10.4");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> SHORT = inches("short_seat_in", 6, "6 in");
  private static final Figure<Length> FROM_END = inches("seat_from_end_in", 3, "3 in");
  private static final Figure<Length> SPREAD = inches("seat_spread_in", 0.375, "3/8 in");

  public Seat {
    bearing = COLUMNS.let("bearing", bearing);
    endDistance = COLUMNS.let("endDistance", endDistance);
  }

  /** A seat of this length, at the end of the stick. */
  public static Seat of(Figure<Length> length) {
    return new Seat(length, null);
  }

  public Seat endDistance(Figure<Length> toTheEnd) {
    return new Seat(bearing, toTheEnd);
  }

  /** C_b = (l_b + 3/8 in) ÷ l_b for a short seat that is not at the stick's end. */
  public Figure<Ratio> areaFactor() {
    Condition isSpread = Condition.all(bearing.isLessThan(SHORT), endDistance.isAtLeast(FROM_END));
    return Figure.choose(isSpread, bearing.plus(SPREAD).dividedBy(bearing).in(Units.RATIO), ONE)
        .as("bearing_area_factor", Units.RATIO, AREA)
        .symbol("C_b");
  }

  private static Figure<Length> inches(String name, double number, String print) {
    return Figure.constant(name, number, Units.INCH, AREA).symbol(print);
  }
}
