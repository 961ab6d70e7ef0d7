package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Long answers go on below their own beginning, as prose does, in 80 columns. */
class WrappedAnswersTest {

  private final Session session = new Session();

  @TempDir Path folder;

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @Test
  void aRefusal_goesOnTwoToTheRight_andALineThatFitsStays() {
    answer("order = 2 ft");
    Answer refused = session.answers("given(thickness = 3 in)").get(0).wrapped(80);
    assertThat(refused.isError()).isTrue();
    assertThat(refused.text())
        .isEqualTo(
            """
            thickness cannot be given for all calls, because it does not mean the same in
              each; name it in the call. What can be given: spacing, species, grade, size,
              value_set, code, edition, wind, exposure, ground_snow, risk_category, rise,
              dead, deflection_limit, labor, tax, overhead, margin""");
    Answer two =
        new Answer(Answer.Kind.FAILED, "  it is short\n  and " + "long ".repeat(20) + "too", 3);
    assertThat(two.wrapped(40).text().lines())
        .containsExactly(
            "  it is short",
            "  and long long long long long long long",
            "    long long long long long long long",
            "    long long long long long long too");
    assertThat(two.wrapped(40).line()).isEqualTo(3);
  }

  @Test
  void aListedVariable_goesOnTwoToTheRight() {
    answer("measured_along_the_ridge = 16-9 1/4 ft");
    answer("measured_along_the_eave = 42 ft");
    answer("measured_up_the_rake = 18 ft");
    answer(
        "the_whole_south_side = (measured_along_the_ridge + measured_along_the_eave) * measured_up_the_rake");
    // (16.7708 + 42) × 18 = 1,057.875
    assertThat(answer("list"))
        .isEqualTo(
            """
            measured_along_the_ridge = 16' 9-1/4"
            measured_along_the_eave = 42' 0"
            measured_up_the_rake = 18' 0"
            the_whole_south_side = 1,057.88 sq ft   from measured_along_the_eave,
              measured_along_the_ridge, measured_up_the_rake""");
  }

  @Test
  void whatIsSaved_goesOnTwoToTheRight() {
    for (int i = 10; i < 30; i++) {
      answer("rafter" + i + " = " + i + " ft");
    }
    Answer saved = session.answers("save \"" + folder.resolve("roof.xlsx") + "\"").get(0);
    assertThat(saved.text()).doesNotContain("\n"); // nobody sits there
    String said = saved.wrapped(80).text();
    assertThat(said).startsWith("wrote ").contains("\n  ").endsWith("rafter29");
    assertThat(said.lines()).allMatch(line -> line.length() <= 80);
  }
}
