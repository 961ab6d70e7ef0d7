package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * Where two sheets meet, and the rafter that they meet on.
 *
 * @param rafter center of the rafter, from where the row of sheets begins
 * @param joint where the left sheet ends; the right one begins a gap further
 */
public record JointPlace(
    @Column(value = "rafter_center_in", least = 0, most = 6000, rule = "from where the row begins")
        Figure<Length> rafter,
    @Column(value = "joint_in", least = 0, most = 6000, rule = "from where the row begins")
        Figure<Length> joint) {

  private static final Columns COLUMNS = Columns.of(JointPlace.class);

  public JointPlace {
    rafter = COLUMNS.let("rafter", rafter);
    joint = COLUMNS.let("joint", joint);
  }

  /** A rafter centered here; where the left sheet ends is still to be said. */
  public static JointPlace rafter(Figure<Length> given) {
    return new JointPlace(given, null);
  }

  public JointPlace joint(Figure<Length> given) {
    return new JointPlace(rafter, given);
  }
}
