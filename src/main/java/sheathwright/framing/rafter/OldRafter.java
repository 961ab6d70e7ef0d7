package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;
import sheathwright.wood.Member;
import sheathwright.wood.RepetitiveMember;

/**
 * One of many like rafters as they stand in an old roof.
 *
 * @param member the stick itself
 * @param spacing center to center; the repetitive factor is taken up to 24 in
 * @param triangle from plate to ridge
 * @param strut below it between plate and ridge, if there is one
 * @param seasoned whether it is known to have been dry when it was first loaded, so that it creeps
 *     less; no where nobody knows, for most old framing was put up green
 */
public record OldRafter(
    Member member,
    @Column(
            value = "spacing_in",
            least = RepetitiveMember.LEAST_SPACING_IN,
            most = RepetitiveMember.MOST_SPACING_IN,
            rule = RepetitiveMember.SPACING_RULE,
            symbol = "s")
        Figure<Length> spacing,
    RoofTriangle triangle,
    Strut strut,
    @Column(value = "seasoned", preset = "no") OneOf<YesNo> seasoned) {

  private static final Columns COLUMNS = Columns.of(OldRafter.class);

  public OldRafter {
    member = member == null ? new Member(null, null, null, null) : member;
    triangle = triangle == null ? new RoofTriangle(null, null, null) : triangle;
    strut = strut == null ? new Strut(null, null) : strut;
    spacing = COLUMNS.let("spacing", spacing);
    seasoned = COLUMNS.let("seasoned", seasoned);
  }

  /** Put up green, for all that anybody knows. */
  public static OldRafter of(Member member, Figure<Length> spacing, RoofTriangle triangle) {
    return new OldRafter(member, spacing, triangle, null, null);
  }

  public OldRafter seasoned(OneOf<YesNo> isKnown) {
    return new OldRafter(member, spacing, triangle, strut, isKnown);
  }

  public OldRafter strut(Strut below) {
    return new OldRafter(member, spacing, triangle, below, seasoned);
  }
}
