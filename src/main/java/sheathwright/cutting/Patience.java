package sheathwright.cutting;

/**
 * How long a search may go on. A search asks often, and when the answer is yes it hands over the
 * best plan that it has. The clock is the caller's: this room has none. Where the work ends before
 * patience does, the same input gives the same plan.
 */
@FunctionalInterface
public interface Patience {

  /** About how often a search asks. */
  double ASKED_A_SECOND = 1000;

  /** Never runs out: the search ends by its own count of work. */
  Patience ENDLESS = () -> Double.POSITIVE_INFINITY;

  /**
   * Runs out when it has been asked so often, and so at the same place every time: a plan that must
   * not depend on how fast a machine is. A search asks some thousand times a second.
   */
  static Patience asked(int times) {
    return new CountedPatience(times);
  }

  /** Seconds that are left, zero or less when there are none. */
  double secondsLeft();

  /** Patience that runs out when this share of what is left now is used up. */
  default Patience part(double share) {
    double kept = (1 - share) * secondsLeft();
    return Double.isInfinite(kept) ? this : () -> secondsLeft() - kept;
  }

  /** Whether the search must hand over what it has. */
  default boolean isSpent() {
    return secondsLeft() <= 0;
  }
}
