package sheathwright.framing.sister;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How stiff an old rafter and its sister are. Side by side on the same supports they bend to one
 * curve, so each takes load by its stiffness, and neither slips along the other.
 */
public final class Stiffnesses {

  static final Source SAME_CURVE = Source.derived("two pieces side by side bend to one curve");

  private final String beside;
  private final Figure<Stiffness> rafter;
  private final Figure<Stiffness> sister;
  private final Figure<Stiffness> both;

  public Stiffnesses(Figure<Stiffness> rafter, Figure<Stiffness> sister) {
    this("", rafter, sister);
  }

  /** The same where several sisters are weighed: what the names of this one's figures carry. */
  Stiffnesses(String beside, Figure<Stiffness> rafter, Figure<Stiffness> sister) {
    this.beside = beside;
    this.rafter = rafter;
    this.sister = sister;
    both =
        rafter
            .plus(sister)
            .as("both" + beside + "_stiffness_lb_in2", Units.POUND_SQUARE_INCH, SAME_CURVE)
            .symbol("EI");
  }

  public Figure<Stiffness> rafter() {
    return rafter;
  }

  public Figure<Stiffness> sister() {
    return sister;
  }

  public Figure<Stiffness> both() {
    return both;
  }

  public SisterShare share() {
    return new SisterShare(
        rafter
            .dividedBy(both)
            .as("rafter_share" + beside, Units.RATIO, SAME_CURVE)
            .symbol("a_rafter"),
        sister
            .dividedBy(both)
            .as("sister_share" + beside, Units.RATIO, SAME_CURVE)
            .symbol("a_sister"));
  }
}
