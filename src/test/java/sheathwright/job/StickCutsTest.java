package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pieces;
import static sheathwright.figure.Amounts.usd;
import static sheathwright.job.StickCuts.cutSticks;
import static sheathwright.job.StickCuts.stick;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.RefusedException;

/** Pieces of one length out of priced sticks, against every number of each stick tried. */
class StickCutsTest {

  private static final double[] FEET = {8, 10, 14};
  private static final int[] CENTS = {620, 735, 1090};

  @ParameterizedTest
  @CsvSource({"23, 55", "7, 31", "5, 96", "11, 47.9375", "1, 168", "20, 27.25"})
  void noNumberOfSticks_isCheaper(int count, double inches) {
    StickCuts cuts =
        cutSticks(
            pieces(count),
            in(inches),
            stick(ft(8), usd(6.20)),
            stick(ft(10), usd(7.35)),
            stick(ft(14), usd(10.90)));
    assertThat(Math.round(100 * cuts.cost().value())).isEqualTo(cheapest(count, inches));
    assertThat(cuts.atLeast().value()).isEqualTo(cuts.cost().value());
    assertThat(cuts.toString()).endsWith("nothing cheaper can be cut");
  }

  /** By trying: so many of each stick, as many pieces as each gives. */
  private static long cheapest(int count, double inches) {
    long least = Long.MAX_VALUE;
    for (int eight = 0; eight <= count; eight++) {
      for (int ten = 0; ten <= count; ten++) {
        for (int fourteen = 0; fourteen <= count; fourteen++) {
          int given = eight * from(0, inches) + ten * from(1, inches) + fourteen * from(2, inches);
          if (given >= count) {
            least = Math.min(least, eight * CENTS[0] + ten * CENTS[1] + fourteen * CENTS[2]);
          }
        }
      }
    }
    return least;
  }

  private static int from(int stick, double inches) {
    return (int) Math.floor((12 * FEET[stick] + 0.125) / (inches + 0.125));
  }

  @Test
  void whatCannotBeCut_isRefusedInOneLine() {
    assertThatThrownBy(() -> cutSticks(pieces(3), ft(9), stick(ft(8), usd(6.20))))
        .isInstanceOf(RefusedException.class)
        .hasMessage("no stick is long enough for a piece of 9' 0\"; name one, stick(12 ft, $8.60)");
    assertThatThrownBy(() -> cutSticks(pieces(2.5), ft(7), stick(ft(8), usd(6.20))))
        .hasMessage("2.5 pieces is given; cutSticks takes 1 to 500 whole pieces");
  }
}
