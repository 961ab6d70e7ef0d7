package sheathwright.life.bill;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Rounding;
import sheathwright.figure.Shown;
import sheathwright.job.table.Field;

/** The cells of one new row of a table, each under its field, as text that is read again alike. */
final class Cells {

  private final Map<String, String> cells = new LinkedHashMap<>();

  Cells with(Field<?> field, String text) {
    cells.put(field.name(), text);
    return this;
  }

  /** Dollars and cents. */
  Cells withMoney(Field<?> field, Figure<Money> sum) {
    return with(field, money(sum.value()));
  }

  /** A quantity as it is told; blank if there is none. */
  Cells with(Field<?> field, Optional<? extends Figure<?>> number) {
    return with(field, number.map(given -> number(given.value())).orElse(""));
  }

  static String money(double dollars) {
    return BigDecimal.valueOf(Rounding.halfUp(dollars, 2))
        .setScale(2, RoundingMode.HALF_UP)
        .toPlainString();
  }

  static String number(double number) {
    return Shown.plain(Same.told(number));
  }

  /** By the name of their column. */
  Map<String, String> row() {
    return cells;
  }
}
