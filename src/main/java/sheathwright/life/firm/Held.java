package sheathwright.life.firm;

import java.util.List;
import sheathwright.figure.Shown;
import sheathwright.forecast.Backtest;
import sheathwright.forecast.House;

/**
 * How often a percentile has held: each finished house against what the others would have forecast
 * for it.
 *
 * @param chance that was meant: 0.8
 * @param houses that were tried
 */
public record Held(double chance, Backtest houses) {

  /** The percentiles that prices are made from. */
  private static final double[] PRICED = {0.5, 0.8, 0.9};

  /** Enough of them to see a curve. */
  private static final double[] DRAWN = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95};

  private static final int BAR = 40;

  /** Those that prices are made from. */
  static List<Held> priced(List<House> houses) {
    return of(houses, PRICED);
  }

  /** Those of a chart. */
  public static List<Held> drawn(List<House> houses) {
    return of(houses, DRAWN);
  }

  private static List<Held> of(List<House> houses, double[] chances) {
    return java.util.Arrays.stream(chances)
        .mapToObj(chance -> new Held(chance, Backtest.of(houses, chance)))
        .toList();
  }

  /** In words, with what that share could be. */
  String inWords() {
    return Shown.text(
        "P%.0f: %.0f of 100 were meant to stay within, %s of %s did (%.0f to %.0f of 100, as exactly as so few can tell)",
        chance * 100,
        chance * 100,
        houses.within(),
        houses.houses(),
        houses.least() * 100,
        houses.most() * 100);
  }

  /** As a bar, with a mark where it was meant to end. */
  String bar() {
    int meant = (int) Math.round(chance * BAR);
    int held = (int) Math.round(houses.share() * BAR);
    StringBuilder bar = new StringBuilder();
    for (int place = 1; place <= BAR; place++) {
      bar.append(place == meant ? '|' : place <= held ? '#' : '.');
    }
    return Shown.text(
        "%4s %s %3.0f %%", Shown.text("P%.0f", chance * 100), bar, houses.share() * 100);
  }
}
