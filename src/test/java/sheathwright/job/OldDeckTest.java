package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.table.JobText;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.patch.PatchPlan;

/** The map of the old deck as a job's tables tell it, and what is billed by it. */
class OldDeckTest {

  private static final String MARKS =
      "mark,plane,finding,along_in,up_in,width_in,height_in,sheet\n";

  private static JobText marked(String... lines) {
    return JobText.small().withTable("marks", MARKS + String.join("\n", lines) + "\n");
  }

  private static PatchPlan patches(JobText job) {
    return new Estimate(job.job()).deck().parts().get(0).patches().orElseThrow();
  }

  /**
   * From an independent script: two planes of 25 units and 30 places. By hand: 3 are sold at $96
   * beside $10,585; each more is $117; by area 1,408.75 sq ft are 44.02 sheets, up to 44.25.
   */
  @ParameterizedTest
  @CsvSource({"'', 16372", "half, 16372", "place, 17542", "area, 15699.25"})
  void theWorstCase_isTheRulesSumOverEveryPlace(String rule, double worst) {
    JobText job = JobText.demo("quince-hollow");
    Estimate estimate =
        new Estimate(
            (rule.isEmpty() ? job : job.withLines("job", "bill_rule," + rule + ",")).job());
    assertThat(estimate.total().value()).isEqualTo(10_585 + 3 * 96);
    assertThat(estimate.quote().worstCase().value()).isEqualTo(worst);
  }

  @Test
  void theDemoJob_hasTheSameWorstCase() {
    Path folder = Path.of("demo-data", "quince-hollow");
    assertThat(new Estimate(Job.in(folder)).quote().worstCase().value()).isEqualTo(16_372);
  }

  /** One sheet, one patch, one sheet to buy, whatever is cut away beyond a mark. */
  @ParameterizedTest
  @ValueSource(strings = {"a,front,rot,96,0,96,48,", "a,front,rot,,,,,front-1-2"})
  void aMarkOfOneSheet_isOneSheet(String line) {
    for (String beyond : new String[] {"0", "3"}) {
      PatchPlan plan = patches(marked(line).withLines("job", "beyond_mark_in," + beyond + ","));
      assertThat(plan.list())
          .singleElement()
          .extracting(Patch::box)
          .hasToString("Box[left=96.0, bottom=0.0, right=192.0, top=48.0]");
      assertThat(plan.sheets().value()).isEqualTo(1);
      assertThat(plan.units().halves().value()).isEqualTo(1);
    }
  }

  /** By hand: half of a course, 48 by 24 in, is 8 sq ft of new panel. */
  @Test
  void aPlaceThatIsTouched_countsByTheNewPanelInIt() {
    PatchPlan plan = patches(marked("a,front,rot,100,8,10,6,"));
    assertThat(plan.units().halves().value()).isEqualTo(0.5);
    assertThat(plan.units().places().value()).isEqualTo(1);
    assertThat(plan.units().area().value()).isEqualTo(8);
  }

  @Test
  void aMeasuredMark_mayNameThePlaceThatItLiesIn() {
    PatchPlan plan = patches(marked("a,front,rot,100,8,10,6,front-1-2"));
    assertThat(plan.units().area().value()).isEqualTo(8);
  }

  @Test
  void whatIsToldOfTheOldSheets_makesTheMap() {
    JobText job =
        marked("a,front,rot,,,,,front-2-1")
            .withTable(
                "planes",
                "plane,eave_ft,slope_length_ft,joint_in,stagger_in,first_course_in\n"
                    + "front,20,12,32,64,24\nback,20,12,,,\n");
    assertThat(patches(job).list().get(0).box())
        .hasToString("Box[left=0.0, bottom=24.0, right=96.0, top=72.0]");
  }

  @Test
  void aMeasuredJoint_movesTheAssumedOne() {
    JobText job =
        marked("a,front,rot,,,,,front-1-2")
            .withTable("joints", "plane,course,joint_in\nfront,1,92\nfront,3,48\n");
    assertThat(patches(job).list().get(0).box().left()).isEqualTo(92);
    assertThat(new Estimate(job.job()).deck().parts().get(0).map().has("front-3-1b")).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,front,rot,,,,,front-9-2|marks.csv, line 2, column sheet: sheet is \"front-9-2\", but plane front has no such place; the nearest are front-3-2, front-2-2, front-3-1",
        "a,front,rot,,,,,back-1-1|marks.csv, line 2, column sheet: sheet is \"back-1-1\", but the plane here is front; give one of its places, such as front-1-1",
        "a,front,rot,,,,,second|marks.csv, line 2, column sheet: sheet is \"second\"; it must be plane, course from the eave and place from the left, such as front-1-1",
        "a,front,rot,100,8,10,6,front-1-1|marks.csv, line 2, column sheet: sheet is front-1-1, but what was measured lies in front-1-2; give one of the two, or measure again"
      })
  void aPlaceThatIsNotMeant_isSaidInOneLine(String line, String said) {
    Job job = marked(line).job();
    assertThatThrownBy(() -> new Estimate(job)).hasMessage(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,front,rot,100,8,,6,front-1-2|marks.csv, line 2, column width_in: ",
        "a,front,rot,,,,,|marks.csv, line 2, column along_in: "
      })
  void aMarkWithoutItsMeasures_isSaidInOneLine(String line, String said) {
    assertThat(marked(line).problems())
        .singleElement()
        .asString()
        .startsWith(said)
        .endsWith("or instead of all four a place in sheet such as A-3-5");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front,7,96|joints.csv, line 2, column course: course is 7, but plane front has 3, counted from its lowest point",
        "front,1,300|joints.csv, line 2, column joint_in: joint_in is 300, but course 1 of plane front goes from 0 to 240 in"
      })
  void aJointOffItsPlane_isSaidInOneLine(String line, String said) {
    Job job = JobText.small().withTable("joints", "plane,course,joint_in\n" + line + "\n").job();
    assertThatThrownBy(() -> new Estimate(job)).hasMessageStartingWith(said);
  }
}
