package sheathwright.levelling;

import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * What the screening of the old rafters came to, as a levelling plan must know it.
 *
 * @param check the greatest ratio of that screening against one
 */
public record FramingAnswer(Check check) {

  private static final Figure<Ratio> ALL_OF_IT =
      Figure.constant("framing_limit", 1, Units.RATIO, Source.ARITHMETIC);

  /**
   * The answer from the greatest of the rafter check's ratios.
   *
   * @param ratio demand over capacity, 0 or more
   */
  public static FramingAnswer of(Figure<Ratio> ratio) {
    return new FramingAnswer(
        Check.of("the old rafters as they are", "framing_ratio_of_one", ratio, ALL_OF_IT));
  }
}
