package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Look-ups in a table made up for the purpose. */
class TableTest {

  private static final Source PRINTED = Source.secondHand("Standard 2020, Table 1");

  private static final Table VALUES =
      new Table(
          "wood",
          "wood values",
          List.of("kind", "grade"),
          List.of("fb_psi", "2x4"),
          List.of(
              List.of("oak", "good", "900", "1.5"),
              List.of("oak", "fair", "700", ""),
              List.of("elm", "good", "800", "1.25")),
          PRINTED,
          List.of());

  private static final Choice<String> OAK = Choice.input("kind", "oak", Source.GIVEN);
  private static final Choice<String> ELM = Choice.literal("elm");
  private static final Choice<String> GOOD = Choice.literal("good");
  private static final Choice<String> FAIR = Choice.literal("fair");

  @Test
  void number_standsInTheRowOfTheKeysAndTheColumn() {
    assertThat(VALUES.number(Units.PSI, "fb_psi", OAK, FAIR).value()).isEqualTo(700);
    assertThat(VALUES.number(Units.PSI, "fb_psi", ELM, GOOD).value()).isEqualTo(800);
    assertThat(VALUES.number(Units.PSI, "fb_psi", ELM, GOOD).unit()).isEqualTo(Units.PSI);
    assertThat(VALUES.number(Units.PSI, "fb_psi", ELM, GOOD).source()).isEqualTo(PRINTED);
  }

  @Test
  void numberAt_letsTheColumnBeChosen() {
    Choice<String> size = Choice.input("size", "2x4", Source.GIVEN);
    Figure<?> factor = VALUES.numberAt(Units.RATIO, size, ELM, GOOD);
    assertThat(factor.value()).isEqualTo(1.25);
    assertThat(factor.step().operands()).containsExactly(ELM, GOOD, size);
  }

  @Test
  void number_remembersItsKeysAndNotTheFixedColumn() {
    assertThat(VALUES.number(Units.PSI, "fb_psi", OAK, GOOD).step().operands())
        .containsExactly(OAK, GOOD);
  }

  @Test
  void number_ofAMissingRowListsWhatIsHeld() {
    Choice<String> ash = Choice.literal("ash");
    assertThat(VALUES.number(Units.PSI, "fb_psi", ash, GOOD).refusal().map(Refusal::reason))
        .contains(
            "wood values hold nothing for ash, good (Standard 2020, Table 1 (secondary"
                + " source)); they hold: oak, elm");
  }

  @Test
  void number_ofAMissingSecondKeyListsWhatIsHeldUnderTheFirst() {
    assertThat(VALUES.number(Units.PSI, "fb_psi", ELM, FAIR).refusal().map(Refusal::reason))
        .contains(
            "wood values hold nothing for elm, fair (Standard 2020, Table 1 (secondary"
                + " source)); they hold under elm: good");
  }

  @Test
  void number_ofABlankIsRefusedAndNotZero() {
    Figure<?> blank = VALUES.number(Units.RATIO, "2x4", OAK, FAIR);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(blank::value)
        .withMessageStartingWith("wood values hold nothing for oak, fair at 2x4 (");
  }

  @Test
  void number_passesOnTheRefusalOfAKey() {
    Condition undecided = Amounts.in(1).dividedBy(Amounts.in(0)).isAtMost(Amounts.number(1));
    Choice<YesNo> refused = Choice.choose(undecided, YesNo.YES, YesNo.NO);
    assertThat(VALUES.number(Units.PSI, "fb_psi", refused, GOOD).refusal().map(Refusal::reason))
        .contains("1 in cannot be divided by 0 in, which is zero");
  }

  @Test
  void ranges_areNamedAfterTheTable() {
    assertThat(VALUES.keyRange()).isEqualTo("wood_key");
    assertThat(VALUES.columnRange("fb_psi")).isEqualTo("wood_fb_psi");
    assertThat(VALUES.bodyRange()).isEqualTo("wood_body");
    assertThat(VALUES.headRange()).isEqualTo("wood_head");
  }

  @Test
  void words_standInTheRowOfTheKeysAndTheColumn() {
    Choice<String> word = VALUES.words("2x4", OAK, GOOD);
    assertThat(word.value()).isEqualTo("1.5");
    assertThat(word.source()).isEqualTo(PRINTED);
    assertThat(word.step().lookedUpIn()).contains(VALUES);
    Choice<String> blank = VALUES.words("2x4", OAK, FAIR);
    assertThat(blank)
        .hasToString(
            "refused: wood values hold nothing for oak, fair at 2x4 (Standard 2020, Table 1"
                + " (secondary source)); they hold under oak: good, fair");
    assertThat(blank.refusal().orElseThrow().causes()).containsExactly(blank);
  }

  @Test
  void words_passOnTheRefusalOfAKey() {
    Choice<String> missing = Choice.missing("kind", YesNo.class);
    assertThat(VALUES.words("2x4", missing, GOOD))
        .hasToString("refused: kind is missing; give one of yes, no");
  }

  @Test
  void number_inAColumnThatTheTableHasNot_isRefused() {
    assertThat(VALUES.number(Units.PSI, "fv_psi", OAK, GOOD))
        .hasToString(
            "refused: wood values hold nothing for oak, good at fv_psi (Standard 2020, Table 1"
                + " (secondary source)); they hold under oak: good, fair");
  }

  @Test
  void aColumnsRange_hasNoHyphen() {
    assertThat(VALUES.columnRange("no-2-grade")).isEqualTo("wood_no_2_grade");
  }
}
