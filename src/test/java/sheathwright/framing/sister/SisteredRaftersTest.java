package sheathwright.framing.sister;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.psi;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;
import static sheathwright.wood.LumberSize.SIZE_2X4;
import static sheathwright.wood.LumberSize.SIZE_2X8;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.YesNo;
import sheathwright.framing.sister.SisteredRafters.SisteredRafter;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.wood.LumberSize;

/** Full-length sisters against hand arithmetic, brute force and the two-beam model. */
class SisteredRaftersTest {

  private static final double LAST_BITS = 1e-9;

  private static SisteredRafter pair(double live, double dead, double existing, YesNo jacked) {
    return SisteredRafters.sisteredRafter(
        RafterPly.depth(in(5.5)).bending(psi(1200)).modulus(psi(1.2e6)),
        SisterPly.size(SIZE_2X8).bending(psi(1400)).modulus(psi(1.6e6)),
        SisterLoad.of(SpanLoad.span(ft(14)).spacing(in(16)).live(psf(live)).dead(psf(dead)))
            .existing(psf(existing))
            .jacked(jacked)
            .deflectionLimit(number(240)));
  }

  private static Ply ply(LumberSize size, double modulus) {
    return Ply.size(size).modulus(psi(modulus));
  }

  private static double modulus(double depth) {
    return 1.5 * depth * depth / 6;
  }

  private static double second(double depth) {
    return 1.5 * depth * depth * depth / 12;
  }

  private static double share() {
    return 1.6e6 * second(7.25) / (1.2e6 * second(5.5) + 1.6e6 * second(7.25));
  }

  @ParameterizedTest
  @EnumSource(LumberSize.class)
  void shares_addUpToOneAndChangePlaces(LumberSize size) {
    SisterShare one = SisteredRafters.sisterShare(ply(size, 1.2e6), ply(SIZE_2X4, 1.7e6));
    SisterShare other = SisteredRafters.sisterShare(ply(SIZE_2X4, 1.7e6), ply(size, 1.2e6));
    assertThat(one.rafter().value() + one.sister().value()).isCloseTo(1, within(LAST_BITS));
    assertThat(one.rafter().value()).isCloseTo(other.sister().value(), within(LAST_BITS));
    assertThat(SisteredRafters.sisterShare(ply(size, 1.3e6), ply(size, 1.3e6)).sister().value())
        .isCloseTo(0.5, within(LAST_BITS));
  }

  /** Of two of a kind, the one that is wrong is told by whose it is. */
  @Test
  void aWrongPart_isRefusedUnderItsOwnersName() {
    SisterShare ofSister = SisteredRafters.sisterShare(ply(SIZE_2X4, 1e6), ply(SIZE_2X4, 1));
    assertThat(ofSister.sister().refusal().orElseThrow().reason())
        .startsWith("sister_modulus_psi is 1; it must be from 100000 to 5000000");
    SisterShare ofRafter = SisteredRafters.sisterShare(ply(SIZE_2X4, 1), ply(SIZE_2X4, 1e6));
    assertThat(ofRafter.sister().refusal().orElseThrow().reason())
        .startsWith("rafter_modulus_psi is 1; it must be from 100000 to 5000000");
  }

  @Test
  void shareAndSag_areThoseOfTwoBeamsOnTheSameSupports() {
    double load = (30 + 10) * 16 / 144d;
    double[] nails = TwoBeams.evenly(2, 166, 42);
    TwoBeams beams =
        new TwoBeams(
            168, load, 1.2e6 * second(5.5), 1.6e6 * second(7.25), 0, 168, nails, 1e7, true, -1);
    SisteredRafter pair = pair(30, 10, 0, NO);
    assertThat(beams.sisterMoment(84) / (load * 168 * 168 / 8))
        .isCloseTo(pair.sisterShare().value(), within(0.002));
    assertThat(beams.sag() * 30 / 40).isCloseTo(pair.sag().value(), within(0.002));
  }

  @Test
  void lockedLoad_staysInTheOldRafter() {
    // by hand: M = w L² ÷ 8 of what is there before and of what comes after
    double before = 8 * 16 / 144d * 168 * 168 / 8;
    double after = (30 + 12 - 8) * 16 / 144d * 168 * 168 / 8;
    SisteredRafter pair = pair(30, 12, 8, NO);
    assertThat(pair.rafter().ratio().value())
        .isCloseTo((before + (1 - share()) * after) / modulus(5.5) / 1200, within(LAST_BITS));
    assertThat(pair.sister().ratio().value())
        .isCloseTo(share() * after / modulus(7.25) / 1400, within(LAST_BITS));
    assertThat(pair.alone().ratio().value())
        .isCloseTo((before + after) / modulus(5.5) / 1200, within(LAST_BITS));
  }

  @Test
  void jacking_sharesAllOfIt() {
    SisteredRafter jacked = pair(30, 12, 8, YES);
    SisteredRafter bare = pair(30, 12, 0, NO);
    assertThat(jacked.rafter().ratio().value())
        .isCloseTo(bare.rafter().ratio().value(), within(LAST_BITS));
    assertThat(jacked.rafter().ratio().value())
        .isLessThan(pair(30, 12, 8, NO).rafter().ratio().value());
  }

  @Test
  void capacity_isWhereTheFirstPieceIsUsedUp() {
    // by brute force: the load is raised until one of the two stresses is reached
    double capacity = pair(30, 12, 0, YES).capacity().value();
    double moment = 0;
    while ((1 - share()) * moment / modulus(5.5) <= 1200
        && share() * moment / modulus(7.25) <= 1400) {
      moment += 0.5;
    }
    assertThat(capacity).isBetween(moment - 0.5, moment);
    // and adding the section moduli would promise too much
    assertThat(capacity).isLessThan(1200 * modulus(5.5) + 1400 * modulus(7.25));
  }

  @Test
  void whatIsAddedToOnePiece_isTakenFromTheOther() {
    Random chance = new Random(7);
    for (int i = 0; i < 50; i++) {
      double live = 10 + chance.nextDouble() * 60;
      double dead = 5 + chance.nextDouble() * 20;
      SisteredRafter pair = pair(live, dead, dead * chance.nextDouble(), NO);
      double both =
          pair.rafter().demand().in(pair.capacity().unit()).value()
              + pair.sister().demand().in(pair.capacity().unit()).value();
      assertThat(both).isCloseTo((live + dead) * 16 / 144 * 168 * 168 / 8, within(1e-6));
    }
  }

  @Test
  void decision_isTheEngineersWhereTheOldRafterAloneIsTooWeak() {
    SisteredRafter weak = pair(60, 12, 0, YES);
    assertThat(weak.alone().ok().holds()).isFalse();
    assertThat(weak.decision().value()).isEqualTo(Decision.STOP_ENGINEER);
    SisteredRafter strong = pair(5, 5, 0, YES);
    assertThat(strong.alone().ok().holds()).isTrue();
    assertThat(strong.decision().value()).isEqualTo(Decision.WITHIN);
    assertThat(weak.checks()).hasSize(4);
  }

  @Test
  void existingLoad_isRefusedAboveTheDeadLoad() {
    assertThat(pair(30, 12, 13, NO).rafter().ratio().refusal().orElseThrow().reason())
        .isEqualTo(
            "the dead load in place when the sister is nailed, existing_psf, is more than the whole dead load, dead_psf; give the part of it that is still in place");
  }
}
