package sheathwright.sheathing.layout;

import java.util.ArrayList;
import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.roof.Outline;
import sheathwright.roof.Spot;
import sheathwright.sheathing.layout.Joint.Repair;

/**
 * The joints of one course: what each sheet end stands on, and what makes it good where that is too
 * little.
 */
final class JointMaker {

  private static final double SCAB = 1.5;
  private static final double HAIR = 1e-6;
  private static final int FEWEST_SPANS = 2;

  private final Outline outline;
  private final Centers supports;
  private final double gap;
  private final double halfSupport;
  private final double least;
  private final double creep;
  private final boolean isLaid;

  JointMaker(Outline outline, Centers supports, LayoutRules.Plain rules) {
    this.outline = outline;
    this.supports = supports;
    this.gap = rules.gap();
    this.halfSupport = rules.supportWidth() / 2;
    this.least = rules.minBearing();
    this.creep = rules.sheetLength() + gap - LayoutRules.MODULE_LENGTH;
    this.isLaid = rules.isLaid();
  }

  /**
   * The joints between neighbors of one course, which begin on the module and creep sheet by sheet.
   */
  List<Joint> between(List<Sheet> row) {
    List<Joint> joints = new ArrayList<>();
    double crept = 0;
    for (int i = 1; i < row.size(); i++) {
      Sheet left = row.get(i - 1);
      crept = i == 1 || !left.isWhole() ? 0 : crept + creep;
      Box place = row.get(i).place();
      double module = place.left();
      double length =
          left.place().right() == module
              ? outline.lengthInside(
                  new Spot(module, place.bottom()), new Spot(module, place.top()))
              : 0;
      if (length > 1.0 / 16) {
        joints.add(joint(left, module, length, crept));
      }
    }
    return joints;
  }

  private Joint joint(Sheet left, double module, double length, double crept) {
    double end = module + crept - gap / 2;
    double support = supports.nearest(end + gap / 2);
    double near = support - halfSupport;
    double far = support + halfSupport;
    return new Joint(
        left.course(),
        end,
        left.place().bottom(),
        length,
        support,
        leftBearing(end, near, far),
        rightBearing(end, near, far),
        crept,
        repair(left, end, near, far));
  }

  private double leftBearing(double end, double near, double far) {
    return Math.max(0, Math.min(end, far) - near);
  }

  private double rightBearing(double end, double near, double far) {
    return Math.max(0, far - Math.max(end + gap, near));
  }

  private boolean fits(double end, double near, double far) {
    return Math.min(leftBearing(end, near, far), rightBearing(end, near, far)) >= least - HAIR;
  }

  private Repair repair(Sheet left, double end, double near, double far) {
    if (fits(end, near, far)) {
      return Repair.NONE;
    }
    if (!isLaid && spansIfTrimmed(left, end) >= FEWEST_SPANS) {
      return Repair.TRIM;
    }
    boolean scabFits = fits(end, near, far + SCAB) || fits(end, near - SCAB, far);
    return scabFits ? Repair.SCAB : Repair.BLOCK;
  }

  /** The spans that the left sheet keeps when it is cut back to the last support before its end. */
  private int spansIfTrimmed(Sheet left, double end) {
    return supports.between(left.parts().get(0).bounds().left() - gap, end).size() - 1;
  }
}
