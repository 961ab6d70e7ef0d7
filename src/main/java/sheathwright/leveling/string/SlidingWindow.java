package sheathwright.leveling.string;

/**
 * A straightedge of a given length, slid along a line of drops: the farthest that the line departs
 * from the chord under any window up to that length, wherever its ends lie. Exact: the worst window
 * has both ends on readings, or the full length with an end on a reading, or the full length at the
 * turning point of a parabola between two such places.
 */
final class SlidingWindow {

  private final Profile line;
  private final double length;

  private SlidingWindow(Profile line, double length) {
    this.line = line;
    this.length = length;
  }

  /**
   * The worst departure.
   *
   * @param drops below the string along the line, low positive
   * @param length of the window; a shorter line is one window
   */
  static Departure worst(Profile drops, double length) {
    return new SlidingWindow(drops, length).worst();
  }

  private Departure worst() {
    Departure worst = Departure.NONE;
    double[] places = line.places();
    for (int i = 1; i < places.length - 1; i++) {
      worst = worst.orWorse(betweenReadings(i)).orWorse(ofFullLength(places[i]));
    }
    return worst;
  }

  private Departure betweenReadings(int at) {
    double[] places = line.places();
    Departure worst = Departure.NONE;
    for (int i = at - 1; i >= 0 && places[at] - places[i] < length; i--) {
      for (int j = at + 1; j < places.length && places[j] - places[i] <= length; j++) {
        worst = worst.orWorse(departure(places[at], places[i], places[j]));
      }
    }
    return worst;
  }

  /** Full windows over a place, from the leftmost to the rightmost, knot by knot. */
  private Departure ofFullLength(double at) {
    double left = Math.max(line.first(), at - length);
    double right = Math.min(at, line.last() - length);
    if (left > right) {
      return Departure.NONE;
    }
    double[] starts = starts(left, right);
    Departure worst = over(at, starts[0]);
    for (int i = 1; i < starts.length; i++) {
      worst = worst.orWorse(over(at, starts[i])).orWorse(turning(at, starts[i - 1], starts[i]));
    }
    return worst;
  }

  private double[] starts(double left, double right) {
    return java.util.stream.DoubleStream.of(line.places())
        .flatMap(place -> java.util.stream.DoubleStream.of(place, place - length))
        .filter(start -> start > left && start < right)
        .boxed()
        .collect(
            () -> new java.util.TreeSet<>(java.util.List.of(left, right)),
            java.util.TreeSet::add,
            java.util.TreeSet::addAll)
        .stream()
        .mapToDouble(Double::doubleValue)
        .toArray();
  }

  /** Between two knots the departure is a parabola of where the window starts. */
  private Departure turning(double at, double left, double right) {
    double half = (right - left) / 2;
    double middle = over(at, left + half).amount();
    double slope = over(at, right).amount() - over(at, left).amount();
    double bend = over(at, right).amount() + over(at, left).amount() - 2 * middle;
    double place = -slope / (2 * bend);
    return bend != 0 && Math.abs(place) < 1 ? over(at, left + half + place * half) : Departure.NONE;
  }

  private Departure over(double at, double start) {
    return departure(at, start, start + length);
  }

  private Departure departure(double at, double from, double to) {
    double share = (at - from) / (to - from);
    double chord = line.at(from) + share * (line.at(to) - line.at(from));
    return new Departure(line.at(at) - chord, at, from, to);
  }
}
