package sheathwright.figure;

import sheathwright.figure.Quantity.Ratio;

/**
 * A demand held against a capacity.
 *
 * @param what what is checked, in words
 * @param demand what is asked of it
 * @param capacity what it can give
 * @param ratio demand divided by capacity
 * @param ok whether the ratio is at most one
 */
public record Check(
    String what, Figure<?> demand, Figure<?> capacity, Figure<Ratio> ratio, Condition ok) {

  /** What a check comes to as it is now; a cell keeps the live formula. */
  public sealed interface Outcome {

    /** In a word or few, as the prompt says it. */
    String words();

    /** Whether it is known to hold: what nobody looked at does not. */
    default boolean isSound() {
      return this instanceof Holds;
    }
  }

  /** The capacity is enough. */
  public record Holds(Check check) implements Outcome {

    @Override
    public String words() {
      return "ok";
    }
  }

  /** The demand is more than the capacity. */
  public record Fails(Check check) implements Outcome {

    @Override
    public String words() {
      return "NOT ok";
    }
  }

  /**
   * Nobody can say, because something is not known.
   *
   * @param why what is not known, and what would have to be looked at or given
   */
  public record NotLooked(Check check, String why) implements Outcome {

    @Override
    public String words() {
      return "not looked at: " + why;
    }
  }

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> NO_RATIO = Figure.none("none allowed", Units.RATIO);

  /** The check of a demand against a capacity, its ratio under a name. */
  public static Check of(String what, String ratioName, Figure<?> demand, Figure<?> capacity) {
    Figure<Ratio> ratio = demand.dividedBy(capacity).as(ratioName, Units.RATIO, Source.ARITHMETIC);
    return new Check(what, demand, capacity, ratio, ratio.isAtMost(ONE));
  }

  /** The check of something of which there may be none. */
  public static Check noneOf(String what, Figure<Ratio> count) {
    return new Check(what, count, NONE, NO_RATIO, count.isAtMost(NONE));
  }

  /** What it comes to as it is now. */
  public Outcome outcome() {
    return ok.refusal()
        .<Outcome>map(refusal -> new NotLooked(this, refusal.reason()))
        .orElseGet(() -> ok.holds() ? new Holds(this) : new Fails(this));
  }

  @Override
  public String toString() {
    return "%s: %s of %s, ratio %s, %s".formatted(what, demand, capacity, ratio, outcome().words());
  }
}
