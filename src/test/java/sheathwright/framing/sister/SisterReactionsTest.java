package sheathwright.framing.sister;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psi;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;

import org.junit.jupiter.api.Test;
import sheathwright.figure.YesNo;
import sheathwright.framing.sister.SisterReactions.SisterReaction;
import sheathwright.framing.sister.SisterReactions.SisterReaction.CarriedBy;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.wood.LumberSize;

/** Supports of sistered rafters by hand arithmetic. */
class SisterReactionsTest {

  private static final double LAST_BITS = 1e-9;

  private static SisterReaction reactions(YesNo bears, double rafterNotch, double added) {
    return SisterReactions.sisterReactions(
        SharedReaction.added(lb(added))
            .existing(lb(80))
            .rafterShare(number(0.3))
            .sisterBears(bears),
        SeatedRafter.depth(in(5.5)).notch(in(rafterNotch)).shear(psi(150)).bearing(psi(400)),
        SeatedSister.size(LumberSize.SIZE_2X8).notch(in(1.5)).shear(psi(180)).bearing(psi(500)),
        in(1.5));
  }

  @Test
  void aSisterThatBears_takesItsShareOfWhatIsAdded() {
    SisterReaction answer = reactions(YES, 0, 400);
    assertThat(answer.rafterReaction().value()).isCloseTo(80 + 0.3 * 400, within(LAST_BITS));
    assertThat(answer.sisterReaction().value()).isCloseTo(0.7 * 400, within(LAST_BITS));
    assertThat(answer.carriedBy().value()).isEqualTo(CarriedBy.RAFTER_AND_SISTER);
    // fv = 3 V ÷ 2 A; on the sister a notch of 1-1/2 in leaves 5-3/4 of 7-1/4 in
    assertThat(answer.rafterShear().ratio().value())
        .isCloseTo(1.5 * 200 / (1.5 * 5.5) / 150, within(LAST_BITS));
    assertThat(answer.sisterShear().ratio().value())
        .isCloseTo(1.5 * 280 / (1.5 * 5.75) / Math.pow(5.75 / 7.25, 2) / 180, within(LAST_BITS));
    assertThat(answer.rafterBearing().ratio().value())
        .isCloseTo(200 / (1.5 * 1.5) / 400, within(LAST_BITS));
    assertThat(answer.sisterBearing().ratio().value())
        .isCloseTo(280 / (1.5 * 1.5) / 500, within(LAST_BITS));
  }

  @Test
  void aSisterThatDoesNotBear_leavesAllToTheOldRafter() {
    SisterReaction answer = reactions(NO, 0, 400);
    assertThat(answer.rafterReaction().value()).isCloseTo(480, within(LAST_BITS));
    assertThat(answer.sisterReaction().value()).isEqualTo(0);
    assertThat(answer.carriedBy().value()).isEqualTo(CarriedBy.RAFTER_ALONE);
    assertThat(answer.rafterShear().ratio().value()).isEqualTo(answer.aloneShear().ratio().value());
    assertThat(answer.rafterBearing().ratio().value())
        .isEqualTo(answer.aloneBearing().ratio().value());
    assertThat(answer.checks()).hasSize(6);
  }

  @Test
  void decision_isTheEngineersWhereTheOldRafterAloneFailsAtItsSeat() {
    // 400 psi on 1-1/2 by 1-1/2 in is 900 lb
    assertThat(reactions(YES, 0, 821).decision().value()).isEqualTo(Decision.STOP_ENGINEER);
    assertThat(reactions(YES, 0, 719).decision().value()).isEqualTo(Decision.WITHIN);
  }

  @Test
  void aNotch_costsMoreThanItsDepth() {
    double whole = reactions(NO, 0, 400).rafterShear().ratio().value();
    double notched = reactions(NO, 1, 400).rafterShear().ratio().value();
    assertThat(notched / whole).isCloseTo(Math.pow(5.5 / 4.5, 3), within(LAST_BITS));
    assertThat(reactions(NO, 1.375, 400).rafterShear().ratio().refusal()).isEmpty();
    assertThat(reactions(NO, 1.376, 400).rafterShear().ratio().refusal().orElseThrow().reason())
        .startsWith("the seat cut of the rafter takes more than a quarter of its depth");
  }
}
