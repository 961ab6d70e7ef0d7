package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Nails;

/**
 * The joint of a rafter and the ceiling joist or tie beside it.
 *
 * @param lateral Z' of one nail, adjusted
 * @param found nails at each joint; what nobody saw is none
 * @param snow on the ground, by which the code prints nails; not said, its row is not read
 */
public record HeelJoint(
    @Column(
            value = "adjusted_lb",
            least = 1,
            most = 1000,
            rule = "adjusted_lateral gives it; 130 is usual of a 16d nail",
            symbol = "Z'")
        Figure<Force> lateral,
    @Column(
            value = "nails_found",
            unit = "nail",
            preset = "0",
            least = 0,
            most = 100,
            rule = "at each joint, as seen; 0 if nobody looked")
        Figure<Nails> found,
    @Column(value = "code_snow", preset = "not-said") OneOf<CodeSnow> snow) {

  private static final Columns COLUMNS = Columns.of(HeelJoint.class);

  public HeelJoint {
    lateral = COLUMNS.let("lateral", lateral);
    found = COLUMNS.let("found", found);
    snow = COLUMNS.let("snow", snow);
  }

  /** With nails that hold so much each; nobody saw any yet. */
  public static HeelJoint lateral(Figure<Force> each) {
    return new HeelJoint(each, null, null);
  }

  public HeelJoint found(Figure<Nails> atEachJoint) {
    return new HeelJoint(lateral, atEachJoint, snow);
  }

  public HeelJoint snow(OneOf<CodeSnow> onTheGround) {
    return new HeelJoint(lateral, found, onTheGround);
  }
}
