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

  @Override
  public String toString() {
    return "%s: %s of %s, ratio %s, %s"
        .formatted(
            what,
            demand,
            capacity,
            ratio,
            ok.refusal().isPresent() ? "not known" : ok.holds() ? "ok" : "NOT ok");
  }
}
