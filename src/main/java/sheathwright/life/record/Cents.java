package sheathwright.life.record;

import java.math.BigDecimal;
import java.math.RoundingMode;
import sheathwright.figure.Figure;

/** Numbers as tables hold them. */
final class Cents {

  private static final int PLACES = 2;
  private static final int PARTS = 4;

  private Cents() {}

  /** A sum of money, to the cent. */
  static BigDecimal of(Figure<?> money) {
    return of(money.value());
  }

  /** A sum of money in dollars, to the cent. */
  static BigDecimal of(double dollars) {
    return BigDecimal.valueOf(dollars).setScale(PLACES, RoundingMode.HALF_UP);
  }

  /** A quantity without zeros behind it. */
  static BigDecimal quantity(double number) {
    BigDecimal plain =
        BigDecimal.valueOf(number).setScale(PARTS, RoundingMode.HALF_UP).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
