package sheathwright.figure;

/**
 * What a value may be.
 *
 * @param least the least value allowed, in the unit of the figure it limits
 * @param most the greatest value allowed
 * @param onlyTheEnds whether nothing between the two is allowed
 * @param rule whose rule it is, and something right to try
 */
public record Limits(double least, double most, boolean onlyTheEnds, String rule) {

  /** Anything that a cell can hold. */
  public static final Limits NONE =
      new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false, "");

  /** Anything from the one to the other, both allowed. */
  public static Limits between(double least, double most, String rule) {
    return new Limits(least, most, false, rule);
  }

  /** One or the other and nothing else. */
  public static Limits either(double one, double other, String rule) {
    return new Limits(one, other, true, rule);
  }

  /** Whether anything at all is limited. */
  public boolean exist() {
    return least > Double.NEGATIVE_INFINITY || most < Double.POSITIVE_INFINITY;
  }

  boolean allow(double value) {
    return onlyTheEnds ? value == least || value == most : value >= least && value <= most;
  }

  /** What is allowed, in words: {@code from 0.31 to 0.73}. */
  public String inWords() {
    return onlyTheEnds
        ? Shown.plain(least) + " or " + Shown.plain(most)
        : "from " + Shown.plain(least) + " to " + Shown.plain(most);
  }

  Refusal refusal(String name, String given) {
    return new Refusal(
        name + " is " + given + "; it must be " + inWords() + (rule.isEmpty() ? "" : ", " + rule));
  }
}
