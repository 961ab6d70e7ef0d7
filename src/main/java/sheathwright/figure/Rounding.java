package sheathwright.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one rounding rule: to 15 significant digits first, then half up, up or down. It is the rule
 * that spreadsheet programs follow, so that a price never differs by a cent between this library
 * and the workbook.
 */
public final class Rounding {

  private static final MathContext FIFTEEN_DIGITS = new MathContext(15, RoundingMode.HALF_UP);

  private Rounding() {}

  /** To so many decimals, halves away from zero. */
  public static double halfUp(double number, int decimals) {
    return rounded(number, decimals, RoundingMode.HALF_UP);
  }

  /** Up to the next whole number, after the dust beyond the sixth decimal is swept away. */
  public static double up(double number) {
    return rounded(halfUp(number, 6), 0, RoundingMode.UP);
  }

  /** Down to a whole number, after the dust beyond the sixth decimal is swept away. */
  public static double down(double number) {
    return rounded(halfUp(number, 6), 0, RoundingMode.DOWN);
  }

  /** To the 15 significant digits that a spreadsheet cell shows. */
  public static double toFifteenDigits(double number) {
    return new BigDecimal(number).round(FIFTEEN_DIGITS).doubleValue();
  }

  private static double rounded(double number, int decimals, RoundingMode mode) {
    return new BigDecimal(number).round(FIFTEEN_DIGITS).setScale(decimals, mode).doubleValue();
  }
}
