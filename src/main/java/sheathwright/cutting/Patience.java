package sheathwright.cutting;

/**
 * How long a search may go on. A search asks often, and when the answer is yes it hands over the
 * best plan that it has. The clock is the caller's: this room has none. Where the work ends before
 * patience does, the same input gives the same plan.
 */
@FunctionalInterface
public interface Patience {

  /** Never runs out: the search ends by its own count of work. */
  Patience ENDLESS = () -> Double.POSITIVE_INFINITY;

  /** Seconds that are left, zero or less when there are none. */
  double secondsLeft();

  /** Whether the search must hand over what it has. */
  default boolean isSpent() {
    return secondsLeft() <= 0;
  }
}
