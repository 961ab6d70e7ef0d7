package sheathwright.leveling.string;

/**
 * How far a line departs from the straight line that joins two places on it, in inches.
 *
 * @param amount low positive, high negative
 * @param at where along the line
 * @param from one end of the straight line
 * @param to its other end
 */
record Departure(double amount, double at, double from, double to) {

  /** A line that is straight, or too short to tell. */
  static final Departure NONE = new Departure(0, 0, 0, 0);

  /** Less than this apart, two departures are one, and the first place stays. */
  private static final double DUST = 1e-9;

  double size() {
    return Math.abs(amount);
  }

  Departure orWorse(Departure other) {
    return other.size() > size() + DUST ? other : this;
  }
}
