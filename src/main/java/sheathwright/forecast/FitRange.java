package sheathwright.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * How far a fit could lie off because a firm has finished so few houses: the houses are drawn again
 * and again from themselves, and each draw is fitted.
 *
 * @param least the fit of which one draw in twenty asks for fewer sheets on the roof
 * @param most the fit of which one draw in twenty asks for more
 */
public record FitRange(HistoryFit least, HistoryFit most) {

  /** The draws that are made where nobody asks for others. */
  public static final long SEED = 20_260_101;

  /** Draws; with half as many the ends of a range moved by at most one sheet. */
  private static final int DRAWS = 2_000;

  private static final double OUTSIDE_EACH_SIDE = 0.05;

  /**
   * The range for a roof.
   *
   * @param sheets of the roof that the fits are compared by
   * @param chance of the percentile that they are compared by: 0.9
   * @param seed of the draws: the same seed, the same range
   */
  public static FitRange of(List<House> houses, int sheets, double chance, long seed) {
    RandomGenerator random = new Well19937c(seed);
    List<HistoryFit> fits = new ArrayList<>();
    while (fits.size() < DRAWS) {
      List<House> drawn = new ArrayList<>();
      for (int i = 0; i < houses.size(); i++) {
        drawn.add(houses.get(random.nextInt(houses.size())));
      }
      int bad = drawn.stream().mapToInt(House::bad).sum();
      if (bad > 0 && bad < drawn.stream().mapToInt(House::sheets).sum()) {
        fits.add(HistoryFit.byMoments(drawn));
      }
    }
    record Asking(HistoryFit fit, int sheets, double mean) {}
    List<HistoryFit> sorted =
        fits.stream()
            .map(fit -> new Asking(fit, fit.chances(sheets).percentile(chance), fit.share()))
            .sorted(Comparator.comparingInt(Asking::sheets).thenComparingDouble(Asking::mean))
            .map(Asking::fit)
            .toList();
    int outside = (int) (DRAWS * OUTSIDE_EACH_SIDE);
    return new FitRange(sorted.get(outside), sorted.get(DRAWS - 1 - outside));
  }
}
