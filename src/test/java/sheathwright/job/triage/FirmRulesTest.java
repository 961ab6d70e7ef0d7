package sheathwright.job.triage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;

/** A firm's own limits and actions for what is done about a mark. */
class FirmRulesTest {

  private static JobText ruled(String rules, String marks) {
    return JobText.small().withTable("rules", rules).withTable("marks", marks);
  }

  private static MarkDecision decision(JobText job) {
    Deck.Marked marked = new Estimate(job.job()).deck().marked().get(0);
    return marked.decision();
  }

  private static final String PROBED =
      "mark,plane,finding,sheet,probe_in\nx,front,rot,front-1-1,%s\n";

  /** Common practice cuts out above 1/4 in; this firm above 1/2 in. */
  @ParameterizedTest
  @CsvSource({
    "3/8, watch: what was measured lies within the limits",
    "5/8, replace: an awl goes in 5/8 in; more than 1/2 in is cut out"
  })
  void theFirmsLimit_decides(String depth, String reason) {
    JobText job =
        ruled(
            "test,measure,sense,limit,unit,action,why,source,order\nprobe,probe_in,above,1/2,in,replace,soft stock here,the owner,2\n",
            PROBED.formatted(depth));
    assertThat(decision(job).reason().value()).isEqualTo(reason);
  }

  @Test
  void theFirmsLimit_isReadAsItsTableWritesNumbers() {
    JobText job =
        ruled(
            "test;measure;sense;limit;unit;action\nprobe;probe_in;above;0,5;in;replace\n",
            PROBED.formatted("5/8"));
    assertThat(decision(job).reason().value())
        .isEqualTo("replace: an awl goes in 5/8 in; more than 1/2 in is cut out");
  }

  @Test
  void theFirmsAction_decidesAndIsSaid() {
    JobText job =
        ruled("test,action\nstain,dry\n", "mark,plane,finding,sheet\nx,front,stain,front-1-1\n");
    assertThat(decision(job).action().value()).isEqualTo("dry");
    assertThat(decision(job).reason().value()).isEqualTo("dry: find the water and let it dry");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "prob,,1/2 | rules.csv, line 2, column test: test is \"prob\"; did you mean probe?",
        "stain,,1/2 | rules.csv, line 2, column limit: stain has no limit of the firm's",
        "hump,,1/2 | rules.csv, line 2, column limit: say in the column measure which limit it is: one of joint_gap_in, hump_in",
        "probe,,9 | rules.csv, line 2, column limit: ",
        "probe,, | rules.csv, line 2, column limit: it is empty; give a limit, an action, or both",
        "moisture,,wet | rules.csv, line 2, column limit: ",
      })
  void whatIsNotTheFirmsToSay_isRefusedWithItsLine(String line, String problem) {
    JobText job = ruled("test,measure,limit,action\n" + line + ",\n", PROBED.formatted("1/8"));
    assertThat(job.problems()).singleElement().asString().contains(problem);
  }

  @Test
  void aLimitTwice_isRefused() {
    JobText job = ruled("test,limit\nprobe,1/2\nprobe,3/8\n", PROBED.formatted("1/8"));
    assertThat(job.problems()).singleElement().asString().contains("appears twice");
  }
}
