package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Amounts;
import sheathwright.figure.Units;

/** Expected values by an independent script: a roof of 121 places, half of it rotten. */
class RedeckingTest {

  private static Asked priced(Asked asked, String keep) {
    return asked
        .with("sheets", "121")
        .with("patch_usd", "66.88107")
        .with("redeck_usd", "57.60051272727273")
        .with("keep_usd", keep);
  }

  @ParameterizedTest
  @CsvSource({
    "5.75856,  102.62792349332513",
    "32.75856, 88.09071431146187",
    "50.75856, 51.34909390659397",
    "59.75856, 0",
  })
  void redeckBreakEven_asAnIndependentScriptHasIt(String keep, double sheets) {
    assertThat(priced(Asked.of("redeck_break_even"), keep).number("bad_sheets"))
        .isCloseTo(sheets, within(1e-6));
  }

  /** At the break-even both cost the same. */
  @Test
  void redeckBreakEven_isWhereBothCostTheSame() {
    double bad = priced(Asked.of("redeck_break_even"), "20").number("bad_sheets");
    assertThat(bad * 66.88107 + (121 - bad) * 20).isCloseTo(121 * 57.60051272727273, within(1e-6));
  }

  @Test
  void redeckBreakEven_refusesABadSheetThatCostsLessThanAKeptOne() {
    Asked asked =
        Asked.of("redeck_break_even")
            .with("sheets", "121")
            .with("patch_usd", "10")
            .with("redeck_usd", "57")
            .with("keep_usd", "20");
    assertThat(asked.refusedOutright().orElseThrow())
        .startsWith("replacing one bad sheet costs no more");
  }

  private static Asked house(String seen, String bad, String failing) {
    return priced(Asked.of("patch_or_redeck"), "5.75856")
        .with("seen", seen)
        .with("seen_bad", bad)
        .with("alpha", "1.4722306112220547")
        .with("beta", "21.79478649946375")
        .with("fail_pct", failing)
        .with("fail_usd", "900");
  }

  @ParameterizedTest
  @CsvSource({
    "0,  0,  3, 88.09, 9e-11,   5e-12",
    "0,  0,  5, 51.35, 5.7e-5,  5e-7",
    "60, 21, 5, 51.35, 0.00211, 5e-6"
  })
  void patchOrRedeck_asAnIndependentScriptHasIt(
      String seen, String bad, String failing, double breakEven, double chance, double half) {
    Asked asked = house(seen, bad, failing);
    assertThat(asked.number("break_even_sheets")).isCloseTo(breakEven, within(0.005));
    assertThat(asked.number("chance_redeck_cheaper")).isCloseTo(chance, within(half));
    assertThat(asked.number("redeck_all_usd")).isCloseTo(6969.66204, within(1e-5));
  }

  /** Where keeping costs as much as new, a new deck is the cheaper one whatever is found. */
  @Test
  void patchOrRedeck_isSureWhereKeepingCostsAsMuchAsNew() {
    assertThat(house("0", "0", "6").number("chance_redeck_cheaper")).isCloseTo(1, within(1e-9));
  }

  /** All seen, 36 bad: nothing is left to chance. */
  @Test
  void patchOrRedeck_ofASeenRoofIsArithmetic() {
    Asked asked = house("121", "36", "5");
    assertThat(asked.number("patch_mean_usd")).isCloseTo(6722.19612, within(1e-3));
    assertThat(asked.number("chance_redeck_cheaper")).isZero();
  }

  @Test
  void aLaterFailure_keepsItsShareAndItsCost() {
    LaterFailure failure = LaterFailure.of(Amounts.pct(2), Amounts.usdPerSheet(900));
    assertThat(failure.share().in(Units.PERCENT).value()).isEqualTo(2);
    assertThat(failure.cost().value()).isEqualTo(900);
  }
}
