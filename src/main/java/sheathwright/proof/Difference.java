package sheathwright.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import sheathwright.catalog.Result;

/**
 * One result of a case held against what was expected.
 *
 * @param result which
 * @param expected as the table of cases has it
 * @param given as the function answers, with every digit
 * @param difference how much more is given than expected; 0 where words are the same, endless where
 *     they are not
 * @param allowed how much it may be, either way
 */
public record Difference(
    Result result, String expected, String given, double difference, double allowed) {

  private static final double SPOKEN_OF = 0.01;
  private static final MathContext TWO = new MathContext(2);

  /** Whether it is no more than what is allowed. */
  public boolean holds() {
    return Math.abs(difference) <= allowed;
  }

  /** How much of what is allowed is used; endless where none is and there is some. */
  public double share() {
    return difference == 0 ? 0 : Math.abs(difference) / allowed;
  }

  /** Whether it is one of numbers. */
  public boolean isOfNumbers() {
    return Double.isFinite(difference);
  }

  /**
   * How much of what is allowed is used, in words; digits that no two machines share are left out.
   */
  public String shareInWords() {
    return percentInWords() + (difference == 0 ? "" : " of its tolerance");
  }

  /** The same without what it is a share of. */
  String percentInWords() {
    if (difference == 0) {
      return "none";
    }
    if (!holds()) {
      return "more than 100 %";
    }
    double percent = 100 * share();
    return percent < 1 ? "under 1 %" : "%.0f %%".formatted(percent);
  }

  /** How large it is, with its unit; empty where it is nothing to speak of. */
  public String inWords() {
    if (!isOfNumbers() || share() < SPOKEN_OF) {
      return "";
    }
    return sized(Math.abs(difference));
  }

  /** A difference of this result's, in two digits with its unit. */
  public String sized(double size) {
    String digits = BigDecimal.valueOf(size).round(TWO).stripTrailingZeros().toPlainString();
    return result.unit().symbol().isEmpty() ? digits : digits + " " + result.unit().symbol();
  }
}
