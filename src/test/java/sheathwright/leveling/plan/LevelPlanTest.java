package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;
import sheathwright.cutting.stick.CutStick;
import sheathwright.cutting.stick.StickCutting;
import sheathwright.cutting.stick.StickPlan;
import sheathwright.figure.Amounts;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.YesNo;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.TestCottage;
import sheathwright.leveling.string.TestRafters;
import sheathwright.wood.LumberSize;

/** The invented sagging cottage, questions 12 and 13, worked by hand. */
class LevelPlanTest {

  private static final FramingAnswer PASSES = FramingAnswer.of(Amounts.number(0.729));

  private static LevelRules rules(YesNo fullBearing, YesNo truss) {
    LevelRules usual = LevelRules.usual(LumberSize.SIZE_2X8, LumberSize.SIZE_2X4);
    SisterRules sisters = usual.sisters();
    return new LevelRules(
        usual.leave(),
        usual.shim(),
        Choice.input("truss", truss, Source.GIVEN),
        new SisterRules(
            sisters.tolerance(),
            sisters.lap(),
            Choice.input("full_bearing", fullBearing, Source.GIVEN),
            sisters.size(),
            sisters.rafterSize(),
            sisters.leastLap(),
            sisters.nailSpacing(),
            sisters.nailRows()),
        usual.shims());
  }

  private static LevelPlan plan(String plane, double[] drops) {
    return LevelPlan.of(
        plane, TestCottage.rafters(plane, drops), rules(YesNo.YES, YesNo.NO), PASSES);
  }

  private static final LevelPlan A = plan("A", TestCottage.A);
  private static final LevelPlan B = plan("B", TestCottage.B);

  @Test
  void totals_areTheCounts() {
    assertThat(A.totals().sisters().value()).isEqualTo(11);
    assertThat(B.totals().sisters().value()).isEqualTo(7);
    assertThat(A.totals().shimmed().value()).isEqualTo(2);
    assertThat(B.totals().shimmed().value()).isEqualTo(5);
    assertThat(A.totals().left().value()).isEqualTo(2);
    assertThat(B.totals().left().value()).isEqualTo(3);
    assertThat(A.totals().planed().value()).isZero();
    assertThat(A.totals().trussStops().value()).isZero();
  }

  @Test
  void totals_areTheSisterStock() {
    double nails = A.totals().nails().value() + B.totals().nails().value();
    double feet = A.totals().stock().value() + B.totals().stock().value();
    assertThat(nails).isEqualTo(468);
    // 18 sticks of 14 ft; a foot of 2x8 is 2 × 8 ÷ 12 board feet
    assertThat(feet).isEqualTo(18 * 14);
    assertThat(feet * 2 * 8 / 12).isCloseTo(336, within(1e-9));
    assertThat(sistered(A))
        .allSatisfy(
            rafter -> {
              assertThat(rafter.sister().length().value())
                  .isCloseTo(12.01850425154663, within(1e-9));
              assertThat(rafter.sister().stock().value()).isEqualTo(14);
              assertThat(rafter.sister().nails().value()).isEqualTo(26);
              assertThat(rafter.sister().nearMiss().value())
                  .isCloseTo(0.22205101855956855, within(1e-9));
            });
  }

  private static List<PlannedRafter> sistered(LevelPlan plan) {
    return plan.rafters().stream()
        .filter(rafter -> rafter.action().value() == LevelAction.SISTER)
        .toList();
  }

  private static LevelPrices prices(int feet) {
    return new LevelPrices(
        List.of(new LevelPrices.Stick(Amounts.ft(feet), Amounts.usdPerPiece(17.10))),
        Amounts.usdPerPiece(1),
        Amounts.hoursPerPiece(1.5),
        Amounts.hoursPerPiece(0),
        Amounts.usdPerHour(46));
  }

  @Test
  void cost_isPiecesTimesPriceAndHours() {
    LevelCost a = LevelCost.of(A, prices(14));
    LevelCost b = LevelCost.of(B, prices(14));
    assertThat(a.sisters().value() + b.sisters().value()).isCloseTo(307.80, within(1e-9));
    assertThat(a.hours().value() + b.hours().value()).isCloseTo(27.0, within(1e-9));
    assertThat(a.labor().value()).isCloseTo(11 * 1.5 * 46, within(1e-9));
    assertThat(a.total().value())
        .isCloseTo(
            a.sisters().value() + A.totals().shims().value() + a.labor().value(), within(1e-9));
  }

  @Test
  void cost_isRefusedWhereAStickHasNoPrice() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> LevelCost.of(A, prices(12)).total().value())
        .withMessageContaining("not every stick has a price");
  }

  @Test
  void sticks_areAnOrderThatCanBeCut() {
    List<LevelPiece> sisters =
        Stream.of(A, B).flatMap(plan -> LevelPiece.of(plan, Reading.aside()).stream()).toList();
    assertThat(sisters).hasSize(18).extracting(LevelPiece::inches).containsOnly(144.25);
    LevelSticks sticks =
        LevelSticks.of(
            sisters,
            List.of(new LevelSticks.OnSale(12, 14.2), new LevelSticks.OnSale(14, 17.10)),
            0.125);
    StickPlan plan = StickCutting.plan(sticks.order(), Patience.asked(200));
    // no two fit one stick, and 12 ft is too short: 18 sticks of 14 ft
    assertThat(plan.sticks()).hasSize(18).extracting(CutStick::stock).containsOnly(1);
    assertThat(plan.cost()).isEqualTo(30780);
  }

  @Test
  void lap_isTheDepthLessTheGreatestBuildUp() {
    // 7-1/4 less 1-5/8 is more than the 3-1/2 of the old 2x4
    assertThat(A.lap().capacity().value()).isEqualTo(3.5);
    assertThat(A.lap().ok().holds()).isTrue();
  }

  @Test
  void roofOfTrusses_isLeftAndShimmedAndOtherwiseStopped() {
    LevelPlan trusses =
        LevelPlan.of(
            "A", TestCottage.rafters("A", TestCottage.A), rules(YesNo.YES, YesNo.YES), PASSES);
    assertThat(trusses.totals().sisters().value()).isZero();
    assertThat(trusses.totals().shimmed().value()).isEqualTo(2);
    assertThat(trusses.totals().trussStops().value()).isEqualTo(11);
    assertThat(trusses.marks()).isEmpty();
    assertThat(trusses.decision().value()).isEqualTo(LevelDecision.TRUSS_DESIGNER_FIRST);
  }

  @Test
  void highRafter_isPlanedAndALowPartOfItShimmed() {
    LevelRafter both =
        new LevelRafter(
            TestRafters.rafter(
                "R1", 0, new double[] {0, 50, 100, 150}, new double[] {0, 0.3, 0, -0.5}),
            Amounts.in(0),
            Amounts.in(150));
    LevelPlan plan = LevelPlan.of("A", List.of(both), rules(YesNo.NO, YesNo.NO), PASSES);
    PlannedRafter rafter = plan.rafters().get(0);
    assertThat(rafter.action().value()).isEqualTo(LevelAction.SHIM);
    assertThat(rafter.highPart().value()).isEqualTo(LevelAction.PLANE);
    assertThat(plan.totals().planed().value()).isEqualTo(1);
  }

  @Test
  void sisterTooLongForAnyStick_isRefused() {
    LevelRafter longOne =
        new LevelRafter(
            TestRafters.rafter("R1", 0, new double[] {0, 150, 300}, new double[] {0, 2, 0}),
            Amounts.in(0),
            Amounts.in(300));
    LevelPlan plan = LevelPlan.of("A", List.of(longOne), rules(YesNo.YES, YesNo.NO), PASSES);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> plan.totals().stock().value())
        .withMessageContaining("splice it to an engineer's detail");
  }

  @Test
  void plan_isSolvedForItsInputs() {
    Solution behind = Solution.behind(A.rafters().get(0).greatest()).orElseThrow();
    assertThat(behind.state().plain()).isEqualTo(Solution.CURRENT);
    assertThat(behind.inputs()).contains(A.rafters().get(0).center());
  }
}
