package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;
import sheathwright.wood.Nds;

/**
 * A nail of a sister and what a table lists for it.
 *
 * @param lateral Z of one nail, as listed
 * @param penetration p into the piece that holds the point
 * @param diameter D of the shank
 * @param penetrationCounted whether Z already accounts for the penetration
 */
public record ListedNail(
    @Column(
            value = "lateral_lb",
            least = 1,
            most = 5000,
            rule = "for one nail, as listed",
            symbol = "Z")
        Figure<Force> lateral,
    @Column(
            value = "penetration_in",
            least = 0.25,
            most = 6,
            rule = "1-1/2 at most in a sister of 2x lumber",
            symbol = "p")
        Figure<Length> penetration,
    @Column(
            value = "diameter_in",
            least = Nds.LEAST_NAIL_IN,
            most = Nds.MOST_NAIL_IN,
            rule = Nds.NAIL_RULE,
            symbol = "D")
        Figure<Length> diameter,
    @Column(value = "penetration_counted", preset = "no") OneOf<YesNo> penetrationCounted) {

  private static final Columns COLUMNS = Columns.of(ListedNail.class);

  public ListedNail {
    lateral = COLUMNS.let("lateral", lateral);
    penetration = COLUMNS.let("penetration", penetration);
    diameter = COLUMNS.let("diameter", diameter);
    penetrationCounted = COLUMNS.let("penetrationCounted", penetrationCounted);
  }

  /** A nail of this value; how thick it is and how deep it reaches is still to be said. */
  public static ListedNail lateral(Figure<Force> listed) {
    return new ListedNail(listed, null, null, null);
  }

  public ListedNail penetration(Figure<Length> deep) {
    return new ListedNail(lateral, deep, diameter, penetrationCounted);
  }

  public ListedNail diameter(Figure<Length> ofShank) {
    return new ListedNail(lateral, penetration, ofShank, penetrationCounted);
  }

  public ListedNail penetrationCounted(OneOf<YesNo> already) {
    return new ListedNail(lateral, penetration, diameter, already);
  }
}
