package sheathwright.leveling.plan;

import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * What the screening of the old rafters came to, as a leveling plan must know it.
 *
 * @param check the greatest ratio of that screening against one
 * @param nothingReported whether nothing else was reported that stops a repair
 */
public record FramingAnswer(Check check, Condition nothingReported) {

  private static final Figure<Ratio> ALL_OF_IT =
      Figure.constant("framing_limit", 1, Units.RATIO, Source.ARITHMETIC);

  /**
   * The answer from the greatest of the rafter check's ratios, where nothing else stops a repair.
   *
   * @param ratio demand over capacity, 0 to 1000
   */
  public static FramingAnswer of(Figure<Ratio> ratio) {
    Check check = check(ratio);
    return new FramingAnswer(check, check.ok());
  }

  /**
   * The answer from that ratio and from what was reported of the framing.
   *
   * @param ratio demand over capacity, 0 to 1000
   * @param nothingReported whether nothing was reported that stops a repair
   */
  public static FramingAnswer of(Figure<Ratio> ratio, Condition nothingReported) {
    return new FramingAnswer(check(ratio), nothingReported);
  }

  private static Check check(Figure<Ratio> ratio) {
    var part =
        ratio.within(
            "framing_ratio", Units.RATIO, Limits.between(0, 1000, "from rafter_screening"));
    return Check.of("the old rafters as they are", "framing_ratio_of_one", part, ALL_OF_IT);
  }
}
