package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expected values: an independent script, held by its maker against four million simulated houses;
 * the beta-binomial where all places are alike; a simulation of our own with another history.
 */
class ZoneForecastTest {

  private static final double ALPHA = 1.472231;
  private static final double BETA = 21.794786;

  private static List<Zone> roof(int badSeen) {
    return List.of(
        new Zone("field", 30, 18, badSeen, 1, 0.8),
        new Zone("eave", 12, 0, 0, 3, 1),
        new Zone("valley", 2, 0, 0, 6, 1));
  }

  @Test
  void zones_asAnIndependentScriptHasThem() {
    Chances all = ZoneForecast.of(roof(1), ALPHA, BETA).ofAll();
    assertThat(all.mean()).isCloseTo(4.604104, within(5e-7));
    assertThat(all.sd()).isCloseTo(2.590977, within(5e-7));
    assertThat(percentiles(all)).containsExactly(2, 4, 7, 8, 9);
    Chances none = ZoneForecast.of(roof(0), ALPHA, BETA).ofAll();
    assertThat(none.mean()).isCloseTo(2.243537, within(5e-7));
    assertThat(none.of(0)).isCloseTo(0.230326, within(5e-7));
    assertThat(percentiles(none)).containsExactly(0, 2, 4, 5, 6);
  }

  /** The distribution of commons-math, which works each chance out by itself. */
  @ParameterizedTest
  @CsvSource({"1, 0.3", "44, 0.02", "44, 0.999", "2000, 1e-6", "2000, 0.1", "2000, 0.97"})
  void eachChanceFromItsNeighbor_isTheBinomial(int places, double share) {
    Chances bad = new Zone("roof", places, 0, 0, 1, 1).chances(share);
    BinomialDistribution alone = new BinomialDistribution(null, places, share);
    for (int count = 0; count <= places; count++) {
      double chance = alone.probability(count);
      assertThat(bad.of(count)).isCloseTo(chance, within(1e-9 * chance + Double.MIN_NORMAL));
    }
  }

  private static List<Integer> percentiles(Chances chances) {
    return List.of(0.1, 0.5, 0.8, 0.9, 0.95).stream().map(chances::percentile).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "44, 18, 1, 1.472231, 21.794786",
    "44, 0, 0, 0.8, 12",
    "121, 60, 21, 1.472231, 21.794786",
    "20, 20, 3, 0.3, 4",
    "60, 10, 0, 40, 500",
    "30, 5, 5, 0.5, 0.7",
    "20, 3, 0, 0.05, 4",
    "44, 0, 0, 100000, 100000",
    "44, 0, 0, 1000000, 1000000",
    "44, 0, 0, 1000000, 3000000"
  })
  void oneZoneOfPlainPlaces_isTheBetaBinomial(
      int places, int seen, int bad, double alpha, double beta) {
    Chances all =
        ZoneForecast.of(List.of(new Zone("roof", places, seen, bad, 1, 1)), alpha, beta).ofAll();
    Chances plain = new DeckSeen.Plain(places, seen, bad).chances(new BadShare.Plain(alpha, beta));
    for (int count = 0; count <= places; count++) {
      assertThat(all.of(count)).isCloseTo(plain.of(count), within(1e-9));
    }
  }

  /**
   * Bayes by brute force, a million shares one by one: an eave three times as likely to be bad, of
   * which eight in ten bad places are recognized.
   */
  @Test
  void aZoneThatIsSeen_isWeighedByItsOwnOdds() {
    double whole = 0;
    double bad = 0;
    for (int i = 0; i < 1_000_000; i++) {
      double share = (i + 0.5) / 1_000_000;
      double here = 3 * share / (1 - share + 3 * share);
      double shows = 0.8 * here;
      double weight = Math.pow(1 - share, 11) * shows * shows * Math.pow(1 - shows, 8);
      whole += weight;
      bad += weight * (2 + 10 * here + 8 * here * 0.2 / (1 - shows));
    }
    Chances forecast = ZoneForecast.of(List.of(new Zone("eave", 20, 10, 2, 3, 0.8)), 1, 12).ofAll();
    assertThat(forecast.mean()).isCloseTo(bad / whole, within(1e-6));
  }

  @Test
  void zonesTogether_areOnAverageTheSumOfTheirAverages() {
    ZoneForecast forecast = ZoneForecast.of(roof(1), ALPHA, BETA);
    assertThat(forecast.ofZones().stream().mapToDouble(Chances::mean).sum())
        .isCloseTo(forecast.ofAll().mean(), within(1e-9));
  }

  /** What was seen in one zone tells of the house, and so of the others. */
  @Test
  void aBadPlaceInTheField_makesTheEaveWorse() {
    double before = ZoneForecast.of(roof(0), ALPHA, BETA).ofZones().get(1).mean();
    double after = ZoneForecast.of(roof(1), ALPHA, BETA).ofZones().get(1).mean();
    assertThat(after).isGreaterThan(before * 1.3);
  }

  /** The stated 9 of 10 is crossed by 1 house of 10, though zones differ and sight is imperfect. */
  @Test
  void theNinetiethPercentile_isCrossedByAsManyHousesAsItSays() {
    Random chance = new Random(4_711);
    Chances forecast =
        ZoneForecast.of(
                List.of(new Zone("field", 30, 18, 1, 1, 0.7), new Zone("eave", 12, 0, 0, 3, 1)),
                1,
                12)
            .ofAll();
    int limit = forecast.percentile(0.9);
    double alike = 0;
    double over = 0;
    double bad = 0;
    for (int house = 0; house < 600_000; house++) {
      double share = 1 - Math.pow(chance.nextDouble(), 1.0 / 12); // Beta(1, 12) by inversion
      int seenBad = 0;
      int all = 0;
      for (int place = 0; place < 42; place++) {
        double here = place < 30 ? share : 3 * share / (1 - share + 3 * share);
        boolean isBad = chance.nextDouble() < here;
        all += isBad ? 1 : 0;
        seenBad += isBad && place < 18 && chance.nextDouble() < 0.7 ? 1 : 0;
      }
      if (seenBad == 1) {
        alike++;
        bad += all;
        over += all > limit ? 1 : 0;
      }
    }
    assertThat(bad / alike).isCloseTo(forecast.mean(), within(0.03));
    assertThat(over / alike).isCloseTo(forecast.moreThan(limit), within(0.005));
    assertThat(over / alike).isLessThan(0.1);
  }
}
