package sheathwright.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;

/**
 * The rafters or trusses under a plane, by their centers along the eave: regular, or as they were
 * measured.
 */
public final class Supports {

  private static final double SMALLEST_SPACING = 6;
  private static final double LARGEST_SPACING = 60;

  private final List<Solution.Input> given;
  private final double first;
  private final double spacing;
  private final double[] measured;

  private Supports(List<Solution.Input> given, double first, double spacing, double[] measured) {
    this.given = given;
    this.first = first;
    this.spacing = spacing;
    this.measured = measured;
  }

  /** Regular supports, the first on the plane's left edge. */
  public static Supports every(Figure<Length> spacing) {
    return every(spacing, Figure.of(0, Units.INCH));
  }

  /**
   * Regular supports.
   *
   * @param spacing center to center, at least 6 in
   * @param first center of any one of them, from the plane's left edge
   */
  public static Supports every(Figure<Length> spacing, Figure<Length> first) {
    double inches = spacing.in(Units.INCH).value();
    if (inches < SMALLEST_SPACING || inches > LARGEST_SPACING) {
      throw new RefusedException(
          "supports are %s apart; they must be from 6 to 60 in center to center, 16 or 24 is usual"
              .formatted(spacing),
          List.of(spacing));
    }
    return new Supports(
        List.of(
            new Solution.Input("spacing of the supports", spacing),
            new Solution.Input("first support", first)),
        first.in(Units.INCH).value(),
        inches,
        null);
  }

  /** Supports where they were measured, in any order, from the plane's left edge. */
  @SafeVarargs
  @SuppressWarnings("varargs")
  public static Supports at(Figure<Length>... centers) {
    return at(Arrays.asList(centers));
  }

  /** Supports where they were measured, in any order, from the plane's left edge. */
  public static Supports at(List<Figure<Length>> centers) {
    double[] inches =
        centers.stream().mapToDouble(center -> center.in(Units.INCH).value()).sorted().toArray();
    if (inches.length < 2) {
      throw new RefusedException(
          "a plane stands on at least 2 supports; measure every center", centers);
    }
    for (int i = 1; i < inches.length; i++) {
      if (inches[i] - inches[i - 1] > LARGEST_SPACING) {
        throw new RefusedException(
            "no support is measured between %s and %s in; no panel spans more than 60 in"
                .formatted(inches[i - 1], inches[i]),
            at(centers, inches[i], inches[i - 1]));
      }
      if (inches[i] - inches[i - 1] < 1) {
        throw new RefusedException(
            "two supports are measured at %s and %s in; two side by side are one, of double width"
                .formatted(inches[i - 1], inches[i]),
            at(centers, inches[i], inches[i - 1]));
      }
    }
    List<Solution.Input> given = new ArrayList<>();
    for (Figure<Length> center : centers) {
      given.add(new Solution.Input("support " + (given.size() + 1), center));
    }
    return new Supports(List.copyOf(given), inches[0], 0, inches);
  }

  private static List<Figure<Length>> at(
      List<Figure<Length>> centers, double later, double earlier) {
    return Stream.of(later, earlier)
        .flatMap(at -> centers.stream().filter(center -> center.in(Units.INCH).value() == at))
        .toList();
  }

  /** What they were said to be. */
  public List<Solution.Input> given() {
    return given;
  }

  /** Whether they stand at one spacing. */
  public boolean isRegular() {
    return measured == null;
  }

  /** Centers from the one place to the other, both included, in inches from the left. */
  public List<Double> between(double from, double to) {
    if (!isRegular()) {
      return Arrays.stream(measured).filter(x -> x >= from && x <= to).boxed().toList();
    }
    List<Double> centers = new ArrayList<>();
    for (long i = (long) Math.ceil((from - first) / spacing); first + i * spacing <= to; i++) {
      centers.add(first + i * spacing);
    }
    return centers;
  }

  /** The center nearest to a place. */
  public double nearest(double x) {
    Stream<Double> candidates =
        isRegular()
            ? Stream.of(Math.floor((x - first) / spacing), Math.ceil((x - first) / spacing))
                .map(i -> first + i * spacing)
            : Arrays.stream(measured).boxed();
    return candidates
        .min(java.util.Comparator.comparingDouble(center -> Math.abs(center - x)))
        .orElseThrow();
  }

  @Override
  public String toString() {
    return isRegular()
        ? "supports every " + given.get(0).value().shown()
        : measured.length + " measured supports";
  }
}
