package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;
import sheathwright.wood.Knowledge;
import sheathwright.wood.Seat;

/**
 * How a rafter sits on its plate: a notch in its lower edge, or none. A seat cut that nobody
 * measured is as deep as a level seat of that bearing is on that slope, and never less than what
 * was given.
 *
 * @param seat where it bears
 * @param notch seat-cut depth, square to the rafter's edge
 * @param known how that depth is known
 */
public record Birdsmouth(
    Seat seat,
    @Column(
            value = "notch_in",
            preset = "0",
            least = 0,
            most = 8,
            rule = "at most a quarter of the depth")
        Figure<Length> notch,
    @Column(value = "notch_known", preset = "unknown") OneOf<Knowledge> known) {

  private static final Columns COLUMNS = Columns.of(Birdsmouth.class);

  public Birdsmouth {
    seat = seat == null ? new Seat(null, null) : seat;
    notch = COLUMNS.let("notch", notch);
    known = COLUMNS.let("known", known);
  }

  /** On a seat whose cut nobody measured. */
  public static Birdsmouth of(Seat seat) {
    return new Birdsmouth(seat, null, null);
  }

  /** With a cut that somebody measured. */
  public Birdsmouth notch(Figure<Length> deep) {
    return new Birdsmouth(seat, deep, Knowledge.IS_MEASURED);
  }

  /** The same cut, known in another way. */
  public Birdsmouth known(OneOf<Knowledge> how) {
    return new Birdsmouth(seat, notch, how);
  }

  /** The cut that is reckoned with: as it is known, or l_b sin θ. */
  Figure<Length> cut(RafterTie triangle) {
    var reckoned =
        seat.bearing()
            .times(triangle.slopeSine())
            .as("level_seat_in", Units.INCH, RafterTie.RIGHT_TRIANGLE)
            .symbol("(l_b sin θ)");
    return Figure.choose(known.choice().is(Knowledge.IS_UNKNOWN), notch.max(reckoned), notch)
        .as("seat_cut_in", Units.INCH, RafterTie.RIGHT_TRIANGLE)
        .symbol("notch");
  }
}
