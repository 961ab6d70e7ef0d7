package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A straight line laid on two places of another line.
 *
 * @param first place of the first end
 * @param firstDrop drop there, low positive
 * @param last place of the last end, beyond the first
 * @param lastDrop drop there, low positive
 */
public record Straightedge(
    @Column(
            value = "first_in",
            least = LinePlace.LEAST_PLACE,
            most = LinePlace.MOST_PLACE,
            rule = LinePlace.PLACE_RULE)
        Figure<Length> first,
    @Column(
            value = "first_drop_in",
            least = -LinePlace.MOST_DROP,
            most = LinePlace.MOST_DROP,
            rule = LinePlace.DROP_RULE)
        Figure<Length> firstDrop,
    @Column(
            value = "last_in",
            least = LinePlace.LEAST_PLACE,
            most = LinePlace.MOST_PLACE,
            rule = LinePlace.PLACE_RULE)
        Figure<Length> last,
    @Column(
            value = "last_drop_in",
            least = -LinePlace.MOST_DROP,
            most = LinePlace.MOST_DROP,
            rule = LinePlace.DROP_RULE)
        Figure<Length> lastDrop) {

  private static final Columns COLUMNS = Columns.of(Straightedge.class);

  public Straightedge {
    first = COLUMNS.let("first", first);
    firstDrop = COLUMNS.let("firstDrop", firstDrop);
    last = COLUMNS.let("last", last);
    lastDrop = COLUMNS.let("lastDrop", lastDrop);
  }

  /** A straight line between two places of a line. */
  public static Straightedge of(LinePlace first, LinePlace last) {
    return new Straightedge(first.place(), first.drop(), last.place(), last.drop());
  }
}
