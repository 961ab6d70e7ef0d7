package sheathwright.framing.nailed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Source.Mark;
import sheathwright.figure.YesNo;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.TwoBeams;

/** Nails along a full-length sister, against the two-beam model. */
class SisterNailsTest {

  private static final double EI = 1.6e6 * 1.5 * Math.pow(7.25, 3) / 12;

  private static SisterNail nails(double share, double spacing, double lateral, YesNo bears) {
    return SisterNails.nailsAlongSister(
        number(share),
        SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)),
        in(spacing),
        lb(lateral),
        bears);
  }

  private static TwoBeams model(double stiffness, boolean bears, double first, int count) {
    double[] places = TwoBeams.evenly(first, 156 - first, count);
    return new TwoBeams(156, 40 * 24 / 144d, EI, EI, 0, 156, places, stiffness, bears, -1);
  }

  @Test
  void eachNail_carriesWhatTheModelSaysWhereItIsRegular() {
    // 17 nails, 9.23 in apart; the formula's 30.8 lb against 30 to 32 lb printed for stiff nails
    double[] forces = model(1e6, true, 4.16, 17).forces();
    double each = nails(0.5, (156 - 2 * 4.16) / 16, 135.7, YES).each().value();
    for (int i = 5; i < 12; i++) {
      assertThat(forces[i]).isCloseTo(each, within(0.04 * each));
    }
  }

  @Test
  void allThatMoves_isAnUpperBoundOfWhatTheModelMoves() {
    double transfer = nails(0.5, 12, 135.7, YES).transfer().value();
    for (double stiffness : new double[] {6000, 1e6}) {
      double moved = Arrays.stream(model(stiffness, true, 4.16, 17).forces()).sum();
      assertThat(moved).isLessThan(transfer).isGreaterThan(0.8 * transfer);
    }
  }

  @Test
  void endNail_ofASisterThatDoesNotBearPullsAsPrinted() {
    // print: 156 lb to 176 lb with nails 12 in apart
    assertThat(-model(6000, false, 6, 13).forces()[0]).isBetween(156.0, 176.0);
  }

  @Test
  void aSisterThatDoesNotBear_givesBackNoMoreAtAnEndThanItsNailsThereAreCountedFor() {
    Random chance = new Random(19);
    for (int i = 0; i < 100; i++) {
      double span = 96 + 144 * chance.nextDouble();
      double sister = EI * (0.1 + 3 * chance.nextDouble());
      double stiffness = Math.pow(10, 3 + 1.3 * chance.nextDouble());
      double[] places =
          TwoBeams.evenly(3, span - 3, 1 + (int) (span / (6 + 10 * chance.nextDouble())));
      TwoBeams model = new TwoBeams(span, 1, EI, sister, 0, span, places, stiffness, false, -1);
      double transfer = sister / (EI + sister) * span;
      assertThat(givenBack(model)).isPositive().isLessThan(1.25 * transfer / 2);
    }
    // 1.25 × 520 lb ÷ 2 ÷ 135.7 lb = 2.39
    assertThat(nails(0.5, 12, 135.7, NO).endNails().value()).isEqualTo(3);
    assertThat(nails(0.5, 12, 135.7, YES).endNails().value()).isEqualTo(2);
  }

  private static double givenBack(TwoBeams model) {
    double[] forces = model.forces();
    double all = 0;
    for (int i = 0; i < forces.length / 2; i++) {
      all -= Math.min(0, forces[i]);
    }
    return all;
  }

  @Test
  void greatestSpacing_usesUpTheNail() {
    double greatest = nails(0.5, 12, 135.7, YES).greatestSpacing().value();
    assertThat(nails(0.5, greatest, 135.7, YES).nail().ratio().value()).isCloseTo(1, within(1e-12));
    // print: strength asks for one nail in about 40 in
    assertThat(greatest).isCloseTo(40, within(1.0));
  }

  @Test
  void commonSpacing_isMarkedAsRemembered() {
    SisterNail answer = nails(0.5, 12, 135.7, YES);
    assertThat(answer.spacing().value()).isEqualTo(12);
    assertThat(answer.commonSpacing().source().mark()).isEqualTo(Mark.FROM_MEMORY);
    assertThat(answer.endNails().source().mark()).isEqualTo(Mark.FROM_MEMORY);
    // where strength asks for more, strength it is: 8 lb ÷ 3.333 lb/in
    assertThat(nails(0.5, 12, 8, YES).spacing().value()).isCloseTo(2.4, within(1e-9));
  }

  @Test
  void aSisterWithoutAShare_hasNoLimit() {
    SisterNail answer = nails(0, 12, 100, YES);
    assertThat(answer.greatestSpacing()).hasToString("no limit");
    assertThat(answer.spacing().value()).isEqualTo(12);
    assertThat(nails(0, 12, 5000, NO).endNails().value()).isEqualTo(2);
  }
}
