package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;

class FlatnessSurveyTest {

  /** The plane of exact reference case P02: a 3 by 3 grid with its middle 1 in low. */
  private static List<RafterProfile> oneLowPoint() {
    return TestRafters.grid(
        new double[] {0, 24, 48}, new double[] {0, 60, 120}, (x, y) -> x == 24 && y == 60 ? 1 : 0);
  }

  @Test
  void findings_ofOneLowPoint() {
    List<FlatnessFinding> findings =
        FlatnessSurvey.of("A", oneLowPoint(), FlatnessLimit.usual()).findings();
    assertThat(findings).hasSize(2);
    assertThat(findings).allSatisfy(each -> assertThat(each.deviation().value()).isEqualTo(1));
    assertThat(findings.get(0).place().plain())
        .isEqualTo("rafter R2, low at 5.0 ft, under a straightedge from 0.0 ft to 10.0 ft");
    assertThat(findings.get(1).place().plain()).startsWith("5.0 ft up the slope, low at 2.0 ft");
    // 1 in against 1/4 in
    assertThat(findings.get(0).check().ratio().value()).isEqualTo(4);
    assertThat(findings.get(0).check().ok().holds()).isFalse();
  }

  @Test
  void findings_ofAFlatPlaneAreStraight() {
    // exact reference case P01
    List<RafterProfile> flat =
        TestRafters.grid(new double[] {0, 24, 48}, new double[] {0, 60, 120}, (x, y) -> 0);
    assertThat(FlatnessSurvey.of("A", flat, FlatnessLimit.strict()).findings())
        .hasSize(4)
        .allSatisfy(
            each -> {
              assertThat(each.deviation().value()).isZero();
              assertThat(each.place().plain()).isEqualTo("straight");
              assertThat(each.check().ok().holds()).isTrue();
            });
  }

  @Test
  void findings_ofOneRafterOfFiveStations() {
    // exact reference case P04, drops positive: 0 5/8 7/8 1/2 -1/8 at 0 36 72 108 144; by hand the
    // 12 ft chord stands at -1/16 halfway, 15/16 above the wood
    double[] drops = {0, 0.625, 0.875, 0.5, -0.125};
    List<RafterProfile> rafter =
        TestRafters.grid(
            new double[] {0}, new double[] {0, 36, 72, 108, 144}, (x, y) -> drops[(int) y / 36]);
    FlatnessFinding along =
        FlatnessSurvey.of("A", rafter, FlatnessLimit.strict()).findings().get(2);
    assertThat(along.limit().what()).isEqualTo("1/4 in in 20 ft");
    assertThat(along.deviation().value()).isCloseTo(0.9375, within(1e-12));
  }

  @Test
  void findings_ofAHumpAreNegativeAndHeldAsLarge() {
    List<RafterProfile> hump =
        TestRafters.grid(
            new double[] {0, 24, 48}, new double[] {0, 60, 120}, (x, y) -> y == 60 ? -0.5 : 0);
    FlatnessFinding along = FlatnessSurvey.of("A", hump, FlatnessLimit.usual()).findings().get(0);
    assertThat(along.deviation().value()).isEqualTo(-0.5);
    assertThat(along.place().plain()).contains("high at 5.0 ft");
    assertThat(along.check().ratio().value()).isEqualTo(2);
  }

  @Test
  void across_takesStationsThatDoNotLineUp() {
    // A plane that dips evenly by 1 in under rafter 2 has the same dip at every height between.
    List<RafterProfile> rafters = new ArrayList<>();
    rafters.add(TestRafters.rafter("R1", 0, new double[] {0, 50, 100}, new double[] {0, 0, 0}));
    rafters.add(TestRafters.rafter("R2", 24, new double[] {10, 70}, new double[] {1, 1}));
    rafters.add(TestRafters.rafter("R3", 48, new double[] {0, 33, 100}, new double[] {0, 0, 0}));
    FlatnessFinding across =
        FlatnessSurvey.of("A", rafters, FlatnessLimit.usual()).findings().get(1);
    assertThat(across.deviation().value()).isCloseTo(1, within(1e-12));
  }

  @Test
  void findings_areSolvedForEveryDrop() {
    FlatnessFinding finding =
        FlatnessSurvey.of("A", oneLowPoint(), FlatnessLimit.usual()).findings().get(0);
    Solution behind = Solution.behind(finding.deviation()).orElseThrow();
    assertThat(behind.inputs()).hasSize(3 + 9 * 2);
    assertThat(behind.state().plain()).isEqualTo(Solution.CURRENT);
  }

  @Test
  void survey_refusesTwoRaftersAtOnePlace() {
    RafterProfile one = TestRafters.rafter("R1", 0, new double[] {0}, new double[] {0});
    RafterProfile two = TestRafters.rafter("R2", 0.5, new double[] {0}, new double[] {0});
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> FlatnessSurvey.of("A", List.of(one, two), FlatnessLimit.usual()))
        .withMessageContaining("R1 and R2");
  }
}
