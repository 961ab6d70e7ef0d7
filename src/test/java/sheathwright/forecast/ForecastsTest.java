package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/**
 * Expected values: an independent script of log-gamma functions (the printed ones below), the
 * hypergeometric distribution of a statistics library, brute force, and a seeded simulation.
 */
class ForecastsTest {

  private static Asked asked(String function, int sheets, int seen, int bad) {
    return Asked.of(function)
        .with("sheets", String.valueOf(sheets))
        .with("seen", String.valueOf(seen))
        .with("seen_bad", String.valueOf(bad));
  }

  private static Asked withHistory(String function, int sheets, int seen, int bad) {
    return asked(function, sheets, seen, bad)
        .with("alpha", "1.4722306112220547")
        .with("beta", "21.79478649946375");
  }

  @ParameterizedTest
  @CsvSource({
    "44, 0, 0, 2.784119106699693, 2.688702475263739, 0.1986592110650519, 0, 2, 5, 6, 8",
    "44, 18, 1, 2.5576118748627943, , 0, , 2, 4, 5, 5",
    "24, 0, 0, 1.519, 1.665, 0.3379, , 1, 3, 4, 5",
    "121, 0, 0, 7.656, 6.530, 0.0637, , 6, 12, 17, 21",
    "121, 60, 21, 37.463, 4.536, 0, 32, 37, 41, 43, ",
    "44, 20, 0, 0.8166390250323696, , 0.5142443215666149, , , , , 3",
  })
  void badSheetForecast_isTheBetaBinomialOfWhatIsHidden(
      int sheets,
      int seen,
      int bad,
      Double mean,
      Double sd,
      Double none,
      Double p10,
      Double p50,
      Double p80,
      Double p90,
      Double p95) {
    Asked forecast = withHistory("bad_sheet_forecast", sheets, seen, bad);
    close(forecast, "mean", mean);
    close(forecast, "sd", sd);
    close(forecast, "p_none", none);
    close(forecast, "p10_sheets", p10);
    close(forecast, "p50_sheets", p50);
    close(forecast, "p80_sheets", p80);
    close(forecast, "p90_sheets", p90);
    close(forecast, "p95_sheets", p95);
  }

  private static void close(Asked asked, String column, Double expected) {
    if (expected != null) {
      String digits = String.valueOf(expected);
      double half = digits.length() > 8 ? 1e-9 : 0.0006;
      assertThat(asked.number(column)).as(column).isCloseTo(expected, within(half));
    }
  }

  /** The evidence first, then the sheets: a house is drawn, and only those that fit it are kept. */
  /** What rounding leaves out of a sum of chances stands at the end. */
  @Test
  void aPercentileBeyondTheSum_isTheMostThereCanBe() {
    assertThat(Chances.of(2, count -> 0.3).percentile(0.95)).isEqualTo(2);
  }

  @Test
  void badSheetForecast_isWhatHousesDoThatLookTheSame() {
    Random chance = new Random(20_261_128);
    double[] found = new double[45];
    double houses = 0;
    for (int i = 0; i < 400_000; i++) {
      double share = 1 - Math.pow(chance.nextDouble(), 1.0 / 12); // Beta(1, 12) by inversion
      long badSeen = IntStream.range(0, 18).filter(s -> chance.nextDouble() < share).count();
      if (badSeen == 1) {
        long rest = IntStream.range(0, 26).filter(s -> chance.nextDouble() < share).count();
        found[(int) (1 + rest)]++;
        houses++;
      }
    }
    Asked forecast = asked("bad_sheet_forecast", 44, 18, 1).with("alpha", "1").with("beta", "12");
    double mean = 0;
    double within9of10 = 0;
    for (int bad = 0; bad < found.length; bad++) {
      mean += bad * found[bad] / houses;
      within9of10 += bad <= forecast.number("p90_sheets") ? found[bad] / houses : 0;
    }
    assertThat(forecast.number("mean")).isCloseTo(mean, within(0.02));
    assertThat(within9of10).isBetween(0.9, 0.97);
  }

  /** With a share of bad sheets that is known for sure, what was seen tells nothing more. */
  @Test
  void badSheetForecast_ofASureShareIsBinomial() {
    Asked forecast =
        asked("bad_sheet_forecast", 50, 0, 0).with("alpha", "100000").with("beta", "900000");
    assertThat(forecast.number("mean")).isCloseTo(5, within(1e-9));
    assertThat(forecast.number("sd")).isCloseTo(Math.sqrt(50 * 0.1 * 0.9), within(1e-3));
  }

  @ParameterizedTest
  @CsvSource({"44, 20, 0, 4", "44, 18, 1, 8", "121, 60, 21, 52", "44, 0, 0, 44", "44, 44, 3, 3"})
  void mostBadSheets_asAnIndependentScriptHasIt(int sheets, int seen, int bad, double most) {
    assertThat(asked("most_bad_sheets", sheets, seen, bad).number("bad_sheets")).isEqualTo(most);
  }

  /** N 44, n 18, none bad: 5; N 121, n 40, two bad: 15. */
  @ParameterizedTest
  @CsvSource({"44, 18, 0, 5", "121, 40, 2, 15"})
  void mostBadSheets_isTheLastOneThatTheHypergeometricAllows(
      int sheets, int seen, int bad, int most) {
    assertThat(asked("most_bad_sheets", sheets, seen, bad).number("bad_sheets")).isEqualTo(most);
    assertThat(chance(sheets, seen, most, bad)).isGreaterThan(0.05);
    assertThat(chance(sheets, seen, most + 1, bad)).isLessThanOrEqualTo(0.05);
  }

  /** C(3, 2) ÷ C(4, 2) is one half exactly, which is not above one half. */
  @Test
  void mostBadSheets_atAChanceOfExactlyTheDoubt_isOneFewer() {
    assertThat(asked("most_bad_sheets", 4, 2, 0).with("confidence_pct", "50").number("bad_sheets"))
        .isEqualTo(0);
  }

  private static double chance(int sheets, int seen, int bad, int found) {
    return new HypergeometricDistribution(null, sheets, bad, seen).cumulativeProbability(found);
  }

  @ParameterizedTest
  @CsvSource({"3, 0.22511902825464292", "5, 0.049767", "1, 0.7134311547673167"})
  void chanceOfMore_asAnIndependentScriptHasIt(String moreThan, double chance) {
    assertThat(
            withHistory("chance_of_more", 44, 18, 1).with("more_than", moreThan).number("chance"))
        .isCloseTo(chance, within(moreThan.equals("5") ? 5e-7 : 1e-9));
  }

  @ParameterizedTest
  @CsvSource({"bad_sheet_forecast", "most_bad_sheets"})
  void moreSeenThanThereAre_isRefused(String function) {
    assertThat(withHistoryIfAsked(function, 44, 50, 0).refusedOutright().orElseThrow())
        .isEqualTo("seen exceeds the sheets there are: 50 of 44; it must be at most as many");
    assertThat(withHistoryIfAsked(function, 44, 5, 6).refusedOutright().orElseThrow())
        .isEqualTo("seen_bad exceeds the sheets seen: 6 of 5; it must be at most as many");
  }

  private static Asked withHistoryIfAsked(String function, int sheets, int seen, int bad) {
    return function.equals("most_bad_sheets")
        ? asked(function, sheets, seen, bad)
        : withHistory(function, sheets, seen, bad);
  }

  @Test
  void chances_areWholeHoweverLargeTheRoof() {
    Chances chances = Chances.betaBinomial(10_000, 0.3, 7);
    assertThat(chances.moreThan(-1)).isCloseTo(1, within(1e-9));
    assertThat(chances.mean()).isCloseTo(10_000 * 0.3 / 7.3, within(1e-6));
    assertThat(Chances.known(3).and(Chances.known(4)).percentile(0.5)).isEqualTo(7);
  }
}
