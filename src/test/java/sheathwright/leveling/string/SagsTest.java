package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.RefusedException;

class SagsTest {

  /** The invented sagging cottage: 10 ft on the flat at 8 in 12. */
  private static final double COTTAGE_FT = 10 * Math.hypot(12, 8) / 12;

  private static SagFraction fraction(double sag, double feet, double part) {
    return Sags.sagFraction(
        SaggedSpan.sag(Amounts.in(sag)).span(Amounts.ft(feet)), Amounts.number(part));
  }

  private static LinePlace place(double along, double drop) {
    return LinePlace.at(Amounts.in(along)).drop(Amounts.in(drop));
  }

  private static double deviation(
      double first, double firstDrop, double last, double lastDrop, double place, double drop) {
    return Sags.chordDeviation(
            Straightedge.of(place(first, firstDrop), place(last, lastDrop)), place(place, drop))
        .value();
  }

  @Test
  void sagFraction_ofTheCottage() {
    // question 12 of the invented questions, worked by hand: L/88.8, L/240 0.601 in, L/180 0.801 in
    SagFraction worst = fraction(1.625, COTTAGE_FT, 240);
    assertThat(worst.spanOverSag().value()).isCloseTo(88.75203139603666, within(1e-9));
    assertThat(worst.limit().value()).isCloseTo(0.6009252125773316, within(1e-12));
    assertThat(fraction(1.625, COTTAGE_FT, 180).limit().value())
        .isCloseTo(0.8012336167697753, within(1e-12));
    assertThat(worst.sag().ratio().value()).isCloseTo(240 / 88.75203139603666, within(1e-9));
    assertThat(worst.ok().plain()).isEqualTo("no");
  }

  @Test
  void sagFraction_ofNoSagIsAWord() {
    SagFraction none = fraction(0, 12, 240);
    assertThat(none.spanOverSag().isAbsent()).isTrue();
    assertThat(none.spanOverSag().shown()).isEqualTo("no sag");
    assertThat(none.ok().plain()).isEqualTo("yes");
  }

  @Test
  void chordDeviation_byHand() {
    // chord from 1/4 to 3/4 is at 1/2 halfway; 7/8 there is 3/8 low
    assertThat(deviation(0, 0.25, 120, 0.75, 60, 0.875)).isEqualTo(0.375);
  }

  @Test
  void chordDeviation_doesNotSeeAnyStraightLineAddedToAll() {
    Random random = new Random(3);
    for (int i = 0; i < 500; i++) {
      double first = random.nextDouble(0, 100);
      double last = first + random.nextDouble(10, 200);
      double place = random.nextDouble(0, 300);
      double tilt = random.nextDouble(-0.02, 0.02);
      double lift = random.nextDouble(-2, 2);
      double[] drops = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
      assertThat(
              deviation(
                  first,
                  drops[0] + lift + tilt * first,
                  last,
                  drops[1] + lift + tilt * last,
                  place,
                  drops[2] + lift + tilt * place))
          .isCloseTo(deviation(first, drops[0], last, drops[1], place, drops[2]), within(1e-9));
    }
  }

  @Test
  void chordDeviation_refusesEndsOutOfOrder() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> deviation(120, 0, 0, 0, 60, 1))
        .withMessageContaining("not beyond the first");
  }
}
