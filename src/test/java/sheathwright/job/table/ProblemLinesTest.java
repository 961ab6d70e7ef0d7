package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is wrong fits on a screen, however much it is. */
class ProblemLinesTest {

  private static List<Problem> many(int count, String column, String message) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Problem("marks.csv", i + 2L, column, message.formatted(i)))
        .toList();
  }

  @Test
  void fewProblems_areSaidOneByOne() {
    assertThat(ProblemLines.of(many(40, "up_in", "\"x%d\" is not a number"))).hasSize(40);
  }

  @Test
  void manyProblemsOfOneKind_areCounted() {
    List<String> lines = ProblemLines.of(many(15_000, "up_in", "\"x%d\" is not a number"));
    assertThat(lines).hasSize(41);
    assertThat(lines.get(39))
        .isEqualTo("marks.csv, line 41, column up_in: \"x39\" is not a number");
    assertThat(lines.get(40))
        .isEqualTo("and 14,960 more of the same kind in marks.csv, column up_in");
  }

  @Test
  void aKindThatStandsLast_isSaidToo() {
    List<Problem> problems = new ArrayList<>(many(1_000, "up_in", "%d is given; too much"));
    problems.add(new Problem("marks.csv", 9_999, "mark", "\"a\" appears twice"));
    assertThat(ProblemLines.of(problems))
        .hasSizeLessThanOrEqualTo(42)
        .contains("marks.csv, line 9999, column mark: \"a\" appears twice")
        .last()
        .asString()
        .isEqualTo("and 980 more of the same kind in marks.csv, column up_in");
  }

  @Test
  void manyKinds_areCountedToo() {
    List<Problem> problems = new ArrayList<>();
    for (String word : "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ".split("")) {
      problems.add(new Problem("t.csv", 1, word, "this column is not known"));
    }
    assertThat(ProblemLines.of(problems))
        .hasSize(41)
        .last()
        .isEqualTo("and 12 more of other kinds in t.csv");
  }

  @Test
  void anException_saysNoMore() {
    ProblemsException thrown = new ProblemsException(many(500, "", "%d"));
    assertThat(thrown.getMessage().lines()).hasSize(41);
    assertThat(thrown.problems()).hasSize(500);
  }
}
