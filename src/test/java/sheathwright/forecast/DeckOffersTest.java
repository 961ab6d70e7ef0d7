package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** Expected values by an independent script, unless a test says how else. */
class DeckOffersTest {

  private static Asked attic(String function, String seen, String bad) {
    return Asked.of(function)
        .with("sheets", "44")
        .with("seen", seen)
        .with("seen_bad", bad)
        .with("alpha", "1.4722306112220547")
        .with("beta", "21.79478649946375");
  }

  private static Asked included(String seen, String bad, String credit) {
    return attic("included_sheets", seen, bad)
        .with("included_usd", "96")
        .with("extra_usd", "117")
        .with("credit_usd", credit)
        .with("nuisance_usd", "25");
  }

  @ParameterizedTest
  @CsvSource({
    "18, 1, 0,  0.323943661971831,  2",
    "18, 1, 80, 0.7419354838709677, 3",
    "0,  0, 0,  0.323943661971831,  1",
    "0,  0, 80, 0.7419354838709677, 4"
  })
  void includedSheets_isTheFewestThatTheRatioAsksFor(
      String seen, String bad, String credit, double ratio, double sheets) {
    assertThat(included(seen, bad, credit).number("ratio")).isCloseTo(ratio, within(1e-12));
    assertThat(included(seen, bad, credit).number("included")).isEqualTo(sheets);
  }

  /** The owner's average cost of each count, added up count by count: no count beats the answer. */
  @Test
  void includedSheets_costTheOwnerLeast() {
    Chances chances =
        Chances.known(1).and(Chances.betaBinomial(26, 2.4722306112220547, 38.79478649946375));
    for (double credit : new double[] {0, 40, 80, 95}) {
      double answer = included("18", "1", String.valueOf(credit)).number("included");
      double least = cost(chances, (int) answer, credit);
      for (int count = 0; count <= 44; count++) {
        assertThat(least).isLessThanOrEqualTo(cost(chances, count, credit) + 1e-9);
      }
    }
    assertThat(cost(chances, 2, 0)).isCloseTo(311.87, within(0.005));
    assertThat(cost(chances, 3, 80)).isCloseTo(278.62, within(0.005));
  }

  private static double cost(Chances chances, int count, double credit) {
    return chances.expected(
        bad ->
            96.0 * count
                - credit * Math.max(count - bad, 0)
                + (117 + 25) * Math.max(bad - count, 0.0));
  }

  @Test
  void includedSheets_refuseACreditThatPaysForMore() {
    assertThat(included("18", "1", "97").refusedOutright().orElseThrow())
        .startsWith("the credit is more");
  }

  @ParameterizedTest
  @CsvSource({
    "5, 0.049767, 0.084799, 8.72",
    "6, 0.021285, 0.035032, 3.60",
    "8, 0.003309, 0.005132, 0.53"
  })
  void ceilingCharge_isTheStopLossPremium(
      String ceiling, double chance, double over, double charge) {
    Asked asked =
        attic("ceiling_charge", "18", "1")
            .with("ceiling_sheets", ceiling)
            .with("cost_usd", "102.8057");
    assertThat(asked.number("chance_over")).isCloseTo(chance, within(5e-7));
    assertThat(asked.number("sheets_over")).isCloseTo(over, within(5e-7));
    assertThat(asked.number("charge_usd")).isCloseTo(charge, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({"80, 4, 411.22, 148.29, 0.1096", "50, 2, 205.61, -57.33, 0.4247"})
  void fixedDeckPrice_losesAsOftenAsItSays(
      String confidence, double sheets, double fixed, double left, double loss) {
    Asked asked =
        attic("fixed_deck_price", "18", "1")
            .with("confidence_pct", confidence)
            .with("cost_usd", "102.8057");
    assertThat(asked.number("sheets")).isEqualTo(sheets);
    assertThat(asked.number("fixed_usd")).isCloseTo(fixed, within(0.005));
    assertThat(asked.number("mean_left_usd")).isCloseTo(left, within(0.005));
    assertThat(asked.number("chance_of_loss")).isCloseTo(loss, within(5e-5));
  }
}
