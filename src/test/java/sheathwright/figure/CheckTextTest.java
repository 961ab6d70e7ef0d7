package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * What a check says in whole, before and after somebody has looked, and what its cells are called.
 */
class CheckTextTest {

  private static final Condition YES = in(1).isAtMost(in(2));
  private static final Condition NO = in(2).isAtMost(in(1));
  private static final Figure<Length> MISSING =
      Figure.missing("cut_in", Units.INCH, Limits.between(0, 6, ""));

  private static Check bearing(double demand, double there, Condition isDone) {
    Source rule = Source.read("Standard 2020");
    return Check.onceLooked(
        "bearing",
        "seat",
        in(demand).as("asked_in", Units.INCH, rule),
        in(there),
        new Check.Look(isDone, "give the depth of the seat"));
  }

  private static Check cut(double demand) {
    return Check.of("depth of the cut", "cut_ratio", in(demand), in(3));
  }

  private static Check.Look look(Condition isDone) {
    return new Check.Look(isDone, "give the depth");
  }

  private static Check missed(double count) {
    return Check.noneOf("nails that missed", number(count).as("nails_missed", Units.RATIO));
  }

  @Test
  void whatSomebodyLookedAt_showsItsNumbers() {
    assertThat(bearing(1.5, 3, YES)).hasToString("bearing: 1-1/2 in of 3 in, ratio 0.5, ok");
    assertThat(bearing(3, 3, YES)).hasToString("bearing: 3 in of 3 in, ratio 1, ok");
    assertThat(bearing(4.5, 3, YES)).hasToString("bearing: 4-1/2 in of 3 in, ratio 1.5, NOT ok");
    assertThat(bearing(1.5, 0, YES))
        .hasToString("bearing: 1-1/2 in of 0 in, ratio nothing there, NOT ok");
  }

  @Test
  void whatNobodyLookedAt_showsNoNumber() {
    assertThat(bearing(1.5, 3, NO))
        .hasToString(
            "bearing: not looked at of not looked at, ratio not looked at,"
                + " not looked at: give the depth of the seat");
    assertThat(bearing(1.5, 3, MISSING.isAtMost(in(1))).outcome().words())
        .isEqualTo("not looked at: cut_in is missing; give from 0 to 6 inches");
  }

  @Test
  void cellsOfWhatHasToBeLookedAt_beginWithItsName() {
    Check check = bearing(1.5, 3, YES);
    assertThat(check.demand().name()).isEqualTo("seat_asked_in");
    assertThat(check.capacity().name()).isEqualTo("seat_there_in");
    assertThat(check.ratio().name()).isEqualTo("seat_ratio");
    assertThat(check.demand().source()).isEqualTo(Source.read("Standard 2020"));
    Step.Chosen ratio = (Step.Chosen) check.ratio().step();
    assertThat(ratio.then().name()).isEqualTo("seat_part_used");
  }

  /** A foot asked for of 24 in is half of it, as one choice in plain numbers. */
  @Test
  void whatIsThere_mayBeInAnotherUnit() {
    Check check = Check.onceLooked("seat", "seat", Amounts.ft(1), in(24), look(YES));
    assertThat(check).hasToString("seat: 1' 0\" of 24 in, ratio 0.5, ok");
    Traced part = ((Step.Chosen) check.ratio().step()).then();
    assertThat(part.step()).isInstanceOf(Step.Chosen.class);
    assertThat(part.plain()).isEqualTo("0.5");
  }

  @Test
  void somethingOfWhichThereMayBeNone_holdsOnlyAtNone() {
    assertThat(missed(0)).hasToString("nails that missed: 0 of 0, ratio none allowed, ok");
    assertThat(missed(2)).hasToString("nails that missed: 2 of 0, ratio none allowed, NOT ok");
  }

  @Test
  void whatNobodyCanSay_isRefusedThroughout() {
    assertThat(Check.neverLooked("rot", "open the ceiling"))
        .hasToString(
            "rot: refused: open the ceiling of refused: open the ceiling, ratio refused: open the"
                + " ceiling, not looked at: open the ceiling");
    assertThat(Check.neverLooked("rot", "open the ceiling").isLive()).isFalse();
    assertThat(cut(2).isLive()).isTrue();
    assertThat(cut(4).isLive()).isTrue();
  }

  @Test
  void once_isMadeOnlyWhenSomebodyHasLooked() {
    assertThat(cut(2).once(look(YES)))
        .hasToString("depth of the cut: 2 in of 3 in, ratio 0.6667, ok");
    assertThat(cut(4).once(look(YES)).outcome()).isInstanceOf(Check.Fails.class);
    assertThat(cut(2).once(look(NO)).outcome())
        .isInstanceOfSatisfying(
            Check.NotLooked.class, open -> assertThat(open.why()).isEqualTo("give the depth"));
  }

  @Test
  void unmade_isOneWhileNobodyHasLooked() {
    assertThat(cut(2).unmade()).isEmpty();
    Figure<Ratio> open = cut(2).once(look(NO)).unmade().orElseThrow();
    assertThat(open.value()).isEqualTo(1);
    assertThat(open.name()).isEqualTo("cut_ratio_not_looked_at");
    assertThat(cut(2).once(look(YES)).unmade().orElseThrow().value()).isZero();
    assertThat(missed(0).once(look(YES)).unmade().orElseThrow().name())
        .isEqualTo("nails_missed_not_looked_at");
  }

  @Test
  void onlyWhatWasLookedAtAndDoesNotHold_isBroken() {
    assertThat(cut(2).isNotBroken().holds()).isTrue();
    assertThat(cut(4).isNotBroken().holds()).isFalse();
    assertThat(cut(2).once(look(YES)).isNotBroken().holds()).isTrue();
    assertThat(cut(4).once(look(YES)).isNotBroken().holds()).isFalse();
    assertThat(cut(4).once(look(NO)).isNotBroken().holds()).isTrue();
  }

  @Test
  void verdict_isAWordForEachOutcome() {
    Choice<String> fits = Choice.literal("fits");
    assertThat(cut(2).verdict(fits, "too deep").value()).isEqualTo("fits");
    assertThat(cut(4).verdict(fits, "too deep").value()).isEqualTo("too deep");
    assertThat(cut(4).verdict(fits, "too deep").name()).isEqualTo("cut_ratio_verdict");
    Choice<String> asked = cut(4).once(look(YES)).verdict(fits, "too deep");
    assertThat(asked.value()).isEqualTo("too deep");
    assertThat(asked.name()).isEqualTo("cut_ratio_verdict_once_looked");
    assertThat(((Step.Chosen) asked.step()).then().name()).isEqualTo("cut_ratio_verdict");
    assertThat(cut(2).once(look(NO)).verdict(fits, "too deep").value()).isEqualTo("not looked at");
  }
}
