package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** Numbers as they are typed, in the unit of a column; by hand. */
class NumbersTest {

  private static final Map<String, Unit<?>> UNITS =
      Map.of(
          "in", Units.INCH, "ft", Units.FOOT, "$", Units.USD, "%", Units.PERCENT, "1", Units.RATIO);

  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1  | ` 5 `      | 5",
        "1  | ` 5/4 `    | 1.25",
        "1  | +5/4       | 1.25",
        "1  | -3 1/2     | -3.5",
        "1  | 3 - 1/2    | 3.5",
        "1  | 1,408.72   | 1408.72",
        "1  | .5         | 0.5",
        "$  | `$ 38.50`  | 38.5",
        "$  | $ 3 1/2    | 3.5",
        "%  | `5 %`      | 5",
        "%  | `5 1/2 %`  | 5.5",
        "in | 1’ 4”      | 16",
        "in | 1′ 4″      | 16",
        "in | 4”         | 4",
        "in | ` 3⅛ `     | 3.125",
        "in | ⅞          | 0.875",
        "ft | 1’ 6”      | 1.5",
        "ft | 1′ 6″      | 1.5",
      })
  void number_isReadInItsUnit(String unit, String text, double number) {
    assertThat(Numbers.read(text, UNITS.get(unit))).isEqualTo(number);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1 | ` wet `  | `\"wet\" is not a number`",
        "1 | ` 1/0 `  | `\"1/0\" is not a number: nothing is divided by 0`",
        "1 | 3 1/0    | `\"3 1/0\" is not a number: nothing is divided by 0`",
        "1 | 3 4/4    | `\"3 4/4\" is not a number: a fraction behind a whole number is less than one, such as 3 1/2`",
        "1 | 3 5/4    | `\"3 5/4\" is not a number: a fraction behind a whole number is less than one, such as 3 1/2`",
        "1 | $5       | `\"$5\" is not a number`",
        "1 | 5%       | `\"5%\" is not a number`",
        "1 | 1,40     | `\"1,40\" is not a number`",
      })
  void whatIsNone_isSaid(String unit, String text, String said) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Numbers.read(text, UNITS.get(unit)))
        .withMessage("%s", said);
  }
}
