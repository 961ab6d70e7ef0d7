package sheathwright.sheathing.layout;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.roof.Outline;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;
import sheathwright.roof.Supports;

/**
 * The sheets of one plane in courses from the eave, place by place, with their joints. A place
 * counts where any wood of it is on the plane; touching is not enough.
 */
public final class CourseLayout {

  private final Plane plane;
  private final Supports supports;
  private final LayoutRules rules;
  private final Reading reading = new Reading();
  private final Laid laid;

  /**
   * What lies where.
   *
   * @param sheets from the eave up, from the left
   * @param joints likewise
   * @param lines between the courses
   * @param lastCourse height of the course at the ridge, in inches
   */
  public record Laid(
      List<Sheet> sheets, List<Joint> joints, List<CourseLine> lines, double lastCourse) {

    /** The sheets that are cut. */
    List<Sheet> cut() {
      return sheets.stream().filter(sheet -> !sheet.isWhole()).toList();
    }

    /** Inches of joints, with their bearing or without. */
    public double jointLength(boolean isSupported) {
      return joints.stream()
          .filter(joint -> joint.isSupported() == isSupported)
          .mapToDouble(Joint::length)
          .sum();
    }

    /** Inches of long edges between courses. */
    double lineLength() {
      return lines.stream().mapToDouble(CourseLine::length).sum();
    }
  }

  private CourseLayout(Plane plane, Supports supports, LayoutRules rules) {
    this.plane = plane;
    this.supports = supports;
    this.rules = rules;
    this.laid =
        new Layer(plane.outline(reading), supports.centers(reading), rules.plain(reading)).laid();
  }

  public static CourseLayout of(Plane plane, Supports supports, LayoutRules rules) {
    return new CourseLayout(plane, supports, rules);
  }

  /** The plane. */
  public Plane plane() {
    return plane;
  }

  /** What it stands on. */
  public Supports supports() {
    return supports;
  }

  /** How it was laid. */
  public LayoutRules rules() {
    return rules;
  }

  /** What lies where, for the plane, the supports and the rules as they were read. */
  public Laid laid(Reading solving) {
    solving.and(reading);
    return laid;
  }

  @Override
  public String toString() {
    int sheets = laid.sheets().size();
    return "%s %s laid on %s".formatted(sheets, sheets == 1 ? "sheet" : "sheets", plane);
  }

  /** Lays one plane. */
  private static final class Layer {

    private static final double MOST_COURSES = 200;

    private final Outline outline;
    private final Centers supports;
    private final LayoutRules.Plain rules;
    private final JointMaker joints;

    Layer(Outline outline, Centers supports, LayoutRules.Plain rules) {
      this.outline = outline;
      this.supports = supports;
      this.rules = rules;
      this.joints = new JointMaker(outline, supports, rules);
    }

    Laid laid() {
      Box bounds = outline.bounds();
      List<Double> heights = CourseHeights.of(bounds.height(), rules.stripRule());
      if (heights.size() > MOST_COURSES) {
        throw new RefusedException(
            Shown.text(
                "the plane is %.0f in high, more than 200 courses; give lengths in feet or inches as they are",
                bounds.height()));
      }
      List<Sheet> sheets = new ArrayList<>();
      List<Joint> met = new ArrayList<>();
      List<CourseLine> lines = new ArrayList<>();
      double bottom = bounds.bottom();
      for (int course = 1; course <= heights.size(); course++) {
        double top = bottom + heights.get(course - 1);
        List<Sheet> row = row(course, bottom, top);
        sheets.addAll(row);
        met.addAll(joints.between(row));
        if (course > 1) {
          lines.add(line(bottom));
        }
        bottom = top;
      }
      return new Laid(sheets, met, lines, heights.get(heights.size() - 1));
    }

    private List<Sheet> row(int course, double bottom, double top) {
      Box bounds = outline.bounds();
      double start = rules.origin() + (course % 2 == 0 ? rules.stagger() : 0);
      double module = LayoutRules.MODULE_LENGTH;
      List<Sheet> row = new ArrayList<>();
      for (long slot = (long) Math.floor((bounds.left() - start) / module);
          start + slot * module < bounds.right();
          slot++) {
        Box place = Box.at(start + slot * module, bottom, module, top - bottom);
        List<Region> parts = outline.within(place);
        if (!parts.isEmpty()) {
          boolean isWhole = place.height() == LayoutRules.MODULE_WIDTH && outline.covers(place);
          int spans = parts.stream().mapToInt(this::spans).min().orElse(0);
          row.add(new Sheet(course, place, parts, isWhole, spans));
        }
      }
      return row;
    }

    private int spans(Region part) {
      Box bounds = part.bounds();
      return Math.max(
          0,
          supports.between(bounds.left() - rules.gap(), bounds.right() + rules.gap()).size() - 1);
    }

    private CourseLine line(double y) {
      Box bounds = outline.bounds();
      double length = outline.lengthInside(new Spot(bounds.left(), y), new Spot(bounds.right(), y));
      List<Double> centers = supports.between(bounds.left() - 96, bounds.right() + 96);
      int bays = 0;
      for (int i = 1; i < centers.size(); i++) {
        double middle = (centers.get(i - 1) + centers.get(i)) / 2;
        bays += isInside(middle, y) ? 1 : 0;
      }
      return new CourseLine(y, length, bays);
    }

    private boolean isInside(double x, double y) {
      return outline.covers(Box.at(x - 0.5, y - 0.5, 1, 1));
    }
  }
}
