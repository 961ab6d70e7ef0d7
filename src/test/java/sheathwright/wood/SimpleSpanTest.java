package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psi;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;

/** The simple span against a beam cut into short pieces. */
class SimpleSpanTest {

  private static final int PIECES = 2000;

  /**
   * Values at the pieces' ends of what has these second differences and is zero at both ends.
   *
   * @param curvature at the pieces' ends
   */
  private static double[] twiceSummed(double[] curvature, double piece) {
    double[] value = new double[PIECES + 1];
    double slope = 0;
    for (int i = 1; i <= PIECES; i++) {
      value[i] = value[i - 1] + slope * piece;
      slope += curvature[Math.min(i, PIECES)] * piece;
    }
    double atTheEnd = value[PIECES];
    for (int i = 0; i <= PIECES; i++) {
      value[i] -= atTheEnd * i / PIECES;
    }
    return value;
  }

  @ParameterizedTest
  @CsvSource({"3.33, 144, 1400000, 20.8", "20, 480, 1900000, 178", "0.5, 12, 1000000, 5.36"})
  void momentReactionAndSag_areThoseOfManyPieces(double w, double span, double e, double i) {
    double piece = span / PIECES;
    double[] load = new double[PIECES + 1];
    java.util.Arrays.fill(load, -w);
    double[] moment = twiceSummed(load, piece);
    double[] bend = java.util.Arrays.stream(moment).map(m -> -m / (e * i)).toArray();
    double[] sag = twiceSummed(bend, piece);

    var line = Figure.of(w, Units.POUND_PER_INCH);
    var close = Percentage.withPercentage(0.01);
    assertThat(SimpleSpan.moment(line, in(span)).value()).isCloseTo(moment[PIECES / 2], close);
    assertThat(SimpleSpan.reaction(line, in(span)).value())
        .isCloseTo(moment[1] / piece, Percentage.withPercentage(0.1));
    assertThat(
            SimpleSpan.sag(line, in(span), psi(e), Figure.of(i, Units.INCH_TO_THE_FOURTH)).value())
        .isCloseTo(sag[PIECES / 2], close);
  }

  @Test
  void shearStress_isTheGreatestOfTheParabola() {
    // V Q ÷ I b at mid-depth of a rectangle, Q = b d² ÷ 8, of 1.5 by 7.25 under 300 lb.
    double q = 1.5 * 7.25 * 7.25 / 8;
    double i = 1.5 * Math.pow(7.25, 3) / 12;
    double stress =
        SimpleSpan.shearStress(
                Figure.of(300, Units.POUND), Figure.of(1.5 * 7.25, Units.SQUARE_INCH))
            .value();
    assertThat(stress).isCloseTo(300 * q / (i * 1.5), Percentage.withPercentage(1e-10));
  }
}
