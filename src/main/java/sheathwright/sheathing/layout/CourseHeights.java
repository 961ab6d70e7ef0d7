package sheathwright.sheathing.layout;

import static sheathwright.sheathing.layout.LayoutRules.HAIR;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How high the courses are, from the eave to the ridge. */
public final class CourseHeights {

  private static final double WHOLE = LayoutRules.MODULE_WIDTH;
  private static final double TWO_FEET = 24;

  private CourseHeights() {}

  /**
   * Whole courses and what they leave, in inches. The rules equal and two-foot act on a strip of
   * less than two feet above at least one whole course.
   */
  public static List<Double> of(double height, StripRule rule) {
    int whole = (int) Math.floor((height + HAIR) / WHOLE);
    double strip = Math.max(0, height - whole * WHOLE);
    boolean isStrip = strip > HAIR;
    boolean isReplaced = isStrip && strip < TWO_FEET && whole >= 1 && rule != StripRule.RIP;
    List<Double> heights = new ArrayList<>(Collections.nCopies(whole, WHOLE));
    if (isReplaced) {
      heights.remove(whole - 1);
      double first = rule == StripRule.EQUAL ? (WHOLE + strip) / 2 : TWO_FEET + strip;
      heights.add(first);
      heights.add(WHOLE + strip - first);
    } else if (isStrip) {
      heights.add(strip);
    }
    return heights;
  }
}
