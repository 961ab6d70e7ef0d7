package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static sheathwright.figure.Amounts.in;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.MadeFunctions.Wood;
import sheathwright.figure.Choice;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;

/** A card asked with its columns' values, in order. */
class CardAnswerTest {

  private static List<String> answer(String function, Traced... given) {
    return MadeFunctions.card(function).answer(List.of(given)).stream().map(Traced::plain).toList();
  }

  @Test
  void answer_isOneForEachResult() {
    // 48 in less 1/2 in
    assertThat(
            answer(
                "cutOff",
                in(48),
                Choice.literal(Wood.HARD_MAPLE),
                in(0.5),
                Choice.literal(Wood.SOFT)))
        .containsExactly("47.5", "hard-maple");
  }

  @Test
  void thingsWithinThings_takeTheirPartsInOrder() {
    Choice<Wood> soft = Choice.literal(Wood.SOFT);
    assertThat(answer("stacked", in(40), soft, in(2), soft)).containsExactly("42");
  }

  @Test
  void answer_ofACheckIsItsRatio() {
    // 20 in of 50 in
    assertThat(answer("holds", in(20), Choice.literal(Wood.SOFT))).containsExactly("0.4");
    assertThat(answer("seen", in(20), Choice.literal(Wood.SOFT))).containsExactly("soft");
  }

  @Test
  void refusal_comesOutAsItIs() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> answer("refused", in(1)))
        .withMessage("no saw");
  }

  @Test
  void anythingElse_isNamed() {
    assertThatIllegalStateException()
        .isThrownBy(() -> answer("broken", in(1)))
        .withMessage("broken failed")
        .withCauseInstanceOf(IOException.class);
  }

  @Test
  void function_thatNobodyMayCallIsNamed() throws NoSuchMethodException {
    Card hidden =
        new Card(
            "hidden_one",
            CardAnswerTest.class.getDeclaredMethod("hidden"),
            List.of(),
            List.of(),
            null);
    assertThatIllegalStateException()
        .isThrownBy(() -> hidden.answer(List.of()))
        .withMessage("hidden_one is not public");
  }

  private static Traced hidden() {
    return in(1);
  }

  @Test
  void thing_thatNobodyMayMakeIsNamed() {
    Argument secret = new Argument.Thing("one", "one thing", Secret.class, List.of());
    assertThatIllegalStateException()
        .isThrownBy(() -> secret.from(List.<Traced>of().iterator()))
        .withMessage(Secret.class + " is not public");
  }

  @Test
  void thing_thatRefusesComesOutAsItIs() {
    Argument thing = new Argument.Thing("one", "one thing", Refusing.class, List.of());
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> thing.from(List.<Traced>of().iterator()))
        .withMessage("no thing");
  }

  /** Nobody can make one from outside. */
  private record Secret() {}

  /** Nobody can make one at all. */
  public record Refusing() {
    public Refusing {
      throw new RefusedException("no thing");
    }
  }

  @Test
  void card_knowsWhereItStandsAndWhatItIsCalled() {
    Card made = MadeFunctions.card("cutOff");
    assertThat(made.room()).isEqualTo("catalog");
    assertThat(made.corner()).isEqualTo("catalog");
    assertThat(made.words()).containsExactly("batten", "lath");
    assertThat(MadeFunctions.card("holds").words()).isEmpty();
    Card shipped = Catalog.shipped().named("nails_per_sheet");
    assertThat(shipped.corner()).isEqualTo("fastening.count");
    assertThat(shipped.room()).isEqualTo("fastening");
    assertThat(shipped.call()).isEqualTo("nailsPerSheet");
  }
}
