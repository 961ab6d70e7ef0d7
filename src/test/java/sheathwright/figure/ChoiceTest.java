package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import org.junit.jupiter.api.Test;

/** Words that remember: what they are called, what is asked of them, and sentences of them. */
class ChoiceTest {

  private enum Cover implements Option<Cover> {
    PAINT,
    HOT_DIP
  }

  private static final Source RULE = Source.read("Standard 2020");
  private static final Condition TRUE = in(1).isAtMost(in(2));
  private static final Condition FALSE = in(2).isAtMost(in(1));
  private static final Condition UNDECIDED = in(1).dividedBy(in(0)).isAtMost(number(1));
  private static final String BY_ZERO = "1 in cannot be divided by 0 in, which is zero";
  private static final Choice<Cover> NAIL = Choice.input("nail_cover", Cover.HOT_DIP, RULE);

  private static Choice<YesNo> refused() {
    return Choice.choose(UNDECIDED, YesNo.YES, YesNo.NO);
  }

  @Test
  void aWord_isWrittenInLowerCaseWithHyphens() {
    assertThat(NAIL.plain()).isEqualTo("hot-dip");
    assertThat(NAIL.shown()).isEqualTo("hot-dip");
    assertThat(NAIL).hasToString("hot-dip");
    assertThat(NAIL.options()).containsExactly("paint", "hot-dip");
    assertThat(Choice.wordsOf(Cover.class)).containsExactly("paint", "hot-dip");
    assertThat(Choice.literal("any word").options()).isEmpty();
    assertThat(Cover.PAINT.alsoWritten()).isEmpty();
    assertThat(Cover.PAINT.inTheTrade()).isEmpty();
    assertThat(Cover.HOT_DIP.choice().value()).isEqualTo(Cover.HOT_DIP);
  }

  @Test
  void aWord_isCalledByItsNameOrByItself() {
    assertThat(NAIL.symbol()).isEqualTo("nail cover");
    assertThat(Cover.HOT_DIP.choice().symbol()).isEqualTo("hot-dip");
    assertThat(NAIL.as("cover").name()).isEqualTo("cover");
    assertThat(NAIL.as("cover").source()).isEqualTo(RULE);
    assertThat(NAIL.as("cover", Source.GIVEN).source()).isEqualTo(Source.GIVEN);
    assertThat(NAIL.choice()).isSameAs(NAIL);
  }

  @Test
  void anArgument_takesTheParametersNameOnlyIfItHasNone() {
    assertThat(Cover.PAINT.choice().argument("cover").name()).isEqualTo("cover");
    assertThat(NAIL.argument("cover")).isSameAs(NAIL);
    Choice<Cover> named = Cover.PAINT.choice().as("screw_cover");
    assertThat(named.argument("cover")).isSameAs(named);
    Choice<Cover> chosen = Choice.choose(TRUE, NAIL, Cover.PAINT);
    assertThat(chosen.argument("cover")).isSameAs(chosen);
  }

  @Test
  void aMissingWord_namesWhatMayBeGivenAndIsItsOwnCause() {
    Choice<Cover> missing = Choice.missing("nail_cover", Cover.class);
    assertThat(missing)
        .hasToString("refused: nail_cover is missing; give one of paint, hot-dip")
        .extracting(Choice::name)
        .isEqualTo("nail_cover");
    assertThat(missing.refusal().orElseThrow().causes()).containsExactly(missing);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(missing::value)
        .withMessage("nail_cover is missing; give one of paint, hot-dip");
  }

  @Test
  void onlyIf_standsWhileTheConditionHolds() {
    assertThat(NAIL.onlyIf(TRUE, "no nails").value()).isEqualTo(Cover.HOT_DIP);
    assertThat(NAIL.onlyIf(TRUE, "no nails").source()).isEqualTo(RULE);
    assertThat(NAIL.onlyIf(FALSE, "no nails")).hasToString("refused: no nails");
    assertThat(NAIL.onlyIf(UNDECIDED, "no nails")).hasToString("refused: " + BY_ZERO);
    assertThat(refused().onlyIf(FALSE, "no nails")).hasToString("refused: " + BY_ZERO);
  }

  @Test
  void twoWords_areAlikeIfTheyAreWrittenAlike() {
    assertThat(NAIL.isTheSameAs(Choice.literal("hot-dip")).holds()).isTrue();
    assertThat(NAIL.isTheSameAs(Cover.PAINT.choice()).holds()).isFalse();
    assertThat(NAIL.isTheSameAs(refused())).hasToString("refused: " + BY_ZERO);
    assertThat(refused().isTheSameAs(NAIL)).hasToString("refused: " + BY_ZERO);
    assertThat(refused().is(YesNo.YES)).hasToString("refused: " + BY_ZERO);
  }

  /** 13 ft 6 in and a half rounds to 13-7; 0.1 + 0.2 is 0.3 to the 15 digits of a cell. */
  @Test
  void aSentence_putsItsPartsOneAfterTheOther() {
    Choice<String> feet = Choice.feetAndInches(ft(13.5));
    assertThat(feet.value()).isEqualTo("13-6");
    assertThat(
            Choice.sentence(
                    Choice.literal("cut "),
                    feet,
                    Choice.literal(", "),
                    number(0.1).plus(number(0.2)),
                    Choice.literal(" wide"))
                .value())
        .isEqualTo("cut 13-6, 0.3 wide");
  }

  @Test
  void aSentence_isRefusedForAnyPart() {
    assertThat(Choice.sentence(Choice.literal("cut "), refused()))
        .hasToString("refused: " + BY_ZERO);
    assertThat(Choice.feetAndInches(in(1).onlyIf(FALSE, "no way"))).hasToString("refused: no way");
  }

  private static String marked(double... marks) {
    Roll lines =
        Roll.of(
            "lines",
            "the lines",
            java.util.Arrays.stream(marks).boxed().toList(),
            Roll.column("wet", (Double wet) -> number(Math.min(wet, 1))),
            Roll.column("line", wet -> Choice.literal("line " + wet.intValue())));
    return Choice.firstMarked(lines, "wet", "line", "look: ", " again").value();
  }

  @Test
  void theFirstMarkedLine_isNamed() {
    assertThat(marked(0, 2, 3)).isEqualTo("look: line 2 again");
    assertThat(marked(4, 0, 3)).isEqualTo("look: line 4 again");
    assertThat(marked(0, 0, 0)).isEqualTo("look:  again");
  }
}
