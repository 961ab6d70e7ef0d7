package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * One place on a line, and how low the wood lies there.
 *
 * @param place along the line
 * @param drop there, low positive
 */
public record LinePlace(
    @Column(
            value = "place_in",
            least = LinePlace.LEAST_PLACE,
            most = LinePlace.MOST_PLACE,
            rule = LinePlace.PLACE_RULE)
        Figure<Length> place,
    @Column(
            value = "drop_in",
            least = -LinePlace.MOST_DROP,
            most = LinePlace.MOST_DROP,
            rule = LinePlace.DROP_RULE)
        Figure<Length> drop) {

  /** Inches: a hundred feet before the mark that is measured from. */
  static final double LEAST_PLACE = -1200;

  /** Inches: two hundred feet. */
  static final double MOST_PLACE = 2400;

  static final String PLACE_RULE = "along one line";

  /** Inches: a roof that is two feet off a string is no roof that is leveled. */
  static final double MOST_DROP = 24;

  static final String DROP_RULE = "low is positive";

  private static final Columns COLUMNS = Columns.of(LinePlace.class);

  public LinePlace {
    place = COLUMNS.let("place", place);
    drop = COLUMNS.let("drop", drop);
  }

  /** A place; how low the wood lies there is still to be said. */
  public static LinePlace at(Figure<Length> along) {
    return new LinePlace(along, null);
  }

  public LinePlace drop(Figure<Length> low) {
    return new LinePlace(place, low);
  }
}
