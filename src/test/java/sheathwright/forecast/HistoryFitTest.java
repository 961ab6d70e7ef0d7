package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Expected values: an independent script for twelve invented houses; for families of twelve
 * children the counts that Geissler collected, a public set used since 1889 for such fits.
 */
class HistoryFitTest {

  private static final int[][] COUNTED = {
    {52, 1}, {64, 3}, {48, 0}, {88, 9}, {71, 2}, {60, 5}, {95, 4}, {44, 0}, {78, 16}, {66, 3},
    {58, 2}, {82, 6}
  };

  private static List<House> twelve() {
    return List.of(COUNTED).stream().map(house -> new House(house[0], house[1])).toList();
  }

  @Test
  void moments_asAnIndependentScriptHasThem() {
    HistoryFit fit = HistoryFit.byMoments(twelve());
    assertThat(fit.share()).isCloseTo(0.06327543424317618, within(1e-12));
    assertThat(fit.alike()).isCloseTo(0.04120819610580227, within(1e-12));
    assertThat(fit.alpha()).isCloseTo(1.4722306112220547, within(1e-9));
    assertThat(fit.beta()).isCloseTo(21.79478649946375, within(1e-8));
  }

  @Test
  void likeliest_asAnIndependentScriptHasIt() {
    HistoryFit fit = HistoryFit.byMoments(twelve()).likeliest(twelve());
    assertThat(fit.alpha()).isCloseTo(1.83467942311038, within(1e-3));
    assertThat(fit.beta()).isCloseTo(29.185364727422304, within(1e-2));
    assertThat(fit.logLikelihood(twelve())).isCloseTo(-28.82728689304041, within(1e-8));
  }

  /** 6,115 families with twelve children, by the number of one sex. */
  @Test
  void families_areAsAlikeAsOthersHaveFoundThem() {
    int[] counts = {3, 24, 104, 286, 670, 1033, 1343, 1112, 829, 478, 181, 45, 7};
    List<House> families = new ArrayList<>();
    for (int k = 0; k < counts.length; k++) {
      families.addAll(Collections.nCopies(counts[k], new House(12, k)));
    }
    HistoryFit moments = HistoryFit.byMoments(families);
    // Printed for a variance over all families; ours is over one less.
    double over = (moments.alike() * 11 + 1) * 6_114 / 6_115;
    double both = 11 / (over - 1) - 1;
    assertThat(moments.share() * both).isCloseTo(34.1350, within(5e-5));
    assertThat((1 - moments.share()) * both).isCloseTo(31.6085, within(5e-5));
    HistoryFit likeliest = moments.likeliest(families);
    assertThat(likeliest.logLikelihood(families)).isGreaterThanOrEqualTo(-12_492.8714 - 5e-5);
    assertThat(likeliest.alpha()).isCloseTo(34.10, within(0.01));
    assertThat(likeliest.beta()).isCloseTo(31.58, within(0.01));
  }

  @Test
  void housesThatAreAllAlike_areBinomial() {
    List<House> alike = Collections.nCopies(8, new House(50, 5));
    assertThat(HistoryFit.byMoments(alike).isBinomial()).isTrue();
    assertThat(HistoryFit.byMoments(alike).chances(50).sd())
        .isCloseTo(Math.sqrt(50 * 0.1 * 0.9), within(1e-3));
  }

  /** Each house left out: 11 of 12 within what is not exceeded in 8 of 10. */
  @Test
  void backtest_asAnIndependentScriptHasIt() {
    Backtest eighty = Backtest.of(twelve(), 0.8);
    assertThat(eighty).isEqualTo(new Backtest(12, 11));
    assertThat(eighty.least()).isCloseTo(0.615, within(5e-4));
    assertThat(eighty.most()).isCloseTo(0.998, within(5e-4));
    assertThat(new Backtest(5, 0).least()).isZero();
    assertThat(new Backtest(5, 5).most()).isEqualTo(1);
  }

  /** An independent script with another generator: 4 to 9 sheets for a roof of 44. */
  @Test
  void fitRange_saysHowLittleTwelveHousesTell() {
    FitRange range = FitRange.of(twelve(), 44, 0.9, 20_260_101);
    assertThat(range.least().chances(44).percentile(0.9)).isEqualTo(4);
    assertThat(range.most().chances(44).percentile(0.9)).isEqualTo(9);
    assertThat(FitRange.of(twelve(), 44, 0.9, 20_260_101)).isEqualTo(range);
  }

  /** Houses drawn with a known share are given that share back. */
  @Test
  void moments_findWhatHousesWereDrawnWith() {
    Random chance = new Random(99);
    List<House> houses = new ArrayList<>();
    for (int i = 0; i < 4_000; i++) {
      double share = 1 - Math.pow(chance.nextDouble(), 1.0 / 12); // Beta(1, 12) by inversion
      int bad = 0;
      for (int sheet = 0; sheet < 60; sheet++) {
        bad += chance.nextDouble() < share ? 1 : 0;
      }
      houses.add(new House(60, bad));
    }
    HistoryFit fit = HistoryFit.byMoments(houses);
    assertThat(fit.alpha()).isCloseTo(1, within(0.06));
    assertThat(fit.beta()).isCloseTo(12, within(0.8));
  }
}
