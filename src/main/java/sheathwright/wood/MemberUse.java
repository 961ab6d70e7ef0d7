package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;

/**
 * How a stick stands among its neighbors, and what keeps it from rolling.
 *
 * @param spacing center to center of at least three sticks that a deck joins; the repetitive factor
 *     is taken up to 24 in
 * @param flatwise whether it lies on its wide face
 * @param unbraced between the places that hold the upper edge; 0 where a nailed deck holds it along
 *     its length
 */
public record MemberUse(
    @Column(
            value = "spacing_in",
            least = RepetitiveMember.LEAST_SPACING_IN,
            most = RepetitiveMember.MOST_SPACING_IN,
            rule = RepetitiveMember.SPACING_RULE,
            symbol = "s")
        Figure<Length> spacing,
    @Column(value = "flatwise", preset = "no") OneOf<YesNo> flatwise,
    @Column(
            value = "unbraced_in",
            preset = "0",
            least = 0,
            most = 600,
            rule = "0 where a nailed deck holds the upper edge")
        Figure<Length> unbraced) {

  private static final Columns COLUMNS = Columns.of(MemberUse.class);

  public MemberUse {
    spacing = COLUMNS.let("spacing", spacing);
    flatwise = COLUMNS.let("flatwise", flatwise);
    unbraced = COLUMNS.let("unbraced", unbraced);
  }

  /** So far from its neighbors, on edge, under a nailed deck. */
  public static MemberUse spacing(Figure<Length> centerToCenter) {
    return new MemberUse(centerToCenter, null, null);
  }

  public MemberUse flatwise(OneOf<YesNo> isFlat) {
    return new MemberUse(spacing, isFlat, unbraced);
  }

  public MemberUse unbraced(Figure<Length> open) {
    return new MemberUse(spacing, flatwise, open);
  }
}
