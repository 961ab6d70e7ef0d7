package sheathwright.roof;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/** The planes of a house, each in its own place: feet along its eave and up its slope. */
final class HousePlanes {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Length> NONE = Figure.of(0, Units.FOOT);
  private static final double DUST = 1e-9;

  private final House house;
  private final Figure<Ratio> slope;
  private final Figure<Length> run;
  private final boolean isHipped;

  private HousePlanes(House house) {
    this.house = house;
    slope = Slopes.slopeFactor(house.plan().body().rise());
    run = half(house.plan().body().width());
    isHipped = house.plan().body().ends().choice().value() == RoofEnds.HIPPED;
  }

  static List<Plane> of(House house) {
    HousePlanes planes = new HousePlanes(house);
    List<Plane> all = new ArrayList<>();
    for (HouseSide side : HouseSide.values()) {
      planes.ofSide(side, all);
    }
    return all;
  }

  private void ofSide(HouseSide side, List<Plane> all) {
    List<HousePart> parts =
        house.plan().parts().stream()
            .filter(part -> part.side() == side && House.feet(part.width()) > 0)
            .sorted(Comparator.comparingDouble(HousePart::left))
            .toList();
    boolean isEnd = side == HouseSide.LEFT || side == HouseSide.RIGHT;
    if (isEnd && !isHipped) {
      if (!parts.isEmpty()) {
        throw new RefusedException(
            "the %s is a gable and has no slope for a %s; put it on the front or the back"
                .formatted(side.word(), parts.get(0).word()));
      }
      return;
    }
    Figure<Length> eave = isEnd ? house.plan().body().width() : house.plan().body().length();
    refuseWhatOverlaps(parts, side);
    Plane plane = atTheEave(side, eave, parts);
    int gabled = 0;
    for (HousePart part : parts) {
      plane = cutOut(plane, part);
      if (part.isGabled()) {
        gabled++;
      }
    }
    all.add(plane);
    int number = 0;
    for (HousePart part : parts) {
      if (part.isGabled()) {
        number++;
        String name = side.word() + " " + part.word() + (gabled > 1 ? " " + number : "");
        all.addAll(gables(name, part));
      }
    }
  }

  private static void refuseWhatOverlaps(List<HousePart> parts, HouseSide side) {
    double free = 0;
    for (HousePart part : parts) {
      if (part.isAtTheEave()) {
        if (part.left() < free - DUST) {
          throw new RefusedException(
              "the %s that begins at %s of the %s stands in another one, which ends at %s"
                  .formatted(part.word(), said(part.left()), side.word(), said(free)));
        }
        free = part.right();
      }
    }
  }

  /** The slope of a side: valleys run up into it beside a wing, a porch carries it on. */
  private Plane atTheEave(HouseSide side, Figure<Length> eave, List<HousePart> parts) {
    List<HousePart> changing = parts.stream().filter(HousePart::isAtTheEave).toList();
    Figure<Length> lean = isHipped ? run : NONE;
    if (changing.isEmpty()) {
      return Plane.trapezoid(side.word(), eave, onTheSlope(run), lean, lean);
    }
    List<Spot> plan = new ArrayList<>();
    add(plan, 0, 0);
    for (HousePart part : changing) {
      double depth = House.feet(part.depth());
      add(plan, part.left(), 0);
      if (part.kind() == HousePart.Kind.WING) {
        add(plan, (part.left() + part.right()) / 2, (part.right() - part.left()) / 2);
      } else {
        add(plan, part.left(), -depth);
        add(plan, part.right(), -depth);
      }
      add(plan, part.right(), 0);
    }
    double width = House.feet(eave);
    add(plan, width, 0);
    add(plan, width - House.feet(lean), House.feet(run));
    add(plan, House.feet(lean), House.feet(run));
    String corners =
        plan.stream()
            .map(spot -> Shown.plain(spot.x()) + " " + Shown.plain(spot.y()))
            .collect(joining(", "));
    Plane plane = Plane.outlineOfPlan(side.word(), corners, house.plan().body().rise());
    return new HouseMeasures().body(side, eave, run).parts(changing).under(plane);
  }

  private static void add(List<Spot> plan, double x, double y) {
    Spot spot = new Spot(x, y);
    if (plan.isEmpty() || !plan.get(plan.size() - 1).equals(spot)) {
      plan.add(spot);
    }
  }

  private Plane cutOut(Plane plane, HousePart part) {
    return switch (part.kind()) {
      case WING, PORCH -> plane;
      case CHIMNEY ->
          plane.without(part.at(), onTheSlope(part.from()), part.width(), onTheSlope(part.depth()));
      case DORMER ->
          new HouseMeasures().parts(List.of(part)).under(plane.without(dormer(part), area(part)));
    };
  }

  /** The outline of a dormer on the slope that it stands on, in inches. */
  private List<Spot> dormer(HousePart part) {
    double up = slope.value();
    double front = House.feet(part.from());
    double eaves = front + House.feet(part.depth());
    double ridge = eaves + House.feet(part.width()) / 2;
    double middle = (part.left() + part.right()) / 2;
    return List.of(
        new Spot(part.left() * 12, front * 12 * up),
        new Spot(part.right() * 12, front * 12 * up),
        new Spot(part.right() * 12, eaves * 12 * up),
        new Spot(middle * 12, ridge * 12 * up),
        new Spot(part.left() * 12, eaves * 12 * up));
  }

  private Figure<Area> area(HousePart part) {
    Figure<Length> deep = part.depth().in(Units.FOOT).plus(half(half(part.width())));
    return part.width().times(deep).times(slope).in(Units.SQUARE_FOOT);
  }

  /** The two slopes of a gabled part, left and right as one faces its gable. */
  private List<Plane> gables(String name, HousePart part) {
    Figure<Length> reach = half(part.width());
    Figure<Length> valley = NONE.minus(reach);
    return List.of(
        Plane.trapezoid(name + ", left", part.depth(), onTheSlope(reach), valley, NONE),
        Plane.trapezoid(name + ", right", part.depth(), onTheSlope(reach), NONE, valley));
  }

  private Figure<Length> onTheSlope(Figure<Length> plan) {
    return plan.times(slope).in(Units.FOOT);
  }

  private static Figure<Length> half(Figure<Length> whole) {
    return whole.dividedBy(TWO).in(Units.FOOT);
  }

  private static String said(double feet) {
    return Lengths.inFeetAndInches(feet * 12);
  }
}
