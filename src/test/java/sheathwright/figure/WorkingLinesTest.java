package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/** Which steps the working has, what the last one is called, and where its source stands. */
class WorkingLinesTest {

  private static final int TO_THE_SOURCE = 64;
  private static final Source CLAUSE = Source.read("Standard 2020");
  private static final Figure<Length> GAP =
      Figure.input("gap_in", 3, Units.INCH, Limits.NONE, Source.GIVEN);

  private static List<String> last(Traced step, String called, int width) {
    return Working.last(step, called, Working.USUAL, width);
  }

  private static Figure<Length> constant(String name) {
    return Figure.constant(name, 3, Units.INCH, CLAUSE);
  }

  @Test
  void aResultWithoutAName_isCalledAsItIsAskedFor() {
    Figure<Length> sum = in(2).plus(in(3));
    assertThat(last(sum, "", 80)).containsExactly("answer = 2 in + 3 in", "       = 5 in");
    assertThat(last(sum, "the sum", 80)).containsExactly("the sum = 2 in + 3 in", "        = 5 in");
    assertThat(last(sum.as("both_in", Units.INCH), "the sum", 80))
        .containsExactly("both = 2 in + 3 in", "     = 5 in");
  }

  @Test
  void aValueThatWasGiven_isOneLine() {
    assertThat(Working.of(GAP))
        .isEqualTo("gap = 3 in" + " ".repeat(TO_THE_SOURCE - "gap = 3 in".length()) + "given");
  }

  @Test
  void aLongAnswer_hasItsSourceTwoBlanksBehind() {
    String words = "a word that is longer than a word is, up to the column of sources";
    Choice<String> word = Choice.input("it", words, CLAUSE);
    assertThat(Working.of(word)).isEqualTo("it = " + words + "  Standard 2020");
  }

  /** 25 characters, two blanks and 13 characters are 40; a line of 26 leaves one blank. */
  @Test
  void aSource_standsInTheLineIfTwoBlanksAreFree() {
    assertThat(last(constant("clear_gap_of_decks_in"), "", 40))
        .containsExactly("clear gap of decks = 3 in  Standard 2020");
    assertThat(last(constant("clear_gap_of_a_deck_in"), "", 40))
        .containsExactly(
            "clear gap of a deck = 3 in", " ".repeat("clear gap of a deck   ".length()) + CLAUSE);
    assertThat(last(constant("gap_in"), "", 40))
        .containsExactly("gap = 3 in" + " ".repeat(17) + "Standard 2020");
  }

  @Test
  void aNumberBelowOne_isNotBracketedUnderAPower() {
    Figure<Ratio> share = number(0.5).within("share", Units.RATIO, Limits.between(0, 1, ""));
    assertThat(last(share.squared().as("square", Units.RATIO), "", 80))
        .containsExactly("square = share^2", "       = 0.5^2", "       = 0.25");
  }

  @Test
  void stepsBehindAList_areTheListsOwn() {
    Figure<Length> doubled = GAP.plus(GAP).as("twice_in", Units.INCH);
    Roll gaps = Roll.of("gaps", "the gaps", List.of(doubled), Roll.column("gap_in", each -> each));
    Figure<Length> sum = gaps.sum("gap_in", Units.INCH).as("all_in", Units.INCH);
    assertThat(Working.of(sum)).isEqualTo("all = the sum of gap in the gaps\n    = 6 in");
    assertThat(Working.count(List.of(sum))).isEqualTo(1);
    assertThat(Working.count(List.of(doubled))).isEqualTo(1);
  }

  @Test
  void inputs_areTheNamedValuesThatTheFormulaMentions() {
    Figure<Length> depth = constant("depth_in");
    Figure<Length> twice = GAP.plus(GAP).as("twice_in", Units.INCH);
    Figure<?> last = twice.plus(depth).minus(twice.plus(in(1))).as("last_in", Units.INCH);
    assertThat(Working.inputs(last)).containsExactly(twice, depth);
    assertThat(Working.inputs(twice)).containsExactly(GAP);
    assertThat(Working.inputs(GAP)).isEmpty();
  }

  @Test
  void count_isOfStepsWithANameAndOfTheResult() {
    Figure<Length> twice = GAP.plus(GAP).as("twice_in", Units.INCH);
    assertThat(Working.count(List.of(twice.plus(twice)))).isEqualTo(2);
    assertThat(Working.count(List.of(twice, twice.plus(in(1)).as("more_in", Units.INCH))))
        .isEqualTo(2);
    assertThat(Working.count(List.of())).isZero();
  }

  @Test
  void folded_isTheStepAsItWasTaken() {
    Figure<Length> left = Figure.choose(GAP.isLessThan(in(1)), in(2), GAP.minus(in(1)));
    assertThat(Working.folded(left)).isEqualTo("gap − 1 in");
    assertThat(Working.folded(left.plus(in(4)))).isEqualTo("gap − 1 in + 4 in");
  }
}
