package sheathwright.sheathing.patch;

import java.util.ArrayList;
import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.roof.Outline;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;
import sheathwright.sheathing.layout.CourseHeights;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Patch.End;

/**
 * Where a patch may end: sideways on the centers of supports, upwards on course lines or on the
 * middle of a course, so that what is left of the old sheet is not too low, and never beyond an
 * opening or the plane's edge.
 */
final class PatchFrame {

  private static final double HAIR = 1.0 / 64;

  private final Outline outline;
  private final List<Box> openings;
  private final Centers supports;
  private final List<Double> courseLines;
  private final double gap;
  private final double bearing;
  private final double beyondMark;
  private final double minLength;
  private final double minHeight;
  private final int minSpans;

  /**
   * @param old how the deck lies: its course lines and its gaps
   */
  PatchFrame(
      Outline outline,
      List<Box> openings,
      Centers supports,
      LayoutRules.Plain old,
      PatchRules.Plain rules) {
    this.outline = outline;
    this.openings = openings;
    this.supports = supports;
    this.gap = old.gap();
    this.bearing = old.minBearing();
    this.beyondMark = rules.beyondMark();
    this.minLength = rules.minLength();
    this.minHeight = rules.minHeight();
    this.minSpans = rules.minSpans();
    Box bounds = outline.bounds();
    courseLines = new ArrayList<>(List.of(bounds.bottom()));
    for (double height : CourseHeights.of(bounds.height(), old.stripRule())) {
      courseLines.add(courseLines.get(courseLines.size() - 1) + height);
    }
    courseLines.set(courseLines.size() - 1, bounds.top());
  }

  /**
   * A mark, or the parts of it that lie beside the openings in it, to the left, right, below and
   * above.
   */
  List<Box> besideOpenings(Box mark) {
    Box onPlane = mark.and(outline.bounds());
    List<Box> parts = new ArrayList<>(List.of(onPlane));
    for (Box opening : openings) {
      List<Box> cut = new ArrayList<>();
      for (Box part : parts) {
        if (part.overlaps(opening)) {
          Box common = part.and(opening);
          cut.add(new Box(part.left(), part.bottom(), part.right(), common.bottom()));
          cut.add(new Box(part.left(), common.top(), part.right(), part.top()));
          cut.add(new Box(part.left(), common.bottom(), common.left(), common.top()));
          cut.add(new Box(common.right(), common.bottom(), part.right(), common.top()));
        } else {
          cut.add(part);
        }
      }
      parts = cut;
    }
    parts.removeIf(
        part -> part.width() <= HAIR || part.height() <= HAIR || outline.within(part).isEmpty());
    return parts;
  }

  /** A box of bad wood, grown to sound wood and on to where a patch may end. */
  Box cutOut(Box bad) {
    return snapped(bad, beyondMark);
  }

  /** A box whose ends are moved on to where a patch may end. */
  Box snapped(Box box) {
    return snapped(box, 0);
  }

  private Box snapped(Box bad, double beyond) {
    Box free = freeAround(bad);
    Box grown = bad.grown(beyond).and(free);
    double bottom = Math.max(lineBelow(grown.bottom()), free.bottom());
    double top = Math.min(lineAbove(grown.top()), free.top());
    Box band = new Box(bad.left(), bottom, bad.right(), top);
    Box across = freeAround(band).and(reach(band));
    double left = supportBefore(Math.max(grown.left(), across.left()), across.left());
    double right = supportAfter(Math.min(grown.right(), across.right()), across.right());
    return lengthened(new Box(left, bottom, right, top), across);
  }

  /** How far a box could grow sideways, or up and down, before it met an opening. */
  private Box freeAround(Box box) {
    Box bounds = outline.bounds();
    double left = bounds.left();
    double bottom = bounds.bottom();
    double right = bounds.right();
    double top = bounds.top();
    for (Box opening : openings) {
      boolean isBeside = opening.bottom() < box.top() && box.bottom() < opening.top();
      boolean isInLine = opening.left() < box.right() && box.left() < opening.right();
      if (isBeside && opening.right() <= box.left() + HAIR) {
        left = Math.max(left, opening.right());
      } else if (isBeside && opening.left() >= box.right() - HAIR) {
        right = Math.min(right, opening.left());
      } else if (isInLine && opening.top() <= box.bottom() + HAIR) {
        bottom = Math.max(bottom, opening.top());
      } else if (isInLine && opening.bottom() >= box.top() - HAIR) {
        top = Math.min(top, opening.bottom());
      }
    }
    return new Box(left, bottom, right, top);
  }

  /** The plane's own extent beside a band. */
  private Box reach(Box band) {
    Box bounds = outline.bounds();
    Box row = new Box(bounds.left(), band.bottom(), bounds.right(), band.top());
    double left = band.left();
    double right = band.right();
    for (Region region : outline.within(row)) {
      if (region.bounds().right() > band.left() - HAIR
          && region.bounds().left() < band.right() + HAIR) {
        left = Math.min(left, region.bounds().left());
        right = Math.max(right, region.bounds().right());
      }
    }
    return new Box(left, bounds.bottom(), right, bounds.top());
  }

  private double lineBelow(double y) {
    double below = courseLines.get(0);
    for (int i = 0; i + 1 < courseLines.size(); i++) {
      below = courseLines.get(i) <= y + HAIR ? courseLines.get(i) : below;
      double middle = middle(i);
      below = middle <= y + HAIR ? Math.max(below, middle) : below;
    }
    return below;
  }

  private double lineAbove(double y) {
    double above = courseLines.get(courseLines.size() - 1);
    for (int i = courseLines.size() - 2; i >= 0; i--) {
      above = courseLines.get(i + 1) >= y - HAIR ? courseLines.get(i + 1) : above;
      double middle = middle(i);
      above = middle >= y - HAIR ? Math.min(above, middle) : above;
    }
    return above;
  }

  /** The middle of a course, where both halves are high enough; else its upper line. */
  private double middle(int course) {
    double bottom = courseLines.get(course);
    double top = courseLines.get(course + 1);
    return (top - bottom) / 2 >= minHeight - HAIR ? (bottom + top) / 2 : top;
  }

  private double supportBefore(double x, double limit) {
    List<Double> centers = supports.between(limit - HAIR, x + HAIR);
    return centers.isEmpty() ? limit : Math.max(limit, centers.get(centers.size() - 1));
  }

  private double supportAfter(double x, double limit) {
    List<Double> centers = supports.between(x - HAIR, limit + HAIR);
    return centers.isEmpty() ? limit : Math.min(limit, centers.get(0));
  }

  /**
   * Made longer by the shorter bay until it is long enough and crosses enough spans, or cannot
   * grow.
   */
  private Box lengthened(Box box, Box free) {
    double left = box.left();
    double right = box.right();
    while (isTooShort(left, right)) {
      double further = supportBefore(left - 1, free.left());
      double beyond = supportAfter(right + 1, free.right());
      double before = left - further;
      double after = beyond - right;
      if (before <= HAIR && after <= HAIR) {
        break;
      }
      if (after > HAIR && (before <= HAIR || after <= before)) {
        right = beyond;
      } else {
        left = further;
      }
    }
    return new Box(left, box.bottom(), right, box.top());
  }

  private boolean isTooShort(double left, double right) {
    return right - left < minLength - HAIR || spans(left, right) < minSpans;
  }

  private int spans(double left, double right) {
    return supports.between(left - HAIR, right + HAIR).size() - 1;
  }

  /** Whether a box crosses no opening. */
  boolean isFree(Box box) {
    return openings.stream().noneMatch(box::overlaps);
  }

  /** Whether the old wood between two patches would be too short or too low to stay. */
  boolean leavesTooLittleBetween(Box one, Box other) {
    boolean isBeside = one.bottom() < other.top() && other.bottom() < one.top();
    boolean isInLine = one.left() < other.right() && other.left() < one.right();
    if (isBeside == isInLine) {
      return isBeside;
    }
    double from =
        isBeside ? Math.min(one.right(), other.right()) : Math.min(one.top(), other.top());
    double to =
        isBeside ? Math.max(one.left(), other.left()) : Math.max(one.bottom(), other.bottom());
    return isBeside ? isTooShort(from, to) : to - from < minHeight - HAIR;
  }

  /** The patch that fills a box. */
  Patch patch(int number, List<String> marks, Box box) {
    List<Patch.Piece> pieces = new ArrayList<>();
    boolean isNarrow = false;
    PieceSplit split = new PieceSplit(supports, minSpans, minLength);
    int row = 0;
    for (int i = 0; i + 1 < courseLines.size(); i++) {
      double bottom = Math.max(box.bottom(), courseLines.get(i));
      double top = Math.min(box.top(), courseLines.get(i + 1));
      if (top - bottom > HAIR) {
        boolean isShifted = row++ % 2 == 1;
        for (Box module : split.modules(new Box(box.left(), bottom, box.right(), top), isShifted)) {
          for (Region part : outline.within(module)) {
            Box cut = part.bounds();
            pieces.add(new Patch.Piece(cut, cut.width() - gap, cut.height() - gap));
            isNarrow |=
                isTooShort(module.left(), module.right()) || module.height() < minHeight - HAIR;
          }
        }
      }
    }
    return new Patch(
        number,
        marks,
        box,
        end(box.left(), new Box(box.left() - 1, box.bottom(), box.left(), box.top())),
        end(box.right(), new Box(box.right(), box.bottom(), box.right() + 1, box.top())),
        pieces,
        edge(box, box.bottom()) + edge(box, box.top()),
        isNarrow);
  }

  private double edge(Box box, double y) {
    return outline.lengthInside(new Spot(box.left(), y), new Spot(box.right(), y));
  }

  private End end(double x, Box beyond) {
    if (Math.abs(supports.nearest(x) - x) <= supportReach()) {
      return End.SUPPORT;
    }
    boolean isAtAnOpening = openings.stream().anyMatch(beyond::overlaps);
    return isAtAnOpening || !outline.within(beyond).isEmpty() ? End.SCAB : End.EDGE;
  }

  /** How far from a support's center an end may lie and still bear on it. */
  private double supportReach() {
    return Math.max(HAIR, 0.75 - bearing);
  }
}
