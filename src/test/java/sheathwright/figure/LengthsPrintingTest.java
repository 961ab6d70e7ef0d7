package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthsPrintingTest {

  private static final int TWENTY_FEET = 20 * 12 * 16;

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "0,         0",
        "1.375,     1-3/8",
        "0.375,     3/8",
        "0.5,       1/2",
        "13.5,      13-1/2",
        "16.0625,   16-1/16",
        "0.9375,    15/16",
        "-1.375,    -1-3/8",
        "-0.01,     0", // less than half a sixteenth keeps no sign
        "1.40,      1-3/8", // 1.40 × 16 = 22.4 sixteenths
        "1.41,      1-7/16", // 1.41 × 16 = 22.56 sixteenths
        "11.97,     12", // 11.97 × 16 = 191.52 sixteenths
      })
  void inInches_isTheNearestSixteenthInLowestTerms(double inches, String text) {
    assertThat(Lengths.inInches(inches)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "0,         0' 0\"",
        "9.25,      0' 9-1/4\"",
        "201.25,    16' 9-1/4\"", // 16 × 12 + 9.25
        "192,       16' 0\"",
        "0.375,     0' 3/8\"",
        "-201.25,   -16' 9-1/4\"",
        "191.97,    16' 0\"", // the inches never reach 12
      })
  void inFeetAndInches_neverLeavesTwelveInches(double inches, String text) {
    assertThat(Lengths.inFeetAndInches(inches)).isEqualTo(text);
  }

  @Test
  void everySixteenthUpToTwentyFeet_readsBackAsItself() {
    for (int sixteenths = -TWENTY_FEET; sixteenths <= TWENTY_FEET; sixteenths++) {
      double inches = sixteenths / 16d;
      assertThat(Lengths.inches(Lengths.inInches(inches))).isEqualTo(inches);
      assertThat(Lengths.inches(Lengths.inFeetAndInches(inches))).isEqualTo(inches);
      assertThat(Lengths.inchesFromFeet(Lengths.inFeetAndInches(inches))).isEqualTo(inches);
    }
  }

  @Test
  void everySixteenthUpToTwentyFeet_readsBackFromFeetDashInches() {
    for (int sixteenths = 0; sixteenths <= TWENTY_FEET; sixteenths++) {
      String text =
          "%d-%d %d/16".formatted(sixteenths / 192, sixteenths % 192 / 16, sixteenths % 16);
      assertThat(Lengths.inchesFromFeet(text)).isEqualTo(sixteenths / 16d);
    }
  }

  @Test
  void sixteenths_areKnownFromTheDustOfADivision() {
    assertThat(Lengths.isSixteenths(201.25 / 12 * 12)).isTrue();
    assertThat(Lengths.isSixteenths(0.0625)).isTrue();
    assertThat(Lengths.isSixteenths(0.05)).isFalse();
  }

  /** As PS 1-19, Table 10 names panels: 15/32 and 23/32 are no sixteenths; (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0.46875,  15/32",
    "0.71875,  23/32",
    "0.4375,   7/16",
    "0.375,    3/8",
    "0.5,      1/2",
    "1,        1",
    "2,        2",
    "0,        0",
    "1.125,    1-1/8",
    "1.5,      1-1/2",
    "2.75,     2-3/4",
    "0.46875001,15/32", // a hundred-millionth of an inch is none
    "0.46876,  0.46876",
    "0.4,      0.4",
    "0.015625, 0.015625", // a 64th is finer than panels are printed
  })
  void inFractions_isInTheLowestTermsDownToA32nd(double inches, String text) {
    assertThat(Lengths.inFractions(inches)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "1.375,  1-3/8",
    "0.0625, 1/16",
    "-1.375, -1-3/8",
    "2,      2",
    "60,     60",
    "0,      0",
    "0.3,    0.3",
    "0.03125,0.03125", // a 32nd is no mark of this tape
    "1.4,    1.4"
  })
  void onTape_isAMarkOrEveryDigit(double inches, String text) {
    assertThat(Lengths.onTape(inches)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 32, 0",
    "3, 32, 3/32",
    "6, 32, 3/16",
    "16, 32, 1/2",
    "32, 32, 1",
    "35, 32, 1-3/32",
    "40, 32, 1-1/4",
    "5, 8, 5/8"
  })
  void mixed_isInLowestTerms(long lines, int toTheInch, String text) {
    assertThat(Lengths.mixed(lines, toTheInch)).isEqualTo(text);
  }
}
