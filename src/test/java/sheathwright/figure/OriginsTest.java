package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;

class OriginsTest {

  private static final Figure<Length> SPAN = input("span_in", 144, 20);
  private static final Figure<Length> DEPTH = input("depth_in", 6, 21);
  private static final Figure<Length> NOTHING = input("spacing_in", 0, 22);

  private static Figure<Length> input(String name, double number, long line) {
    Source source = Source.given(new Source.Cell("job.csv", line, "value", name));
    return Figure.input(name, number, Units.INCH, Limits.NONE, source);
  }

  private static List<Traced> blamed(Traced refused) {
    return Origins.of(refused.refusal().orElseThrow().causes());
  }

  @Test
  void aGuardedArgument_comesFromWhatItWasMadeFrom() {
    Figure<Length> both = SPAN.plus(DEPTH).plus(Figure.of(1, Units.INCH));
    Figure<Length> refused =
        both.within("reach_in", Units.INCH, Limits.between(0, 100, "a short one"));
    assertThat(blamed(refused.plus(NOTHING))).containsExactly(SPAN, DEPTH);
  }

  @Test
  void theNearestInput_isNamedFirst() {
    Figure<Length> far = SPAN.plus(NOTHING).as("far_in", Units.INCH);
    Figure<Length> refused =
        far.minus(DEPTH).within("left_in", Units.INCH, Limits.between(0, 1, ""));
    assertThat(blamed(refused).get(0)).isSameAs(DEPTH);
  }

  @Test
  void aZeroBelow_isTheDivisorsFault() {
    assertThat(blamed(SPAN.dividedBy(NOTHING))).containsExactly(NOTHING);
  }

  @Test
  void aBrokenCondition_isTheFaultOfWhatItCompares() {
    Figure<Length> refused = SPAN.onlyIf(DEPTH.isLessThan(Figure.of(4, Units.INCH)), "too deep");
    assertThat(blamed(refused)).containsExactly(DEPTH);
  }

  @Test
  void aBranchThatWasNotTaken_decidesNothing() {
    Figure<Length> chosen =
        Figure.choose(DEPTH.isMoreThan(Figure.of(4, Units.INCH)), SPAN, NOTHING);
    Figure<Length> refused = chosen.within("chosen_in", Units.INCH, Limits.between(0, 1, ""));
    assertThat(blamed(refused)).containsExactly(SPAN, DEPTH);
  }

  @Test
  void theGreaterOfTwo_comesFromThatOne() {
    Figure<Length> refused =
        DEPTH.max(SPAN).within("most_in", Units.INCH, Limits.between(0, 1, ""));
    assertThat(blamed(refused)).containsExactly(SPAN);
  }

  @Test
  void theGreatestOfAList_comesFromItsOwnCell() {
    Roll roll =
        Roll.of(
            "spans", "the spans", List.of(DEPTH, SPAN, NOTHING), Roll.column("span_in", s -> s));
    Figure<Length> refused =
        roll.gathered(Gather.GREATEST, "span_in", Units.INCH)
            .within("worst_in", Units.INCH, Limits.between(0, 1, ""));
    assertThat(blamed(refused)).containsExactly(SPAN);
  }

  @Test
  void anInputBeyondItsLimits_isItsOwnFault() {
    Figure<Length> input =
        Figure.input("gap_in", 9, Units.INCH, Limits.between(0, 1, ""), Source.GIVEN);
    assertThat(blamed(input.times(SPAN))).containsExactly(input);
  }

  @Test
  void theException_carriesTheCauses() {
    Figure<?> refused = SPAN.dividedBy(NOTHING);
    org.assertj.core.api.Assertions.assertThatThrownBy(refused::value)
        .isInstanceOfSatisfying(
            RefusedException.class,
            raised -> assertThat(Origins.of(raised.causes())).containsExactly(NOTHING));
  }

  @Test
  void aSolversOwnRefusal_comesFromAllThatItWasGiven() {
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () ->
                RefusedException.solvedFor(
                    List.of(SPAN, DEPTH),
                    () -> {
                      throw new RefusedException("no way to cut it");
                    }))
        .isInstanceOfSatisfying(
            RefusedException.class,
            raised -> assertThat(raised.causes()).containsExactly(SPAN, DEPTH))
        .hasMessage("no way to cut it");
  }

  @Test
  void whatIsReachedTwice_isNamedOnce() {
    assertThat(Origins.of(List.of(SPAN.plus(SPAN), SPAN))).containsExactly(SPAN);
  }

  @Test
  void theLesserOfTwo_comesFromThatOne() {
    assertThat(Origins.of(List.of(SPAN.min(DEPTH)))).containsExactly(DEPTH);
    assertThat(Origins.of(List.of(SPAN.min(SPAN.plus(NOTHING))))).containsExactly(SPAN, NOTHING);
  }

  @Test
  void theLesserThatIsRefused_comesFromBoth() {
    Figure<Length> refused = DEPTH.onlyIf(SPAN.isLessThan(DEPTH), "too long").min(NOTHING);
    assertThat(Origins.of(List.of(refused))).containsExactlyInAnyOrder(SPAN, DEPTH, NOTHING);
  }

  @Test
  void aDivisorThatIsNotZero_isNotBlamedAlone() {
    assertThat(Origins.of(List.of(SPAN.dividedBy(DEPTH)))).containsExactly(SPAN, DEPTH);
  }

  @Test
  void aChoiceThatCannotBeDecided_comesFromAllOfIt() {
    Figure<Length> open =
        Figure.choose(SPAN.dividedBy(NOTHING).isAtMost(DEPTH.dividedBy(DEPTH)), DEPTH, SPAN);
    assertThat(Origins.of(List.of(open))).containsExactlyInAnyOrder(SPAN, DEPTH, NOTHING);
  }

  @Test
  void aSolversOwnCauses_stayItsOwn() {
    RefusedException own = new RefusedException("too long", List.of(SPAN));
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () ->
                RefusedException.solvedFor(
                    List.of(DEPTH),
                    () -> {
                      throw own;
                    }))
        .isSameAs(own);
    assertThat(own.causes()).containsExactly(SPAN);
    assertThat(RefusedException.solvedFor(List.of(DEPTH), () -> "found")).isEqualTo("found");
  }
}
