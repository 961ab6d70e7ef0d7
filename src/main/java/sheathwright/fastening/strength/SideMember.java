package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.wood.Nds;

/**
 * The member under a nail's head, where the nail carries across its length.
 *
 * @param thickness of the member under the head
 * @param gravity G of the member under the head
 */
public record SideMember(
    @Column(
            value = "side_thickness_in",
            least = 0.1,
            most = 4,
            rule = "1-1/2 for a 2x",
            symbol = "l_s")
        Figure<Length> thickness,
    @Column(
            value = "side_gravity",
            least = Nds.LEAST_GRAVITY,
            most = Nds.MOST_GRAVITY,
            rule = Nds.GRAVITY_RULE)
        Figure<Ratio> gravity) {

  private static final Columns COLUMNS = Columns.of(SideMember.class);

  public SideMember {
    thickness = COLUMNS.let("thickness", thickness);
    gravity = COLUMNS.let("gravity", gravity);
  }

  /** A member of this thickness and specific gravity. */
  public static SideMember of(Figure<Length> thickness, Figure<Ratio> gravity) {
    return new SideMember(thickness, gravity);
  }
}
