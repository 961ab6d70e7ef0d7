package sheathwright.life.bill;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Rounding;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * When two numbers of a bill are the same: money to the cent, quantities to the millionth, so that
 * the dust of adding in another order is no difference. Quantities are told to nine decimals.
 */
final class Same {

  private static final int DECIMALS = 9;

  private static final double MILLIONTH = 1e-6;

  private static final Figure<Ratio> DUST =
      Figure.constant("dust", MILLIONTH, Units.RATIO, Source.COMMON_PRACTICE);

  private Same() {}

  static Condition quantity(Figure<Ratio> one, Figure<Ratio> other) {
    return one.minus(other).max(other.minus(one)).isAtMost(DUST);
  }

  /** No more than another, but for the same dust. */
  static Condition atMost(Figure<Ratio> one, Figure<Ratio> other) {
    return one.minus(other).isAtMost(DUST);
  }

  static Condition money(Figure<Money> one, Figure<Money> other) {
    return one.toCents().isTheSameAs(other.toCents());
  }

  /** Whether so much is nothing. */
  static boolean isNothing(double quantity) {
    return Math.abs(quantity) < MILLIONTH;
  }

  /** A quantity as it is told. */
  static double told(double quantity) {
    return Rounding.halfUp(quantity, DECIMALS);
  }
}
