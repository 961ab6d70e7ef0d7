package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * How sisters lie over a broken, cut or rotten place, centered on it.
 *
 * @param place from the nearer or either support to the middle of the break
 * @param near c, in sound wood, from the break to the middle of the near group of nails
 * @param sisters on one side or on both, each with its own nails
 */
public record Splice(
    @Column(
            value = "break_ft",
            least = 0.25,
            most = 39.75,
            rule = "from a support to the middle of the break")
        Figure<Length> place,
    @Column(value = "near_in", least = 0, most = 48, rule = "12 leaves room for rot", symbol = "c")
        Figure<Length> near,
    @Column(
            value = "sisters",
            preset = "1",
            least = 1,
            most = 2,
            allowed = Limits.Kind.ENDS_ONLY,
            rule = "one side or both",
            symbol = "sisters")
        Figure<Ratio> sisters) {

  private static final Columns COLUMNS = Columns.of(Splice.class);

  public Splice {
    place = COLUMNS.let("place", place);
    near = COLUMNS.let("near", near);
    sisters = COLUMNS.let("sisters", sisters);
  }

  /** A sister over a break at this place; how near its nails begin is still to be said. */
  public static Splice at(Figure<Length> place) {
    return new Splice(place, null, null);
  }

  public Splice near(Figure<Length> inSoundWood) {
    return new Splice(place, inSoundWood, sisters);
  }

  public Splice sisters(Figure<Ratio> oneOrTwo) {
    return new Splice(place, near, oneOrTwo);
  }
}
