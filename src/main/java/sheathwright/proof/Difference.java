package sheathwright.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import sheathwright.catalog.Result;
import sheathwright.figure.Shown;

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

  /** Below it the last digits of a solver's answer differ by machine, and are told coarsely. */
  private static final double COARSE = 1e-6;

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
  public String percentInWords() {
    if (difference == 0) {
      return "none";
    }
    if (!holds()) {
      return "more than 100 %";
    }
    double percent = 100 * share();
    if (percent < 1) {
      return "under 1 %";
    }
    return Math.abs(difference) < COARSE
        ? Shown.text("under %.0f %%", 10 * Math.floor(percent / 10) + 10)
        : Shown.text("%.0f %%", percent);
  }

  /** How large it is, with its unit; empty where it is nothing to speak of. */
  public String inWords() {
    return !isOfNumbers() || share() < SPOKEN_OF ? "" : sized(Math.abs(difference));
  }

  /** What is to be read where something is wrong: two digits, however small. */
  static String inDigits(double size) {
    BigDecimal digits = BigDecimal.valueOf(size).round(TWO).stripTrailingZeros();
    return size < COARSE ? digits.toString() : digits.toPlainString();
  }

  /**
   * A difference of this result's with its unit: in two digits, or, where machines may differ, as
   * the power of ten that it stays under.
   */
  public String sized(double size) {
    String symbol = result.unit().symbol();
    if (size > 0 && size < COARSE) {
      return ("under 1e%s %s".formatted((int) Math.floor(Math.log10(size)) + 1, symbol)).strip();
    }
    double digits = BigDecimal.valueOf(size).round(TWO).doubleValue();
    return result.unit().isCount()
        ? Shown.counted(digits, symbol)
        : (Shown.plain(digits) + " " + symbol).strip();
  }
}
