package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths as they are spoken and typed. Expected inches are written as whole and numerator. */
class LengthsReadingTest {

  @ParameterizedTest(name = "{0} is {1} + {2}/{3} in")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1-3/8          |   1 | 3 |  8",
        "1 3/8          |   1 | 3 |  8",
        "3/8            |   0 | 3 |  8",
        "9 1/4\"        |   9 | 1 |  4",
        "9-1/4 in       |   9 | 1 |  4",
        "13.5           |  13 | 1 |  2",
        ".5             |   0 | 1 |  2",
        "8              |   8 | 0 |  1",
        "` 1-3/8 `      |   1 | 3 |  8",
        "16'            | 192 | 0 |  1",
        "16' 9-1/4\"    | 201 | 1 |  4",
        "16'-9 1/4\"    | 201 | 1 |  4",
        "16 ft 9 1/4 in | 201 | 1 |  4",
        "1' 3/8\"       |  12 | 3 |  8",
        "13/16          |   0 |13 | 16",
      })
  void inches_readsWhatStandsWhereInchesAreMeant(
      String text, double whole, double over, double under) {
    assertThat(Lengths.inches(text)).isEqualTo(whole + over / under);
    assertThat(Lengths.inches("-" + text.strip())).isEqualTo(-(whole + over / under));
  }

  @ParameterizedTest(name = "{0} is {1} ft {2} + {3}/{4} in")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "16-9 1/4       | 16 | 9 | 1 |  4",
        "16-9-1/4       | 16 | 9 | 1 |  4",
        "16-9           | 16 | 9 | 0 |  1",
        "16-0 3/8       | 16 | 0 | 3 |  8",
        "16-11 15/16    | 16 |11 |15 | 16",
        "16' 9-1/4\"    | 16 | 9 | 1 |  4",
        "16' 9 1/4      | 16 | 9 | 1 |  4",
        "16 ft 9-1/4 in | 16 | 9 | 1 |  4",
        "16'            | 16 | 0 | 0 |  1",
        "16             | 16 | 0 | 0 |  1",
        "16.75          | 16 | 9 | 0 |  1",
        ".5             |  0 | 6 | 0 |  1",
        "9 1/4\"        |  0 | 9 | 1 |  4",
        "1-3/8\"        |  0 | 1 | 3 |  8",
      })
  void inchesFromFeet_readsWhatStandsWhereFeetAreMeant(
      String text, double feet, double whole, double over, double under) {
    assertThat(Lengths.inchesFromFeet(text)).isEqualTo(12 * feet + whole + over / under);
    assertThat(Lengths.inchesFromFeet("-" + text)).isEqualTo(-(12 * feet + whole + over / under));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1-3/8", "1 3/8", "3/8"})
  void inchesFromFeet_refusesABareFraction(String text) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Lengths.inchesFromFeet(text))
        .withMessage(
            "\""
                + text
                + "\" is not a length that can be read: it could be feet or inches here; write 1-0"
                + " 3/8 or 1' 3/8\", or decimals of a foot");
  }

  @ParameterizedTest
  @ValueSource(strings = {"16-12", "16-12 1/4", "16' 12\"", "16' 13-1/2\"", "1-96"})
  void inchesFromFeet_refusesTwelveInchesAndMoreAfterTheFeet(String text) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Lengths.inchesFromFeet(text))
        .withMessage(
            "\""
                + text
                + "\" is not a length that can be read: the inches after the feet must be less"
                + " than 12");
  }

  @ParameterizedTest
  @ValueSource(strings = {"3/3", "1-9/8", "5/0", "2-8/8"})
  void inches_refusesAFractionThatIsNotLessThanOne(String text) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Lengths.inches(text))
        .withMessage(
            "\""
                + text
                + "\" is not a length that can be read: a fraction of an inch is less than one,"
                + " such as 3/8");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "wet", "16-9", "1-3/8-2", "3/", "/8", "1,375", "--3", "-", "-wet", "1.5.2",
        "1-2-3", "9ft4x"
      })
  void inches_refusesWhatItCannotRead(String text) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Lengths.inches(text))
        .withMessage(
            "\""
                + text.strip()
                + "\" is not a length that can be read: inches are written 1-3/8, 9 1/4 or 13.5,"
                + " feet and inches 16' 9-1/4\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "long", "16-", "16 9", "16,5", "1e2", "--3", "-", "-wet", "16'9'", "1-2-3-4"})
  void inchesFromFeet_refusesWhatItCannotRead(String text) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Lengths.inchesFromFeet(text))
        .withMessage(
            "\""
                + text
                + "\" is not a length that can be read: feet are written 16-9 1/4, 16' 9-1/4\" or"
                + " 16.77");
  }

  @Test
  void amounts_readTheSameText() {
    assertThat(Amounts.in("1-3/8").value()).isEqualTo(1 + 3d / 8);
    assertThat(Amounts.ft("16-9 1/4").value()).isEqualTo((12 * 16 + 9.25) / 12);
    assertThat(Amounts.ft("16-9 1/4").in(Units.INCH).value()).isEqualTo(12 * 16 + 9.25);
  }

  /** Blanks around it, and between the minus and the length, say nothing. */
  @Test
  void blanks_sayNothing() {
    assertThat(Lengths.inches("  9 ")).isEqualTo(9);
    assertThat(Lengths.inches("  .5 ")).isEqualTo(0.5);
    assertThat(Lengths.inches("- .5")).isEqualTo(-0.5);
    assertThat(Lengths.inches("  - 1-3/8 ")).isEqualTo(-1.375);
    assertThat(Lengths.inchesFromFeet("  16-9 ")).isEqualTo(12 * 16 + 9);
    assertThat(Lengths.inchesFromFeet("  - 16-9 ")).isEqualTo(-(12 * 16 + 9));
    assertThat(Lengths.inchesFromFeet(" 2 ")).isEqualTo(24);
  }

  @Test
  void inchesFromFeet_takesInchesThatAreMarked() {
    assertThat(Lengths.inchesFromFeet("9 in")).isEqualTo(9);
    assertThat(Lengths.inchesFromFeet("9\"")).isEqualTo(9);
    assertThat(Lengths.inchesFromFeet("9.5in")).isEqualTo(9.5);
  }
}
