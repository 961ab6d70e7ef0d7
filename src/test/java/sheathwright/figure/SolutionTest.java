package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SolutionTest {

  private static final Source FOUND = Source.derived("made up for this test");

  private static Solution solved(String name, Traced input) {
    return Solution.of(name, List.of(new Solution.Input("an input", input)));
  }

  @Test
  void aSolutionMadeFromAnother_alsoAsksWhetherThatOneHolds() {
    Solution first = solved("target", Amounts.in(1));
    Figure<?> found = first.figure("build_up_in", 0.5, Units.INCH, FOUND);
    Solution second = solved("cuts", found.squared().in(Units.SQUARE_INCH));
    assertThat(second.inputs()).hasSize(2).last().isSameAs(first.state());
    assertThat(second.asSolved().cellsOf("input").get(1).plain()).isEqualTo("target");
    assertThat(second.state().plain()).isEqualTo(Solution.CURRENT);
  }

  @Test
  void aSolutionOfGivenNumbers_asksForThoseAlone() {
    assertThat(solved("target", Amounts.in(1)).inputs()).hasSize(1);
  }
}
