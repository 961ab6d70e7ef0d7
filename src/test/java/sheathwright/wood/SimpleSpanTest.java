package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psi;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.SecondMoment;
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

  /** By hand: 300 lb in the middle of 12 ft lift 150 lb 6 ft out: 900 ft-lb. */
  @Test
  void pointMoment_isAQuarterOfLoadTimesSpan() {
    assertThat(SimpleSpan.pointMoment(Figure.of(300, Units.POUND), in(144)).value())
        .isEqualTo(900 * 12);
  }

  /** At each of these spans the stress or the sag is just what is allowed, for a 2x8 at 5 lb/in. */
  @Test
  void spans_areThoseWhereJustAllIsUsed() {
    var close = Percentage.withPercentage(1e-9);
    var w = Figure.of(5, Units.POUND_PER_INCH);
    double area = 1.5 * 7.25;
    double modulus = 1.5 * 7.25 * 7.25 / 6;
    double second = modulus * 7.25 / 2;
    double bent =
        SimpleSpan.spanByBending(psi(1200), Figure.of(modulus, Units.CUBIC_INCH), w).value();
    assertThat(5 * bent * bent / 8 / modulus).isCloseTo(1200, close);
    double sheared =
        SimpleSpan.spanByShear(psi(180), Figure.of(area, Units.SQUARE_INCH), w).value();
    assertThat(1.5 * (5 * sheared / 2) / area).isCloseTo(180, close);
    Figure<SecondMoment> i = Figure.of(second, Units.INCH_TO_THE_FOURTH);
    double sagged = SimpleSpan.spanBySag(psi(1_600_000), i, number(240), w).value();
    assertThat(5 * 5 * Math.pow(sagged, 4) / (384 * 1_600_000 * second))
        .isCloseTo(sagged / 240, close);
    double borne = SimpleSpan.spanByBearing(psi(405), in(1.5), in(3), w).value();
    assertThat(5 * borne / 2 / (1.5 * 3)).isCloseTo(405, close);
  }

  @Test
  void sag_ofPiecesThatShare_isThatOfTheSumOfTheirStiffness() {
    var w = Figure.of(5, Units.POUND_PER_INCH);
    Figure<SecondMoment> i = Figure.of(47.63, Units.INCH_TO_THE_FOURTH);
    Figure<SecondMoment> both = Figure.of(2 * 47.63, Units.INCH_TO_THE_FOURTH);
    var stiffness = psi(1_600_000).times(both).in(Units.POUND_SQUARE_INCH);
    assertThat(SimpleSpan.sag(w, in(168), stiffness).value())
        .isCloseTo(
            SimpleSpan.sag(w, in(168), psi(1_600_000), i).value() / 2,
            Percentage.withPercentage(1e-9));
  }
}
