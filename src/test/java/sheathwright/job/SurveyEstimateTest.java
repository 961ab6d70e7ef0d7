package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Traced;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;

/** The demo job whose rafters were read at five stations each, worked by hand from its readings. */
class SurveyEstimateTest {

  private static final double DIGITS = 1e-9;
  private static final Estimate ESTIMATE = new Estimate(JobText.demo("tallow-end").job());
  private static final Leveling LEVELING = ESTIMATE.rafterLeveling().orElseThrow();
  private static final SurveyedPlane PLANE = LEVELING.survey().orElseThrow().planes().get(0);

  /** Every rafter's ends lie at the string and nothing above it: its line is the string. */
  @Test
  void build_isTheDropWhereEveryRafterSags() {
    for (int i = 0; i < PLANE.readings().readings().size(); i++) {
      assertThat(PLANE.target().buildUps().get(i).value())
          .isCloseTo(PLANE.readings().readings().get(i).reading().drop().value(), within(DIGITS));
    }
    assertThat(PLANE.target().largest().value()).isEqualTo(1.125);
  }

  /** Greatest drops 0, 1/8, 3/8, 3/4, 1-1/8, 7/8, 1/2, 1/4, 0: leave to 1/8, shim to 3/8. */
  @Test
  void actions_followTheGreatestDrop() {
    assertThat(PLANE.work().cellsOf("action").stream().map(Traced::plain))
        .containsExactly(
            "leave", "leave", "shim", "sister", "sister", "sister", "sister", "shim", "leave");
    assertThat(LEVELING.sisters().value()).isEqualTo(4);
    assertThat(LEVELING.shims().value()).isEqualTo(2);
  }

  /**
   * S-4 reads 0, 11/16, 3/4, 7/16, 0 at 6, 42, 78, 114, 150 in. It is 3/8 in low at 6 + 36 × 6/11
   * and at 114 + 36 × 1/7; with 24 in beyond each, and no farther than the bearings.
   */
  @Test
  void aSister_coversTheLowPartAndItsLaps() {
    double from = Math.max(6, 6 + 36 * 6 / 11.0 - 24);
    double to = Math.min(150, 114 + 36 / 7.0 + 24);
    assertThat(
            PLANE
                .plan()
                .rafters()
                .get(3)
                .sister()
                .length()
                .in(sheathwright.figure.Units.INCH)
                .value())
        .isCloseTo(to - from, within(1e-6));
  }

  /** A 12 ft straightedge is wanted to be within 1/8 in in 10 ft and 1/4 in in 20 ft: it is not. */
  @Test
  void straightedges_showTheOldWoodToBeOff() {
    assertThat(PLANE.flatness().findings()).hasSize(4).noneMatch(f -> f.check().ok().holds());
    // the rafters are 12 ft long: under 20 ft of straightedge the whole drop of S-5 shows
    assertThat(PLANE.flatness().findings().get(2).deviation().value()).isEqualTo(1.125);
  }

  /** 2x6 at 9.60 for 12 ft, 0.80 a foot: sticks of 12, 12, 12 and 10 ft. */
  @Test
  void sticks_arePricedByTheFoot() {
    Survey survey = LEVELING.survey().orElseThrow();
    assertThat(survey.sticks().value()).isCloseTo(0.80 * (12 + 12 + 12 + 10), within(DIGITS));
    StickCuts cutting = survey.cutting().orElseThrow();
    assertThat(cutting.cost().value())
        .isGreaterThanOrEqualTo(cutting.atLeast().value())
        .isLessThanOrEqualTo(survey.sticks().value() + DIGITS);
  }

  @Test
  void nothingIsDoubted_andEverythingTies() {
    assertThat(PLANE.readings().suspectCount().value()).isZero();
    assertThat(ESTIMATE.ties()).allMatch(tie -> tie.holds().holds());
  }

  @Test
  void aReadingOffByAnInch_isKeptAndSaidToBeDoubted() {
    JobText slipped =
        JobText.demo("tallow-end").with("readings", "S,S-5,108,78,1-1/8,", "S,S-5,108,78,3-1/8,");
    Estimate doubted = new Estimate(slipped.job());
    SurveyedPlane plane =
        doubted.rafterLeveling().orElseThrow().survey().orElseThrow().planes().get(0);
    assertThat(plane.readings().suspects()).isNotEmpty();
    assertThat(plane.target().largest().value()).isEqualTo(3.125);
    assertThat(failing(doubted)).anyMatch(what -> what.contains("contradicted"));
  }

  /**
   * 3/4 in blocks under a string of 12 ft and 20 lb: at mid-length it hangs w L² ÷ 8 T = 0.0162 in.
   */
  @Test
  void readingsUnderTheString_becomeDrops() {
    String drops = JobText.demo("tallow-end").tables().get("readings");
    StringBuilder read = new StringBuilder("plane,rafter,along_in,up_in,reading_in,note\n");
    for (String line : drops.lines().skip(1).toList()) {
      String[] cells = line.split(",", -1);
      double drop = sheathwright.figure.Lengths.inches(cells[4]);
      read.append(String.join(",", cells[0], cells[1], cells[2], cells[3]))
          .append(',')
          .append(drop + 0.75)
          .append(",\n");
    }
    SurveyedPlane plane = plane(JobText.demo("tallow-end").withTable("readings", read.toString()));
    double hangs = 0.0015 * 12 * 12 / (8 * 20) * 12;
    var middle = plane.readings().readings().get(22).reading();
    assertThat(middle.up().value()).isEqualTo(78);
    assertThat(middle.drop().value()).isCloseTo(1.125 + hangs, within(1e-9));
  }

  /** Nothing may be built up at the bearings, and no more than an inch anywhere: 1-1/8 in lacks. */
  @Test
  void boundsThatClash_areSaidInOneLineAndNothingIsWritten() {
    JobText capped =
        JobText.demo("tallow-end").with("job", "objective,total", "cap_in,1,\nobjective,total");
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Estimate(capped.job()))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("plane S: nothing straight fits")
        .hasMessageContaining("0.125 in")
        .hasMessageContaining("from drop_in (readings.csv, line ")
        .hasMessageContaining("cap_in (job.csv, line ");
  }

  private static JobText crowned() {
    return JobText.demo("tallow-end")
        .with("job", "target,lines", "target,string")
        .with("readings", "S,S-1,12,78,0,", "S,S-1,12,78,-3/8,");
  }

  /** S-1 stands 3/8 in above the string at mid-length: planed to it, and a truss never is. */
  @Test
  void aCrown_isPlanedToTheStringButNotOnATruss() {
    SurveyedPlane rafters = plane(crowned());
    assertThat(rafters.work().cellsOf("action").get(0).plain()).isEqualTo("plane");
    assertThat(rafters.plan().totals().planed().value()).isEqualTo(1);
    assertThat(rafters.target().largest().value()).isEqualTo(1.125);
    SurveyedPlane trusses = plane(crowned().with("job", "truss,no", "truss,yes"));
    assertThat(trusses.work().cellsOf("action").get(0).plain()).isEqualTo("stop");
    assertThat(trusses.plan().decision().plain()).startsWith("STOP").contains("truss");
  }

  @Test
  void theString_movesForNoBound() {
    JobText capped = crowned().with("job", "objective,total", "cap_in,1,\nobjective,total");
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Estimate(capped.job()))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("rafter S-5 at 78 in: the string calls for 1.125 in");
  }

  @Test
  void aStationIsReadOneWay() {
    JobText both =
        JobText.demo("tallow-end")
            .withTable(
                "readings",
                "plane,rafter,along_in,up_in,drop_in,reading_in\nS,S-1,12,6,0,3/4\nS,S-1,12,42,,\n");
    assertThat(both.problems()).hasSize(2).allMatch(problem -> problem.contains("one of the two"));
  }

  /** A weak rafter made straight is weak still: the plan itself says who decides. */
  @Test
  void anOverstressedRafter_stopsThePlan() {
    JobText weak = JobText.demo("tallow-end").with("job", "rafter_size,2x6", "rafter_size,2x4");
    assertThat(plane(weak).plan().decision().plain())
        .startsWith("STOP")
        .contains("licensed engineer");
  }

  @Test
  void aColumnThatStandsTwice_isSaid() {
    JobText twice = JobText.demo("tallow-end").with("readings", "drop_in,note", "drop_in,drop_in");
    assertThat(twice.problems())
        .contains("readings.csv, line 1, column drop_in: this column appears twice");
  }

  @Test
  void trusses_stopTheWholeJob() {
    Estimate trusses =
        new Estimate(JobText.demo("tallow-end").with("job", "truss,no", "truss,yes").job());
    assertThat(trusses.framing().decision().plain()).startsWith("STOP").contains("truss designer");
  }

  @Test
  void aReportedSplit_standsAtTheHeadOfThePlanToo() {
    JobText split = JobText.demo("tallow-end").with("reports", "F-1,nothing", "F-1,split");
    SurveyedPlane plane = plane(split);
    assertThat(plane.plan().decision().plain()).startsWith("STOP").contains("reported");
    assertThat(plane.plan().toString()).startsWith("STOP");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "support_spacing_in,24 | support_spacing_in,16 | give the greatest spacing that is there",
        "upper_bearing_in,150 | upper_bearing_in,247 | plane S is 156 in long up the slope"
      })
  void factsThatTheReadingsContradict_areRefused(String fact, String other, String said) {
    JobText wrong = JobText.demo("tallow-end").with("job", fact, other);
    assertRefused(wrong, said);
  }

  @Test
  void aSisterLongerThanAnyStick_isRefusedByItsRafter() {
    JobText longer =
        JobText.demo("tallow-end")
            .with("planes", "13-0", "26-0")
            .with("job", "upper_bearing_in,150", "upper_bearing_in,300")
            .with("job", "full_bearing,no", "full_bearing,yes");
    assertRefused(longer, "rafter S-4: a sister of 26");
  }

  @Test
  void aRafterReadOnce_isNotTakenForStraight() {
    JobText once =
        JobText.demo("tallow-end")
            .withTable("readings", "plane,rafter,along_in,up_in,drop_in\nS,S-1,12,6,0\n");
    assertRefused(once, "rafter S-1 of plane S is read at 1; read its two bearings");
  }

  private static void assertRefused(JobText job, String said) {
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Estimate(job.job()))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(said);
  }

  private static SurveyedPlane plane(JobText job) {
    return new Estimate(job.job())
        .rafterLeveling()
        .orElseThrow()
        .survey()
        .orElseThrow()
        .planes()
        .get(0);
  }

  private static List<String> failing(Estimate estimate) {
    return estimate.ties().stream()
        .filter(tie -> !tie.holds().holds())
        .map(Estimate.Tie::what)
        .toList();
  }
}
