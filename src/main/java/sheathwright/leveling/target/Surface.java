package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sheathwright.roof.Spot;

/**
 * Something measured at stations along each rafter, taken as flat between three neighboring
 * stations: what it is anywhere between, and where it is so and so much.
 *
 * <p>Neighboring rafters are joined by triangles from the eave up, each time to the station that
 * comes next. Beyond the outermost stations there is no surface. Inches throughout.
 */
public final class Surface {

  /** What was measured at one station. */
  public record Height(Spot at, double value) {}

  /** A piece of a contour. */
  public record Line(double level, Spot from, Spot to) {}

  private record Triangle(Height a, Height b, Height c) {}

  /** Contours that a picture can still tell apart; {@link #levels} promises them. */
  private static final int MOST_LEVELS = 8;

  private final List<Triangle> triangles = new ArrayList<>();

  private Surface() {}

  /**
   * The surface through the stations of each rafter.
   *
   * @param rafters in the order in which they stand side by side; a rafter's stations in any order
   */
  public static Surface through(List<List<Height>> rafters) {
    Surface surface = new Surface();
    List<List<Height>> sorted =
        rafters.stream()
            .map(
                stations ->
                    stations.stream().sorted(Comparator.comparing(each -> each.at().y())).toList())
            .toList();
    for (int i = 0; i + 1 < sorted.size(); i++) {
      surface.join(sorted.get(i), sorted.get(i + 1));
    }
    return surface;
  }

  private void join(List<Height> left, List<Height> right) {
    int l = 0;
    int r = 0;
    while (l + 1 < left.size() || r + 1 < right.size()) {
      boolean leftIsNext =
          r + 1 == right.size()
              || l + 1 < left.size() && left.get(l + 1).at().y() <= right.get(r + 1).at().y();
      Height next = leftIsNext ? left.get(l + 1) : right.get(r + 1);
      triangles.add(new Triangle(left.get(l), right.get(r), next));
      l += leftIsNext ? 1 : 0;
      r += leftIsNext ? 0 : 1;
    }
  }

  /**
   * Levels to draw contours at: even steps of an eighth, a quarter, a half or a whole inch, eight
   * at most, above nothing and up to the greatest.
   */
  public static List<Double> levels(double greatest) {
    double step = 0.125;
    while (greatest / step > MOST_LEVELS) {
      step *= 2;
    }
    List<Double> levels = new ArrayList<>();
    for (int i = 1; i * step < greatest; i++) {
      levels.add(i * step);
    }
    return levels;
  }

  /** Whether there is anything between the stations. */
  public boolean isEmpty() {
    return triangles.isEmpty();
  }

  /** What it is at a place; nothing beyond the stations. */
  public OptionalDouble at(Spot place) {
    for (Triangle t : triangles) {
      double whole = area(t.a.at(), t.b.at(), t.c.at());
      double a = area(place, t.b.at(), t.c.at()) / whole;
      double b = area(t.a.at(), place, t.c.at()) / whole;
      double c = 1 - a - b;
      double least = Math.min(a, Math.min(b, c));
      if (least >= -1e-9) {
        return OptionalDouble.of(a * t.a.value() + b * t.b.value() + c * t.c.value());
      }
    }
    return OptionalDouble.empty();
  }

  /** The pieces of the contour on which it is one value. */
  public List<Line> lines(double level) {
    List<Line> lines = new ArrayList<>();
    for (Triangle t : triangles) {
      List<Spot> crossings = new ArrayList<>();
      cross(t.a, t.b, level, crossings);
      cross(t.b, t.c, level, crossings);
      cross(t.c, t.a, level, crossings);
      if (crossings.size() == 2) {
        lines.add(new Line(level, crossings.get(0), crossings.get(1)));
      }
    }
    return lines;
  }

  /** Where a side goes from below a level to it or above: half-open, so that corners count once. */
  private static void cross(Height from, Height to, double level, List<Spot> crossings) {
    if (from.value() < level != to.value() < level) {
      double part = (level - from.value()) / (to.value() - from.value());
      crossings.add(
          new Spot(
              from.at().x() + part * (to.at().x() - from.at().x()),
              from.at().y() + part * (to.at().y() - from.at().y())));
    }
  }

  private static double area(Spot a, Spot b, Spot c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y());
  }
}
