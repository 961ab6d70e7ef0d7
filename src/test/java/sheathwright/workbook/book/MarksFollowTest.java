package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.page.JobBook;

/** Whoever changes a finding or a measure in the estimate reads there at once what is done. */
class MarksFollowTest {

  private static final String MARKS =
      "mark,plane,finding,sheet,probe_in\na,front,%s,front-1-1,%s\nb,front,stain,front-2-2,\n";

  private static JobText marked(String finding, String probe) {
    return JobText.small().withTable("marks", MARKS.formatted(finding, probe));
  }

  private static Following.Made made(JobText job) {
    return Following.made(JobBook::estimate, new Estimate(job.job()));
  }

  /** By the rules: 1/4 in is common practice; soft with a probe up to it is refastened. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rot|3/8|replace: an awl goes in 3/8 in; more than 1/4 in is cut out",
        "soft|3/8|replace: an awl goes in 3/8 in; more than 1/4 in is cut out",
        "soft|1/8|refasten: it gives or moves on its nails, and the wood is not shown to be bad",
        "thin|1/8|stop: thin, not measured",
        "tight|1/8|relieve: tight, not measured",
      })
  void aFindingOrMeasure_changesActionAndReason(String finding, String probe, String reason) {
    try (Engine engine = Engine.of(made(marked("loose", "3/16")).bytes())) {
      assertThat(engine.values().values())
          .contains("refasten: it gives or moves on its nails, and the wood is not shown to be bad")
          .noneMatch(value -> value.toString().startsWith("solve again: mark a"));
      engine.edit(made(marked(finding, probe)).book().inputs());
      Collection<Object> after = engine.values().values();
      assertThat(after).contains(reason);
      assertThat(after).anyMatch(value -> value.toString().startsWith("solve again: mark a"));
    }
  }
}
