package sheathwright.sheathing.patch;

import static sheathwright.sheathing.layout.LayoutRules.HAIR;

import java.util.ArrayList;
import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.roof.Outline;
import sheathwright.roof.Region;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Patch.End;
import sheathwright.sheathing.place.PlaceKey;

/**
 * Where a patch of one place may end: sideways on the centers of supports and at the place's own
 * joints, upwards at its edges or on its middle, so that what is left of the old sheet is neither
 * too short nor too low, and never beyond an opening, a joint or the plane's edge.
 */
final class PatchFrame {

  private final Outline deck;
  private final Outline outline;
  private final List<Box> openings;
  private final Centers supports;
  private final double gap;
  private final double bearing;
  private final double beyondMark;
  private final double minLength;
  private final double minHeight;
  private final int minSpans;

  /**
   * @param deck the whole plane
   * @param outline of the place
   * @param old how the deck lies: its gaps and bearings
   */
  PatchFrame(
      Outline deck,
      Outline outline,
      List<Box> openings,
      Centers supports,
      LayoutRules.Plain old,
      PatchRules.Plain rules) {
    this.deck = deck;
    this.outline = outline;
    this.openings = openings;
    this.supports = supports;
    this.gap = old.gap();
    this.bearing = old.minBearing();
    this.beyondMark = rules.beyondMark();
    this.minLength = rules.minLength();
    this.minHeight = rules.minHeight();
    this.minSpans = rules.minSpans();
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
    Box bounds = outline.bounds();
    return hasMiddle() && bounds.middleY() <= y + HAIR ? bounds.middleY() : bounds.bottom();
  }

  private double lineAbove(double y) {
    Box bounds = outline.bounds();
    return hasMiddle() && bounds.middleY() >= y - HAIR ? bounds.middleY() : bounds.top();
  }

  /** Whether both halves of the place are high enough. */
  private boolean hasMiddle() {
    return outline.bounds().height() / 2 >= minHeight - HAIR;
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
   * Made longer until it is long enough and crosses enough spans, or cannot grow: by what would be
   * left too short of the old sheet beside it, else by the shorter bay.
   */
  private Box lengthened(Box box, Box free) {
    Box longer = untilTheRestIsLongEnough(box, free);
    while (isTooShort(longer.left(), longer.right())) {
      double further = supportBefore(longer.left() - 1, free.left());
      double beyond = supportAfter(longer.right() + 1, free.right());
      double before = longer.left() - further;
      double after = beyond - longer.right();
      if (before <= HAIR && after <= HAIR) {
        break;
      }
      boolean isToTheRight = after > HAIR && (before <= HAIR || after <= before);
      Box grown =
          isToTheRight
              ? new Box(longer.left(), box.bottom(), beyond, box.top())
              : new Box(further, box.bottom(), longer.right(), box.top());
      longer = untilTheRestIsLongEnough(grown, free);
    }
    return longer;
  }

  private Box untilTheRestIsLongEnough(Box box, Box free) {
    return new Box(
        isTooShort(free.left(), box.left()) ? free.left() : box.left(),
        box.bottom(),
        isTooShort(box.right(), free.right()) ? free.right() : box.right(),
        box.top());
  }

  private boolean isTooShort(double left, double right) {
    return right - left < minLength - HAIR || spans(left, right) < minSpans;
  }

  private int spans(double left, double right) {
    return supports.between(left - HAIR, right + HAIR).size() - 1;
  }

  /** Whether a box is too short or too low for a new piece, though the place is not. */
  boolean isSmallerThanItMustBe(Box box) {
    Box bounds = outline.bounds();
    return isTooShort(box.left(), box.right()) && !isTooShort(bounds.left(), bounds.right())
        || box.height() < minHeight - HAIR && bounds.height() >= minHeight - HAIR;
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

  /** The patch that fills a box of the place. */
  Patch patch(int number, PlaceKey place, List<String> marks, Box box) {
    return patch(number, place, marks, box, outline.within(box));
  }

  /** The patch that fills some parts of the place, as they lie. */
  Patch patch(int number, PlaceKey place, List<String> marks, Box box, List<Region> parts) {
    List<Patch.Piece> pieces = new ArrayList<>();
    boolean isNarrow = false;
    PieceSplit split = new PieceSplit(supports, minSpans, minLength);
    for (Region part : parts) {
      for (Box module : split.modules(part.bounds())) {
        isNarrow |= isTooShort(module.left(), module.right()) || module.height() < minHeight - HAIR;
        for (Region cut : part.outline().within(module)) {
          Box size = cut.bounds();
          if (size.width() > gap && size.height() > gap) {
            pieces.add(new Patch.Piece(size, cut.area(), size.width() - gap, size.height() - gap));
          }
        }
      }
    }
    return new Patch(
        number,
        place,
        marks,
        box,
        end(box.left(), new Box(box.left() - 1, box.bottom(), box.left(), box.top())),
        end(box.right(), new Box(box.right(), box.bottom(), box.right() + 1, box.top())),
        pieces,
        isNarrow);
  }

  private End end(double x, Box beyond) {
    if (Math.abs(supports.nearest(x) - x) <= supportReach()) {
      return End.SUPPORT;
    }
    boolean isAtAnOpening = openings.stream().anyMatch(beyond::overlaps);
    return isAtAnOpening || !deck.within(beyond).isEmpty() ? End.SCAB : End.EDGE;
  }

  /** How far from a support's center an end may lie and still bear on it. */
  private double supportReach() {
    return Math.max(HAIR, 0.75 - bearing);
  }
}
