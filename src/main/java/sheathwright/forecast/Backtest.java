package sheathwright.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * How often finished houses stayed within what the others would have forecast for them.
 *
 * @param houses how many were tried
 * @param within how many stayed within
 */
public record Backtest(int houses, int within) {

  private static final double OUTSIDE_EACH_SIDE = 0.025;

  /**
   * Leaves each house out, fits the others, and looks.
   *
   * @param chance of the percentile: 0.8
   */
  public static Backtest of(List<House> houses, double chance) {
    int within = 0;
    for (int i = 0; i < houses.size(); i++) {
      List<House> others = new ArrayList<>(houses);
      House left = others.remove(i);
      boolean saysNothing = others.stream().allMatch(house -> house.bad() == 0);
      int most =
          saysNothing ? 0 : HistoryFit.byMoments(others).chances(left.sheets()).percentile(chance);
      within += left.bad() <= most ? 1 : 0;
    }
    return new Backtest(houses.size(), within);
  }

  /** The share that stayed within. */
  public double share() {
    return (double) within / houses;
  }

  /** What that share could be at least: the exact limit that one firm in forty lies below. */
  public double least() {
    return ShareLimits.atLeast(within, houses, 1 - OUTSIDE_EACH_SIDE);
  }

  /** What it could be at most. */
  public double most() {
    return ShareLimits.atMost(within, houses, 1 - OUTSIDE_EACH_SIDE);
  }
}
