package sheathwright.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The centers of supports in inches from a plane's left edge, as plain numbers. */
public final class Centers {

  private final double first;
  private final double spacing;
  private final double[] measured;

  private Centers(double first, double spacing, double[] measured) {
    this.first = first;
    this.spacing = spacing;
    this.measured = measured;
  }

  /** At one spacing, without end to either side. */
  static Centers every(double spacing, double first) {
    return new Centers(first, spacing, null);
  }

  /** From the left, where they were measured. */
  static Centers at(double[] measured) {
    return new Centers(measured[0], 0, measured);
  }

  private boolean isRegular() {
    return measured == null;
  }

  /** Centers from the one place to the other, both included. */
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
    return candidates.min(Comparator.comparingDouble(center -> Math.abs(center - x))).orElseThrow();
  }
}
