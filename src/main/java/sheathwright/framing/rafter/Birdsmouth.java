package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.wood.Seat;

/**
 * How a rafter sits on its plate: a notch in its lower edge, or none.
 *
 * @param seat where it bears
 * @param notch seat-cut depth, square to the rafter's edge
 */
public record Birdsmouth(
    Seat seat,
    @Column(
            value = "notch_in",
            preset = "0",
            least = 0,
            most = 8,
            rule = "at most a quarter of the depth")
        Figure<Length> notch) {

  private static final Columns COLUMNS = Columns.of(Birdsmouth.class);

  public Birdsmouth {
    seat = seat == null ? new Seat(null, null) : seat;
    notch = COLUMNS.let("notch", notch);
  }

  /** On a seat that no notch was cut for. */
  public static Birdsmouth of(Seat seat) {
    return new Birdsmouth(seat, null);
  }

  public Birdsmouth notch(Figure<Length> deep) {
    return new Birdsmouth(seat, deep);
  }
}
