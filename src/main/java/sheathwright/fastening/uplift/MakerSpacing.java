package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How far apart the covering's maker lets clips stand.
 *
 * @param tested clip spacing of the maker's test
 * @param most greatest clip spacing that the maker states
 */
public record MakerSpacing(
    @Column(
            value = "tested_spacing_in",
            least = 1,
            most = 72,
            rule = "as the maker's test report says")
        Figure<Length> tested,
    @Column(
            value = "maker_most_in",
            least = 1,
            most = 72,
            rule = "as the maker's engineering says; 24 is usual")
        Figure<Length> most) {

  private static final Columns COLUMNS = Columns.of(MakerSpacing.class);

  public MakerSpacing {
    tested = COLUMNS.let("tested", tested);
    most = COLUMNS.let("most", most);
  }

  /** Clips tested so far apart; the greatest spacing that the maker states is still to be said. */
  public static MakerSpacing tested(Figure<Length> clipToClip) {
    return new MakerSpacing(clipToClip, null);
  }

  public MakerSpacing most(Figure<Length> clipToClip) {
    return new MakerSpacing(tested, clipToClip);
  }
}
