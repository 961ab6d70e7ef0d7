package sheathwright.sheathing.layout;

import sheathwright.roof.Spot;

/**
 * Where two sheet ends meet.
 *
 * @param course from the eave, beginning with 1
 * @param x where the left sheet ends, in inches from the plane's left corner
 * @param bottom where the joint begins up the slope, in inches
 * @param length of the joint with wood on both sides, in inches
 * @param support the center of the nearest support
 * @param left inches of bearing of the left sheet
 * @param right inches of bearing of the right sheet
 * @param creep inches that the joint has wandered off the module, to the right if positive
 * @param repair what makes it good
 */
public record Joint(
    int course,
    double x,
    double bottom,
    double length,
    double support,
    double left,
    double right,
    double creep,
    Repair repair) {

  /** What makes a joint good. */
  public enum Repair {
    /** Nothing: it has its bearing. */
    NONE("fits"),
    /** The left sheet is cut back to the support before it, as it is laid. */
    TRIM("trim"),
    /** A 2x scab is nailed to the support's side. */
    SCAB("scab"),
    /** A 2x block is set between two supports. */
    BLOCK("block");

    private final String word;

    Repair(String word) {
      this.word = word;
    }

    /** The trade's word for it. */
    public String word() {
      return word;
    }
  }

  /** Whether both sheets have their bearing. */
  public boolean isSupported() {
    return repair == Repair.NONE;
  }

  /** Its lower end. */
  public Spot foot() {
    return new Spot(x, bottom);
  }
}
