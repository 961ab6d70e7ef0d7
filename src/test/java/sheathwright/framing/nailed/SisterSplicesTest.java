package sheathwright.framing.nailed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.psi;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.framing.sister.BendingValue;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.TwoBeams;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.wood.LumberSize;

/** Sisters over a break, against a beam that is cut through and held by four springs. */
class SisterSplicesTest {

  private static final double LOAD = 40 * 24 / 144d;

  private static SisterSplice splice(double x, double near, double arm, double end, int sisters) {
    return SisterSplices.sisterSplice(
        SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)),
        Splice.at(in(x)).near(in(near)).sisters(number(sisters)),
        GroupNailing.arm(in(arm)).endDistance(in(end)).lateral(lb(135.7)),
        LumberSize.SIZE_2X8,
        BendingValue.of(psi(1428)));
  }

  private static TwoBeams model(double x, double near, double arm, double end) {
    double half = near + arm + end;
    double[] groups = {x - near - arm, x - near, x + near, x + near + arm};
    double ei = 1.6e6 * 1.5 * Math.pow(7.25, 3) / 12;
    return new TwoBeams(156, LOAD, ei, ei, x - half, x + half, groups, 30_000, false, x);
  }

  @Test
  void forces_areThoseOfTheCutBeam() {
    Random chance = new Random(3);
    for (int i = 0; i < 200; i++) {
      double near = 1 + 11 * chance.nextDouble();
      double arm = 8 + 20 * chance.nextDouble();
      double end = 1 + 4 * chance.nextDouble();
      double half = near + arm + end;
      double x = half + 1 + (154 - 2 * half) * chance.nextDouble();
      SisterSplice answer = splice(x, near, arm, end, 1);
      TwoBeams model = model(x, near, arm, end);
      double[] size = Arrays.stream(model.forces()).map(Math::abs).toArray();
      assertThat(answer.near().value())
          .isCloseTo(Math.max(size[1], size[2]), within(1e-3 * answer.near().value()));
      assertThat(answer.far().value())
          .isCloseTo(Math.max(size[0], size[3]), within(1e-3 * answer.near().value()));
      double bent = Math.max(model.sisterMoment(x - near), model.sisterMoment(x + near));
      assertThat(answer.sister().ratio().value() * 1428 * 1.5 * 7.25 * 7.25 / 6)
          .isCloseTo(bent, within(1e-3 * bent));
    }
  }

  @Test
  void forces_ofBothSidesAreThePrintedStatics() {
    // near = (M − c V) ÷ s − V, far = (c V − M) ÷ s on the sister, down positive, V by its side
    double x = 60;
    double moment = LOAD * x * (156 - x) / 2;
    double shear = LOAD * (78 - x);
    double[] model = model(x, 6, 24, 3).forces();
    for (int side : new int[] {1, -1}) {
      double v = side * shear;
      assertThat(model[side > 0 ? 1 : 2]).isCloseTo((moment - 6 * v) / 24 - v, within(0.5));
      assertThat(model[side > 0 ? 0 : 3]).isCloseTo((6 * v - moment) / 24, within(0.5));
    }
  }

  @Test
  void atMidSpan_theCoupleIsAllThereIs() {
    SisterSplice answer = splice(78, 10, 24, 3, 1);
    assertThat(answer.shear().value()).isEqualTo(0);
    assertThat(answer.near().value()).isCloseTo(LOAD * 156 * 156 / 8 / 24, within(1e-9));
    assertThat(answer.far().value()).isCloseTo(answer.near().value(), within(1e-9));
    assertThat(answer.leastLength().value() * 12).isCloseTo(2 * (10 + 24 + 3), within(1e-9));
  }

  @Test
  void aSisterOnBothSides_halvesWhatEachCarries() {
    SisterSplice one = splice(70, 10, 24, 3, 1);
    SisterSplice two = splice(70, 10, 24, 3, 2);
    assertThat(two.near().value()).isCloseTo(one.near().value() / 2, within(1e-9));
    assertThat(two.sister().ratio().value())
        .isCloseTo(one.sister().ratio().value() / 2, within(1e-9));
    assertThat(two.nearNails().value()).isEqualTo(Math.ceil(two.near().value() / 135.7));
  }

  @Test
  void aMirroredBreak_hasTheSameAnswer() {
    assertThat(splice(60, 6, 24, 3, 1).near().value())
        .isCloseTo(splice(96, 6, 24, 3, 1).near().value(), within(1e-9));
  }

  @Test
  void decision_isAlwaysTheEngineers() {
    assertThat(splice(78, 1, 30, 3, 2).decision().value()).isEqualTo(Decision.STOP_ENGINEER);
  }

  @Test
  void aBreakTooNearASupport_isRefused() {
    assertThat(splice(36.9, 10, 24, 3, 1).near().refusal().orElseThrow().reason())
        .startsWith("the sister, centered on the break, would run past a support");
    assertThat(splice(37, 10, 24, 3, 1).near().refusal()).isEmpty();
  }
}
