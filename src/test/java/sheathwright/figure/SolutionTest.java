package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;

class SolutionTest {

  private static final Source FOUND = Source.derived("made up for this test");

  private static Solution solved(String name, Figure<Quantity.Length> input) {
    Reading reading = new Reading();
    reading.number("an input", input, Units.INCH);
    return reading.solution(name);
  }

  private static Figure<Quantity.Length> input(String name) {
    return Figure.input(name, 3, Units.INCH, Limits.NONE, Source.GIVEN);
  }

  @Test
  void aSolutionMadeFromAnother_alsoAsksWhetherThatOneHolds() {
    Solution first = solved("target", Amounts.in(1));
    Figure<Quantity.Length> found = first.figure("build_up_in", 0.5, Units.INCH, FOUND);
    Solution second = solved("cuts", found.plus(found).in(Units.INCH));
    assertThat(second.inputs()).hasSize(2).last().isSameAs(first.state());
    assertThat(second.asSolved().cellsOf("input").get(1).plain()).isEqualTo("target");
    assertThat(second.state().plain()).isEqualTo(Solution.CURRENT);
  }

  @Test
  void aSolutionOfGivenNumbers_asksForThoseAlone() {
    assertThat(solved("target", Amounts.in(1)).inputs()).hasSize(1);
  }

  @Test
  void whatIsRead_isWhatIsCompared_onceAndInOrder() {
    Figure<Quantity.Length> depth = input("depth_in");
    Choice<YesNo> full = Choice.input("full", YesNo.YES, Source.GIVEN);
    Reading reading = new Reading();
    assertThat(reading.word("whether it is full", full)).isEqualTo(YesNo.YES);
    assertThat(reading.number("the depth", depth, Units.FOOT)).isEqualTo(0.25);
    reading.number("the same once more", depth, Units.INCH);
    reading.number("two", Figure.constant("two", 2, Units.INCH, FOUND), Units.INCH);
    Solution solution = reading.solution("plan");
    assertThat(solution.inputs()).hasSize(2);
    assertThat(solution.inputs().get(0)).isSameAs(full);
    assertThat(solution.inputs().get(1)).isSameAs(depth);
    assertThat(solution.asSolved().cellsOf("input"))
        .extracting(Traced::plain)
        .containsExactly("whether it is full", "the depth");
  }

  @Test
  void whatWasReadForAThing_isReadByWhoeverAsksTheThing() {
    Figure<Quantity.Length> eave = input("eave_in");
    Reading ofThePlane = new Reading();
    ofThePlane.number("eave", eave, Units.INCH);
    assertThat(new Reading().and(ofThePlane).solution("layout").inputs()).hasSize(1);
  }

  @Test
  void readingOn_whenTheSolutionIsMade_isDetected() {
    Reading reading = new Reading();
    reading.solution("plan");
    assertThatIllegalStateException()
        .isThrownBy(() -> reading.number("the depth", Amounts.in(1), Units.INCH))
        .withMessageContaining("the depth is read after");
  }

  @Test
  void aLookAside_leadsToNoSolution() {
    Reading aside = Reading.aside();
    assertThat(aside.number("", Amounts.in(2), Units.INCH)).isEqualTo(2);
    assertThatIllegalStateException().isThrownBy(() -> aside.solution("plan"));
  }

  @Test
  void aWordThatFollows_isTakenOnlyWhereAllThatItFollowsFromWasRead() {
    Figure<Quantity.Length> depth = input("depth_in");
    Figure<Quantity.Length> limit = input("limit_in");
    Solution solution = solved("plan", depth);
    Figure<Quantity.Length> found = solution.figure("found_in", 2, Units.INCH, FOUND);
    assertThat(solution.following(found.isAtMost(depth).as("fits"))).isEqualTo(YesNo.YES);
    assertThatIllegalStateException()
        .isThrownBy(() -> solution.following(found.isAtMost(limit).as("fits")))
        .withMessage("limit_in was not read for plan");
  }

  @Test
  void itsGuard_isNamedAfterIt() {
    Solution solution = solved("deck_layout", input("eave_in"));
    assertThat(solution.name()).isEqualTo("deck_layout");
    assertThat(solution.state().name()).isEqualTo("deck_layout_state");
    assertThat(solution.asSolved().name()).isEqualTo("deck_layout");
    assertThat(solution.asSolved().title()).isEqualTo("deck layout");
    assertThat(solution.asSolved().columns())
        .containsExactly("input", "now", "solved_for", "changed");
    Step.Chosen state = (Step.Chosen) solution.state().step();
    assertThat(Working.symbols(state.when())).isEqualTo("deck layout inputs changed ≤ 0");
    assertThat(state.otherwise().step().operands())
        .isEqualTo(solution.asSolved().cellsOf("changed"));
  }

  @Test
  void itsRows_holdWhatIsAndWhatWasSolvedFor() {
    Choice<YesNo> full = Choice.input("full", YesNo.YES, Source.GIVEN);
    Reading reading = new Reading();
    reading.number("eave", input("eave_in"), Units.INCH);
    reading.word("whether it is full", full);
    Roll rows = reading.solution("deck_layout").asSolved();
    assertThat(rows.cellsOf("now").get(0).step().operands())
        .isEqualTo(reading.values().subList(0, 1));
    assertThat(rows.rows())
        .extracting(row -> row.stream().map(Traced::plain).toList())
        .containsExactly(
            java.util.List.of("eave", "3", "3", "0"),
            java.util.List.of("whether it is full", "yes", "yes", "0"));
  }

  @Test
  void aSolutionBehindAnother_isCalledInWords() {
    Figure<Quantity.Length> found =
        solved("deck_layout", Amounts.in(1)).figure("left_in", 0.5, Units.INCH, FOUND);
    assertThat(found.source()).isEqualTo(FOUND);
    assertThat(found.name()).isEqualTo("left_in");
    assertThat(found.value()).isEqualTo(0.5);
    assertThat(solved("cuts", found).asSolved().cellsOf("input"))
        .extracting(Traced::plain)
        .containsExactly("an input", "deck layout");
    assertThat(Solution.behind(found)).isPresent();
    assertThat(Solution.behind(Amounts.in(1))).isEmpty();
  }

  @Test
  void aWordThatIsFound_isTheSolvers() {
    Choice<String> word = solved("plan", Amounts.in(1)).word("plan_end", "cut", FOUND);
    assertThat(word.value()).isEqualTo("cut");
    assertThat(word.name()).isEqualTo("plan_end");
    assertThat(word.source()).isEqualTo(FOUND);
  }

  @Test
  void values_areWhatWasReadInOrder() {
    Figure<Quantity.Length> eave = input("eave_in");
    Figure<Quantity.Length> rake = input("rake_in");
    Reading reading = new Reading();
    reading.number("eave", eave, Units.INCH);
    reading.number("rake", rake, Units.INCH);
    assertThat(reading.values()).containsExactly(eave, rake);
    assertThat(new Reading().and(reading).values()).containsExactly(eave, rake);
    Reading aside = Reading.aside();
    aside.number("eave", eave, Units.INCH);
    assertThat(aside.values()).isEmpty();
    assertThatIllegalStateException()
        .isThrownBy(() -> aside.solution("plan"))
        .withMessage("nothing is solved with a look aside, so not plan");
  }
}
