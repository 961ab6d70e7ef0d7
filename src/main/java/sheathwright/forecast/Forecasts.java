package sheathwright.forecast;

import org.apache.commons.math3.distribution.HypergeometricDistribution;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** How many bad sheets a roof holds that nobody has seen whole. */
public final class Forecasts {

  private static final Source BETA_BINOMIAL =
      Source.derived("beta-binomial distribution, the seen sheets counted in");
  private static final Source HYPERGEOMETRIC =
      Source.derived(
          "exact one-sided limit for a finite number of sheets (Clopper and Pearson 1934), by the hypergeometric distribution");
  static final Limits CONFIDENCE =
      Limits.between(50, 99.99, "how sure one wants to be; 95 is usual");

  private Forecasts() {}

  /**
   * How many sheets of a roof are bad, from what was seen of it and what the firm has found in
   * other houses.
   *
   * <pre>
   * share of bad sheets ~ Beta(α, β)   after a look: Beta(α + bad, β + seen − bad)
   * bad in all = bad seen + beta-binomial(sheets − seen)
   * </pre>
   *
   * <p>Does not cover a look that misses bad sheets or could not reach the worst places: an attic
   * shows neither eaves nor rot on top. For those, solve forecast takes zones. The forecast informs
   * the price; the map and the photographs decide the bill.
   *
   * <pre>{@code
   * badSheetForecast(DeckSeen.sheets(sheets(44)).seen(sheets(18)).bad(sheets(1)), BadShare.of(number(1.472231), number(21.794786))).p90() // 5 sheets
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param share of bad sheets in the firm's houses, as a beta distribution
   * @return average, spread, chance of none, and what is not exceeded in 1, 5, 8, 9 and 9.5 houses
   *     of 10, in sheets
   * @throws RefusedException if more were seen than there are, or more were bad than seen
   * @see "derived: beta-binomial distribution; finite population held against the hypergeometric"
   */
  @LibraryFunction(
      words = {"how many bad sheets", "rot", "allowance", "hidden", "likely", "attic", "odds"})
  public static BadSheetForecast badSheetForecast(DeckSeen deck, BadShare share) {
    Reading reading = new Reading();
    Chances chances = deck.plain(reading).chances(share.plain(reading));
    Solution solution = reading.solution("bad_sheet_forecast");
    return new BadSheetForecast(
        sheets(solution, "mean", chances.mean()),
        sheets(solution, "sd", chances.sd()),
        solution.figure("p_none", chances.of(0), Units.RATIO, BETA_BINOMIAL),
        sheets(solution, "p10_sheets", chances.percentile(0.10)),
        sheets(solution, "p50_sheets", chances.percentile(0.50)),
        sheets(solution, "p80_sheets", chances.percentile(0.80)),
        sheets(solution, "p90_sheets", chances.percentile(0.90)),
        sheets(solution, "p95_sheets", chances.percentile(0.95)),
        chances);
  }

  /**
   * The most bad sheets that a roof can hold after what was seen, without any history.
   *
   * <pre>
   * largest B for which seeing so few bad ones has a chance above 1 − confidence:
   * P(X ≤ bad seen) &gt; 1 − confidence,   X ~ hypergeometric(sheets, B, seen)
   * </pre>
   *
   * <p>Does not cover sheets that were chosen by how easily they are reached: it holds if what was
   * seen was chosen blindly, and an attic is not.
   *
   * <pre>{@code
   * mostBadSheets(DeckSeen.sheets(sheets(44)).seen(sheets(20)).bad(sheets(0)), pct(95)) // 4 sheets
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param confidence how sure one wants to be, 50 % to 99.99 %
   * @return the most bad sheets in the whole roof, those seen included
   * @throws RefusedException if more were seen than there are, or more were bad than seen
   * @see "Clopper and Pearson 1934; Lieberman and Owen 1961 for tables"
   */
  @LibraryFunction(words = {"at most", "upper limit", "none found", "how sure", "attic"})
  @Column(value = "bad_sheets", unit = "sheet")
  public static Figure<Sheets> mostBadSheets(
      DeckSeen deck, @Column(value = "confidence_pct", preset = "95") Figure<Ratio> confidence) {
    var sure = confidence.within("confidence_pct", Units.PERCENT, CONFIDENCE);
    Reading reading = new Reading();
    DeckSeen.Plain seen = deck.plain(reading);
    double doubt = 1 - reading.number("confidence", sure, Units.PERCENT) / 100;
    return reading
        .solution("most_bad_sheets")
        .figure("bad_sheets", most(seen, doubt), Units.SHEET, HYPERGEOMETRIC);
  }

  private static int most(DeckSeen.Plain deck, double doubt) {
    int least = deck.bad();
    int most = deck.sheets() - deck.seen() + deck.bad();
    while (least < most) {
      int middle = (least + most + 1) / 2;
      double chance =
          new HypergeometricDistribution(null, deck.sheets(), middle, deck.seen())
              .cumulativeProbability(deck.bad());
      if (chance > doubt + Chances.ROUNDING) {
        least = middle;
      } else {
        most = middle - 1;
      }
    }
    return least;
  }

  /**
   * How likely it is that a roof holds more bad sheets than a number.
   *
   * <pre>
   * chance = P(bad in all &gt; more than),   bad in all as bad_sheet_forecast has it
   * </pre>
   *
   * <p>Does not cover a look that misses bad sheets, see bad_sheet_forecast.
   *
   * <pre>{@code
   * chanceOfMore(DeckSeen.sheets(sheets(44)).seen(sheets(18)).bad(sheets(1)), BadShare.of(number(1.472231), number(21.794786)), sheets(3)) // 0.2251
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param share of bad sheets in the firm's houses, as a beta distribution
   * @param moreThan whole sheets, 0 to 10,000
   * @return the chance of more, from 0 to 1
   * @throws RefusedException if more were seen than there are, or more were bad than seen
   * @see "derived: beta-binomial distribution; finite population held against the hypergeometric"
   */
  @LibraryFunction(words = {"how likely", "odds", "probability", "included", "more than"})
  @Column("chance")
  public static Figure<Ratio> chanceOfMore(
      DeckSeen deck,
      BadShare share,
      @Column(value = "more_than", unit = "sheet") Figure<Sheets> moreThan) {
    var number =
        moreThan.within(
            "more_than",
            Units.SHEET,
            Limits.whole(0, DeckSeen.MOST, "for instance the sheets in the price"));
    Reading reading = new Reading();
    Chances chances = deck.plain(reading).chances(share.plain(reading));
    int count = (int) reading.number("more than", number, Units.SHEET);
    return reading
        .solution("chance_of_more")
        .figure("chance", chances.moreThan(count), Units.RATIO, BETA_BINOMIAL);
  }

  private static Figure<Sheets> sheets(Solution solution, String name, double number) {
    return solution.figure(name, number, Units.SHEET, BETA_BINOMIAL);
  }
}
