package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Units;

/** By subtraction: 14 ft less 5 ft is 9 ft; a strut that nobody has seen stand is none. */
class StruttedRaftersTest {

  @ParameterizedTest
  @CsvSource({
    "14, 8, ON_BEARING_WALL, 8",
    "14, 5, ON_BEARING_WALL, 9",
    "14, 7, ON_BEARING_WALL, 7",
    "14, 8, WALL_NOT_SEEN, 14",
    "14, 8, ON_NO_WALL, 14",
    "14, 0, ON_BEARING_WALL, 14"
  })
  void theSpan_isTheLongestBetweenSupports(
      double span, double at, BearsOnWall wall, double counted) {
    assertThat(
            StruttedRafters.struttedSpan(ft(span), Strut.at(ft(at)).onWall(wall))
                .in(Units.FOOT)
                .value())
        .isEqualTo(counted);
  }

  @Test
  void aStrutOfWhichNothingIsSaid_isNoSupport() {
    assertThat(StruttedRafters.struttedSpan(ft(14), Strut.at(ft(8))).in(Units.FOOT).value())
        .isEqualTo(14);
  }

  @Test
  void aStrutAtTheRidgeOrBeyond_holdsNothing() {
    for (int at : new int[] {14, 20}) {
      Strut strut = Strut.at(ft(at)).onWall(BearsOnWall.ON_BEARING_WALL);
      assertThat(StruttedRafters.struttedSpan(ft(14), strut).value()).isEqualTo(14);
    }
  }
}
