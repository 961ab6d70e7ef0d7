package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.number;

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

  /** Beta's own mean and the likeness of two sheets of one house: α ÷ (α + β), 1 ÷ (α + β + 1). */
  @Test
  void likeliest_saysShareAndLikenessOfItsOwnNumbers() {
    HistoryFit fit = HistoryFit.byMoments(twelve()).likeliest(twelve());
    assertThat(fit.share()).isCloseTo(1.83467942 / (1.83467942 + 29.18536473), within(1e-4));
    assertThat(fit.alike()).isCloseTo(1 / (1.83467942 + 29.18536473 + 1), within(1e-4));
    assertThat(HistoryFit.byMoments(twelve()).isBinomial()).isFalse();
  }

  /** By hand: two houses, one bad all over, are alike by 99 ÷ 49, which is held under 1. */
  @Test
  void likeness_staysBetweenItsEnds() {
    HistoryFit split = HistoryFit.byMoments(List.of(new House(50, 50), new House(50, 0)));
    assertThat(split.alike()).isEqualTo(0.999);
    HistoryFit single =
        HistoryFit.byMoments(List.of(new House(1, 1), new House(1, 0), new House(1, 0)));
    assertThat(single.isBinomial()).as("one sheet has nothing to be alike with").isTrue();
  }

  @Test
  void aFit_needsFiveHousesAndSheetsOfBothKinds() {
    List<House> five = twelve().subList(0, 5);
    assertThat(HistoryFit.isEnough(five)).isTrue();
    assertThat(HistoryFit.lack(five)).isEmpty();
    assertThat(HistoryFit.isEnough(twelve().subList(0, 4))).isFalse();
    assertThat(HistoryFit.lack(twelve().subList(0, 4)).orElseThrow())
        .startsWith("it has 4 jobs; a fit needs 5 jobs with bad sheets and sound ones");
    assertThat(HistoryFit.lack(twelve().subList(0, 1)).orElseThrow()).startsWith("it has 1 job;");
    for (House all : List.of(new House(20, 0), new House(20, 20))) {
      List<House> alike = Collections.nCopies(5, all);
      assertThat(HistoryFit.isEnough(alike)).isFalse();
      assertThat(HistoryFit.lack(alike).orElseThrow())
          .startsWith("its sheets are all of one kind; a fit needs 5 jobs");
    }
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

  /** Where the others had nothing bad, none is expected: the one bad house alone is over it. */
  @Test
  void backtest_ofOneBadHouse_isOverByThatHouse() {
    List<House> houses = new ArrayList<>(Collections.nCopies(5, new House(40, 0)));
    houses.add(new House(40, 2));
    assertThat(Backtest.of(houses, 0.8)).isEqualTo(new Backtest(6, 5));
    assertThat(new Backtest(12, 9).share()).isEqualTo(0.75);
  }

  /** A draw of houses that are all sound, or all bad, tells no share and is drawn again. */
  @Test
  void fitRange_drawsOnlyWhatCanBeFitted() {
    List<House> sound = new ArrayList<>(Collections.nCopies(4, new House(20, 0)));
    sound.add(new House(20, 3));
    FitRange few = FitRange.of(sound, 44, 0.9, 1);
    assertThat(few.least().share()).isPositive();
    assertThat(few.most().alpha()).isPositive().isFinite();
    List<House> rotten = new ArrayList<>(Collections.nCopies(4, new House(5, 5)));
    rotten.add(new House(5, 2));
    FitRange most = FitRange.of(rotten, 44, 0.9, 1);
    assertThat(most.most().share()).isLessThan(1);
    assertThat(most.most().beta()).isPositive().isFinite();
    assertThat(most.least().beta()).isPositive().isFinite();
    assertThat(BadShare.of(number(0.8), number(12)).beta().value()).isEqualTo(12);
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
