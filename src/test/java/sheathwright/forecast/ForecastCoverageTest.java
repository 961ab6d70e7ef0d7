package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import sheathwright.catalog.Asked;

/**
 * Houses are drawn by a statistics library, and each percentile holds in so many of those that
 * looked alike: not in fewer, and one sheet less would.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ForecastCoverageTest {

  private static final int HOUSES = 100_000;
  private static final int SHEETS = 44;
  private static final int SEEN = 18;
  private static final double ALPHA = 1.4722306112220547;
  private static final double BETA = 21.79478649946375;
  private static final Map<String, Double> PERCENTILES =
      Map.of("p50_sheets", 0.5, "p80_sheets", 0.8, "p90_sheets", 0.9, "p95_sheets", 0.95);

  /** Standard deviations of the simulation itself: one test of 1,000 lies farther off. */
  private static final double SIMULATED = 3.3;

  private final Map<Integer, List<Integer>> badOfAlike = new TreeMap<>();

  @BeforeAll
  void housesFromASeed() {
    Well19937c chance = new Well19937c(20_261_129);
    BetaDistribution shares = new BetaDistribution(chance, ALPHA, BETA);
    for (int house = 0; house < HOUSES; house++) {
      double share = shares.sample();
      int seenBad = bad(chance, SEEN, share);
      int allBad = seenBad + bad(chance, SHEETS - SEEN, share);
      badOfAlike.computeIfAbsent(seenBad, none -> new ArrayList<>()).add(allBad);
    }
  }

  private static int bad(Well19937c chance, int sheets, double share) {
    return (int) IntStream.range(0, sheets).filter(sheet -> chance.nextDouble() < share).count();
  }

  @Test
  void eachPercentile_holdsInSoManyHouses_andNoSmallerOneDoes() {
    for (int seenBad = 0; seenBad <= 4; seenBad++) {
      List<Integer> alike = badOfAlike.get(seenBad);
      assertThat(alike).hasSizeGreaterThan(1_000);
      for (var percentile : PERCENTILES.entrySet()) {
        double sheets = forecast(seenBad).number(percentile.getKey());
        double asked = percentile.getValue();
        double error = SIMULATED * Math.sqrt(asked * (1 - asked) / alike.size());
        assertThat(share(alike, sheets)).isGreaterThan(asked - error);
        assertThat(share(alike, sheets - 1)).isLessThan(asked + error);
      }
    }
  }

  private static Asked forecast(int seenBad) {
    return Asked.of("bad_sheet_forecast")
        .with("sheets", String.valueOf(SHEETS))
        .with("seen", String.valueOf(SEEN))
        .with("seen_bad", String.valueOf(seenBad))
        .with("alpha", String.valueOf(ALPHA))
        .with("beta", String.valueOf(BETA));
  }

  private static double share(List<Integer> houses, double sheets) {
    return (double) houses.stream().filter(bad -> bad <= sheets).count() / houses.size();
  }
}
