package sheathwright.sheathing.patch;

import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.layout.StripRule;

/**
 * Planes, supports and marks drawn by a seeded generator; nothing in them was measured anywhere.
 */
public final class RandomDecks {

  private final Random random;

  public RandomDecks(long seed) {
    random = new Random(seed);
  }

  /** A rectangle, triangle, trapezoid or valley plane, perhaps with an opening. */
  public Plane plane() {
    double eave = 16 + random.nextInt(40);
    double slope = 6 + random.nextInt(60) / 4.0;
    Plane plane =
        switch (random.nextInt(4)) {
          case 0 -> Plane.triangle("plane", ft(eave), ft(slope));
          case 1 -> Plane.trapezoid("plane", ft(eave), ft(slope), ft(eave / 4), ft(eave / 8));
          case 2 -> Plane.trapezoid("plane", ft(eave), ft(slope), ft(0), ft(-6));
          default -> Plane.rectangle("plane", ft(eave), ft(slope));
        };
    if (random.nextBoolean()) {
      try {
        return plane.without(
            in(48 + random.nextInt((int) (eave * 6))),
            in(6 + random.nextInt((int) (slope * 6))),
            in(16 + random.nextInt(40)),
            in(16 + random.nextInt(30)));
      } catch (RefusedException offThePlane) {
        return plane;
      }
    }
    return plane;
  }

  /** Regular supports, or ones that wander. */
  public Supports supports(Plane plane) {
    double[] spacings = {12, 16, 19.2, 24};
    double spacing = spacings[random.nextInt(spacings.length)];
    if (random.nextInt(3) > 0) {
      return Supports.every(in(spacing), in(random.nextInt(3) * 3));
    }
    List<Figure<Length>> centers = new ArrayList<>();
    double right = plane.outline(Reading.aside()).bounds().right();
    for (double x = 0; x < right + spacing; x += spacing + (random.nextInt(33) - 16) / 8.0) {
      centers.add(in(x));
    }
    return Supports.at(centers);
  }

  /** Marks that have some wood in them, or none. */
  List<Mark> marks(Plane plane, int count) {
    List<Mark> marks = new ArrayList<>();
    double wide = plane.outline(Reading.aside()).bounds().width();
    double high = plane.outline(Reading.aside()).bounds().height();
    for (int i = 0; i < count; i++) {
      marks.add(
          Mark.of(
              "M" + (i + 1),
              Choice.literal(Finding.ROT),
              in(Math.floor(random.nextDouble() * (wide - 12))),
              in(Math.floor(random.nextDouble() * (high - 12))),
              in(2 + random.nextInt(40)),
              in(2 + random.nextInt(40))));
    }
    return marks;
  }

  public LayoutRules rules() {
    StripRule[] strips = StripRule.values();
    return LayoutRules.USUAL
        .strips(Choice.literal(strips[random.nextInt(strips.length)]))
        .origin(in(random.nextInt(8) * 12))
        .stagger(in(random.nextInt(4) * 16));
  }
}
