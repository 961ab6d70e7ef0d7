package sheathwright.roof;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sheathwright.catalog.InShort;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;

/**
 * The rafters or trusses under a plane, by their centers along the eave: regular, or as they were
 * measured.
 */
public final class Supports {

  private static final double SMALLEST_SPACING = 6;
  private static final double LARGEST_SPACING = 60;

  private final Reading reading;
  private final Centers centers;
  private final String words;
  private final Map<String, Traced> given;

  private Supports(Reading reading, Centers centers, String words, Map<String, Traced> given) {
    this.reading = reading;
    this.centers = centers;
    this.words = words;
    this.given = given;
  }

  /** Regular supports, the first on the plane's left edge. */
  @InShort
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
    Reading reading = new Reading();
    double inches = reading.number("spacing of the supports", spacing, Units.INCH);
    if (inches < SMALLEST_SPACING || inches > LARGEST_SPACING) {
      throw new RefusedException(
          "supports are %s apart; they must be from 6 to 60 in center to center, 16 or 24 is usual"
              .formatted(spacing),
          List.of(spacing));
    }
    return new Supports(
        reading,
        Centers.every(inches, reading.number("first support", first, Units.INCH)),
        "supports every " + spacing.shown(),
        inOrder(List.of("spacing", "first"), List.of(spacing, first)));
  }

  /** Supports where they were measured, in any order, from the plane's left edge. */
  @SafeVarargs
  @SuppressWarnings("varargs") // handed on as a list, and never written to
  public static Supports at(Figure<Length>... centers) {
    return at(Arrays.asList(centers));
  }

  /** Supports where they were measured, in any order, from the plane's left edge. */
  public static Supports at(List<Figure<Length>> centers) {
    Reading reading = new Reading();
    double[] asGiven =
        IntStream.range(0, centers.size())
            .mapToDouble(i -> reading.number("support " + (i + 1), centers.get(i), Units.INCH))
            .toArray();
    double[] inches = Arrays.stream(asGiven).sorted().toArray();
    if (inches.length < 2) {
      throw new RefusedException(
          "a plane stands on at least 2 supports; measure every center", centers);
    }
    for (int i = 1; i < inches.length; i++) {
      List<Double> two = List.of(inches[i], inches[i - 1]);
      if (inches[i] - inches[i - 1] > LARGEST_SPACING) {
        throw new RefusedException(
            "no support is measured between %s and %s in; no panel spans more than 60 in"
                .formatted(inches[i - 1], inches[i]),
            at(centers, asGiven, two));
      }
      if (inches[i] - inches[i - 1] < 1) {
        throw new RefusedException(
            "two supports are measured at %s and %s in; two side by side are one, of double width"
                .formatted(inches[i - 1], inches[i]),
            at(centers, asGiven, two));
      }
    }
    return new Supports(
        reading,
        Centers.at(inches),
        inches.length + " measured supports",
        inOrder(
            IntStream.rangeClosed(1, inches.length).mapToObj(String::valueOf).toList(), centers));
  }

  private static Map<String, Traced> inOrder(
      List<String> names, List<? extends Figure<Length>> figures) {
    Map<String, Traced> given = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      given.put(names.get(i), figures.get(i));
    }
    return Collections.unmodifiableMap(given);
  }

  private static List<Figure<Length>> at(
      List<Figure<Length>> centers, double[] asGiven, List<Double> places) {
    return places.stream()
        .flatMap(
            at ->
                IntStream.range(0, asGiven.length)
                    .filter(i -> asGiven[i] == at)
                    .mapToObj(centers::get))
        .toList();
  }

  /** Their centers. */
  public Centers centers(Reading solving) {
    solving.and(reading);
    return centers;
  }

  /** What they were said to be, each figure by its name: spacing and first, or by its number. */
  public Map<String, Traced> given() {
    return given;
  }

  @Override
  public String toString() {
    return words;
  }
}
