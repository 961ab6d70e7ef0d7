package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.wood.Seat;

/**
 * What lies between a rafter's two supports, and how much of it sits on the plate.
 *
 * @param span clear span on the horizontal projection
 * @param bearing length of the seat on the plate
 */
public record ClearSpan(
    @Column(
            value = "span_ft",
            least = ClearSpan.LEAST_FT,
            most = ClearSpan.MOST_FT,
            rule = ClearSpan.RULE)
        Figure<Length> span,
    @Column(
            value = "bearing_in",
            preset = "1.5",
            least = Seat.LEAST_IN,
            most = Seat.MOST_IN,
            rule = Seat.RULE,
            symbol = "l_b")
        Figure<Length> bearing) {

  /** The range of a span, wherever one is a column. */
  public static final double LEAST_FT = 1;

  public static final double MOST_FT = 40;
  public static final String RULE = "clear, on the horizontal projection";

  private static final Columns COLUMNS = Columns.of(ClearSpan.class);

  public ClearSpan {
    span = COLUMNS.let("span", span);
    bearing = COLUMNS.let("bearing", bearing);
  }

  /** So wide, on the least seat that the code allows on wood. */
  public static ClearSpan of(Figure<Length> span) {
    return new ClearSpan(span, null);
  }

  public ClearSpan bearing(Figure<Length> seat) {
    return new ClearSpan(span, seat);
  }
}
