package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Units;

/** Sixteenths counted by hand: 26-2/3 in lies between 26-10/16 and 26-11/16. */
class MarkedTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "DOWN    | 80 | '26-5/8 in, rounded down'",
        "UP      | 80 | '26-11/16 in, rounded up'",
        "NEAREST | 80 | '26-11/16 in, to the nearest 1/16'",
        "DOWN    | 81 | '27 in'",
        "UP      | 81 | '27 in'",
        "NOT     | 80 | '26.6667 in'",
      })
  void aThird_isShownAsTheTapeHasIt(Marked marked, double whole, String shown) {
    assertThat(marked.shown(in(whole).dividedBy(number(3)).as("piece_in", Units.INCH)))
        .isEqualTo(shown);
  }

  /** A hair under or over a sixteenth is that sixteenth. */
  @Test
  void dust_isNotRounded() {
    for (double whole : new double[] {81 - 3e-9, 81 + 3e-9}) {
      var length = in(whole).dividedBy(number(3)).as("piece_in", Units.INCH);
      assertThat(Marked.DOWN.shown(length)).isEqualTo("27 in");
      assertThat(Marked.UP.shown(length)).isEqualTo("27 in");
    }
  }

  @Test
  void feet_staySo() {
    // 10 ft ÷ 3 = 3 ft 4 in exactly; 10 ft ÷ 7 = 17.1429 in, between 17-2/16 and 17-3/16
    assertThat(Marked.UP.shown(ft(10).dividedBy(number(3)).as("x_ft", Units.FOOT)))
        .isEqualTo("3' 4\"");
    assertThat(Marked.UP.shown(ft(10).dividedBy(number(7)).as("x_ft", Units.FOOT)))
        .isEqualTo("1' 5-3/16\", rounded up");
  }

  @Test
  void whatWasGiven_staysAsItWasSaid() {
    assertThat(Marked.DOWN.shown(in(26.6667))).isEqualTo("26.6667 in");
  }
}
