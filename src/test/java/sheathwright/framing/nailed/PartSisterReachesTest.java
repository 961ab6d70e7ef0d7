package sheathwright.framing.nailed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.psi;

import org.junit.jupiter.api.Test;
import sheathwright.framing.sister.BendingValue;
import sheathwright.framing.sister.MeasuredRafter;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.stop.RepairDecision.Decision;

/** How far a sister must reach, against a walk along the rafter. */
class PartSisterReachesTest {

  private static PartSisterReach reach(double bending, double supportRatio) {
    return PartSisterReaches.partSisterReach(
        MeasuredRafter.depth(in(7.25)),
        BendingValue.of(psi(bending)),
        SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)),
        number(supportRatio),
        in(12));
  }

  @Test
  void reach_isWhereAWalkAlongTheRafterFindsNineTenthsUsed() {
    for (double bending : new double[] {300, 700, 1000, 1500}) {
      double limit = 0.9 * bending * 1.5 * 7.25 * 7.25 / 6;
      double x = 0;
      while (40 * 24 / 144d * x * (156 - x) / 2 < limit) {
        x += 0.001;
      }
      PartSisterReach answer = reach(bending, 0.5);
      assertThat(answer.reach().value()).isCloseTo(x, within(0.001));
      assertThat(answer.leastLength().in(answer.reach().unit()).value())
          .isCloseTo(156 - 2 * (x - 12), within(0.003));
      assertThat(answer.decision().value()).isEqualTo(Decision.STOP_ENGINEER);
    }
  }

  @Test
  void aRafterThatCarriesTheLoadAlone_needsNoSister() {
    // 20,280 in-lb are asked of 13.14 in³
    assertThat(reach(1544, 0.5).reach().refusal().orElseThrow().reason())
        .isEqualTo("the old rafter carries this load alone; for its strength it needs no sister");
    assertThat(reach(1543, 0.5).reach().refusal()).isEmpty();
    assertThat(reach(1544, 0.5).decision().value()).isEqualTo(Decision.WITHIN);
  }

  @Test
  void aRafterThatFailsAtItsSupports_isNotHelpedByAShortSister() {
    assertThat(reach(1000, 1.01).reach().refusal().orElseThrow().reason())
        .isEqualTo(
            "the old rafter fails in shear or bearing at its supports, and a sister that stops short"
                + " of them takes no load off there: a licensed engineer decides; a sister would"
                + " have to bear on both plates");
    assertThat(reach(1000, 1).reach().refusal()).isEmpty();
  }
}
