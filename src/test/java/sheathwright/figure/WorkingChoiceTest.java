package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/** How the working tells what was decided, and what the other branch would have come to. */
class WorkingChoiceTest {

  private static final Figure<Length> GAP =
      Figure.input("gap_in", 0.5, Units.INCH, Limits.NONE, Source.GIVEN);
  private static final Figure<Length> DEPTH =
      Figure.input("depth_in", 3, Units.INCH, Limits.NONE, Source.GIVEN);
  private static final Choice<String> KIND = Choice.input("wood_kind", "oak", Source.GIVEN);
  private static final Figure<Ratio> ROWS = number(0).as("rows", Units.RATIO);
  private static final Figure<Length> BY_ZERO = in(48).dividedBy(ROWS).in(Units.INCH);
  private static final Condition IS_NARROW = GAP.isLessThan(in(1));

  private static String untaken(Traced result, boolean isPlain) {
    return Working.of(List.of(result), "", new Working.Manner(isPlain, true), 200);
  }

  @Test
  void aChoiceOfNumbers_isToldOnce() {
    assertThat(Working.of(Figure.choose(IS_NARROW, in(2), in(9)).as("left_in", Units.INCH)))
        .isEqualTo(
            """
            left = 2 in
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken""");
    assertThat(Working.of(Figure.choose(IS_NARROW, DEPTH, in(9)).as("left_in", Units.INCH)))
        .isEqualTo(
            """
            left = depth
                 = 3 in
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken""");
  }

  @Test
  void aWordThatDecides_isNotRepeated() {
    assertThat(Working.of(Figure.choose(KIND.is("oak"), in(2), in(9)).as("left_in", Units.INCH)))
        .isEqualTo(
            """
            left = 2 in
                   since wood kind is oak: the other branch is not taken""");
  }

  @Test
  void whatNobodyMeasured_decidesByItsName() {
    Figure<Length> sag = Figure.notMeasured("sag_in", Units.INCH, Source.GIVEN);
    assertThat(Working.of(Figure.choose(sag.isMeasured(), in(2), in(9)).as("left_in", Units.INCH)))
        .isEqualTo(
            """
            left = 9 in
                   since it is not so that sag is measured: the other branch is not taken""");
  }

  @Test
  void aChoiceThatIsUsedTwice_isExplainedOnce() {
    Figure<Length> part = Figure.choose(IS_NARROW, in(2), in(9));
    assertThat(Working.of(part.plus(part).as("both_in", Units.INCH)))
        .isEqualTo(
            """
            both = 2 in + 2 in
                 = 4 in
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken""");
  }

  @Test
  void aChoiceWithAName_isExplainedThereAlone() {
    Figure<Length> part = Figure.choose(IS_NARROW, in(2), in(9)).as("part_in", Units.INCH);
    assertThat(Working.of(part.plus(GAP).as("both_in", Units.INCH)))
        .isEqualTo(
            """
            part = 2 in
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken
            both = part + gap
                 = 2 in + 1/2 in
                 = 2-1/2 in""");
    assertThat(Working.isDecided(part)).isTrue();
    assertThat(Working.isDecided(part.plus(GAP))).isFalse();
  }

  @Test
  void whatCannotBeDecided_isToldWhole() {
    Figure<Length> left = Figure.choose(BY_ZERO.isLessThan(in(1)), GAP, in(2));
    assertThat(Working.of(left.as("left_in", Units.INCH)))
        .isEqualTo(
            """
            left = gap if 48 in ÷ rows < 1 in, else 2 in
                 refused: 48 in cannot be divided by rows, which is zero""");
    assertThat(Working.isDecided(left)).isFalse();
  }

  /** A choice that cannot be decided mentions all three, and steps behind both branches. */
  @Test
  void whatCannotBeDecided_keepsTheStepsOfBothBranches() {
    Figure<Length> wide = GAP.plus(in(1)).as("wide_in", Units.INCH);
    Figure<Length> deep = DEPTH.plus(in(1)).as("deep_in", Units.INCH);
    Figure<Length> open = Figure.choose(BY_ZERO.isLessThan(in(1)), wide, deep);
    Figure<Length> decided = Figure.choose(IS_NARROW, wide, deep);
    assertThat(Working.count(List.of(open.as("left_in", Units.INCH)))).isEqualTo(3);
    assertThat(Working.count(List.of(decided.as("left_in", Units.INCH)))).isEqualTo(2);
    assertThat(Working.inputs(open)).containsExactly(ROWS, wide, deep);
    assertThat(Working.inputs(decided)).containsExactly(GAP, wide);
  }

  @Test
  void aBranchNotTaken_isToldWhereItIsAskedFor() {
    Figure<Length> left = Figure.choose(IS_NARROW, DEPTH.minus(GAP), in(2));
    assertThat(untaken(left.as("left_in", Units.INCH), false))
        .isEqualTo(
            """
            left = depth − gap
                 = 3 in − 1/2 in
                 = 2-1/2 in
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken
                   not taken: 2 in""");
    Figure<Length> right = Figure.choose(GAP.isMoreThan(in(1)), DEPTH.minus(GAP), in(2));
    assertThat(untaken(right.as("left_in", Units.INCH), false))
        .isEqualTo(
            """
            left = 2 in
                   since it is not so that gap > 1 in (1/2 in > 1 in): the other branch is not taken
                   not taken: depth − gap = 3 in − 1/2 in = 2-1/2 in""");
    assertThat(untaken(right.as("left_in", Units.INCH), true))
        .endsWith("\n       not taken: depth − gap = 3 − 0.5 = 2-1/2 in");
  }

  @Test
  void aBranchNotTaken_saysNothingTwice() {
    assertThat(untaken(Figure.choose(IS_NARROW, in(2), DEPTH).as("left_in", Units.INCH), false))
        .endsWith("\n       not taken: depth = 3 in");
    assertThat(untaken(Figure.choose(IS_NARROW, in(2), DEPTH).as("left_in", Units.INCH), true))
        .endsWith("\n       not taken: depth = 3 in");
  }

  @Test
  void aBranchNotTakenThatIsRefused_saysWhy() {
    assertThat(untaken(Figure.choose(IS_NARROW, in(2), BY_ZERO).as("left_in", Units.INCH), false))
        .endsWith(
            "\n       not taken: 48 in ÷ rows = refused: 48 in cannot be divided by rows, which is"
                + " zero");
  }

  @Test
  void noLimit_isAnAnswer() {
    Figure<Length> none = Figure.none("no limit", Units.INCH);
    assertThat(Working.of(Figure.choose(IS_NARROW, none, in(2)).as("left_in", Units.INCH)))
        .isEqualTo(
            """
            left = no limit
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken""");
  }
}
