package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Ways to offer a price for sheets that nobody has counted. */
public final class DeckOffers {

  private static final Source NEWSVENDOR =
      Source.derived("smallest count with F(count) at least the ratio, the newsvendor rule");
  private static final Source STOP_LOSS =
      Source.derived("stop-loss premium: Klugman, Panjer, Willmot, Loss Models, from memory");
  private static final Source BETA_BINOMIAL = Source.derived("beta-binomial distribution");
  private static final Limits COST =
      Limits.between(0, 10_000, "direct cost with overhead of one sheet, without margin");

  private DeckOffers() {}

  /**
   * How many bad sheets to have in the price, so that the owner pays least on average.
   *
   * <pre>
   * ratio = (extra + nuisance − included) ÷ (extra + nuisance − credit)
   * included = smallest count that is enough with a chance of at least that ratio
   * </pre>
   *
   * <p>Does not cover what the firm keeps: with a credit near the price, any count is fair to the
   * owner, without one a high count is a hidden surcharge.
   *
   * <pre>{@code
   * includedSheets(DeckSeen.sheets(sheets(44)).seen(sheets(18)).bad(sheets(1)), BadShare.of(number(1.472231), number(21.794786)), IncludedPrices.included(usdPerSheet(96)).extra(usdPerSheet(117)).credit(usdPerSheet(80)).nuisance(usdPerSheet(25))).included() // 3 sheets
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param share of bad sheets in the firm's houses, as a beta distribution
   * @param prices what a sheet costs the owner that is in the price, comes on top, or is not needed
   * @return how many to include, and the ratio that says so
   * @throws RefusedException if the credit is more than an included sheet costs, or as much as an
   *     extra one with its nuisance
   * @see "derived: newsvendor rule of stock-keeping, applied to sheets"
   */
  @LibraryFunction(words = {"allowance", "in the price", "how many to include", "credit"})
  public static IncludedSheets includedSheets(
      DeckSeen deck, BadShare share, IncludedPrices prices) {
    var surprise = prices.extra().plus(prices.nuisance());
    var kept =
        prices
            .included()
            .onlyIf(
                prices.credit().isAtMost(prices.included()),
                "the credit is more than an included sheet costs; then each sheet more in the price"
                    + " pays the owner, and none is enough: credit_usd at most included_usd");
    var ratio =
        surprise
            .minus(kept)
            .dividedBy(surprise.minus(prices.credit()))
            .as("ratio", Units.RATIO, NEWSVENDOR);
    Reading reading = new Reading();
    Chances chances = deck.plain(reading).chances(share.plain(reading));
    double enough = reading.number("ratio", ratio, Units.RATIO);
    int included = chances.percentile(enough);
    return new IncludedSheets(
        reading.solution("included_sheets").figure("included", included, Units.SHEET, NEWSVENDOR),
        ratio);
  }

  /**
   * What it costs the firm on average to promise that no more than so many sheets are ever billed.
   *
   * <pre>
   * charge = cost × average of (bad sheets − ceiling), none counted below it
   * </pre>
   *
   * <p>Does not cover the nerve to carry one very bad house: that is the chance beside it.
   *
   * <pre>{@code
   * ceilingCharge(DeckSeen.sheets(sheets(44)).seen(sheets(18)).bad(sheets(1)), BadShare.of(number(1.472231), number(21.794786)), sheets(5), usdPerSheet(102.8057)).charge() // $8.72
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param share of bad sheets in the firm's houses, as a beta distribution
   * @param ceiling whole sheets, 0 to 10,000
   * @param cost of one sheet to the firm, 0 $/sheet to 10000 $/sheet
   * @return the chance of more, how many more on average, and what those cost
   * @throws RefusedException if more were seen than there are, or more were bad than seen
   * @see "derived: stop-loss premium: Klugman, Panjer, Willmot, Loss Models; from memory"
   */
  @LibraryFunction(words = {"cap", "not to exceed", "maximum", "guarantee", "ceiling"})
  public static CeilingCharge ceilingCharge(
      DeckSeen deck,
      BadShare share,
      @Column(value = "ceiling_sheets", unit = "sheet") Figure<Sheets> ceiling,
      @Column(value = "cost_usd", unit = "$/sheet") Figure<Per<Money, Sheets>> cost) {
    var most =
        ceiling.within(
            "ceiling_sheets",
            Units.SHEET,
            Limits.whole(0, DeckSeen.MOST, "the most that is ever billed"));
    var each = cost.within("cost_usd", Units.USD_PER_SHEET, COST);
    Reading reading = new Reading();
    Chances chances = deck.plain(reading).chances(share.plain(reading));
    int count = (int) reading.number("ceiling", most, Units.SHEET);
    Solution solution = reading.solution("ceiling_charge");
    var over = solution.figure("sheets_over", chances.beyond(count), Units.SHEET, STOP_LOSS);
    return new CeilingCharge(
        solution.figure("chance_over", chances.moreThan(count), Units.RATIO, BETA_BINOMIAL),
        over,
        each.times(over).as("charge_usd", Units.USD, STOP_LOSS));
  }

  /**
   * What one price for all bad sheets has to be, and how often the firm loses by it.
   *
   * <pre>
   * fixed = cost × sheets that are not exceeded with the confidence
   * left on average = fixed − cost × average of the bad sheets
   * </pre>
   *
   * <p>Does not cover margin, which comes on top; the owner of a sound deck pays for those of bad
   * ones.
   *
   * <pre>{@code
   * fixedDeckPrice(DeckSeen.sheets(sheets(44)).seen(sheets(18)).bad(sheets(1)), BadShare.of(number(1.472231), number(21.794786)), pct(80), usdPerSheet(102.8057)).fixed() // $411.22
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param share of bad sheets in the firm's houses, as a beta distribution
   * @param confidence the share of houses in which the price is enough, 1 % to 99.99 %
   * @param cost of one sheet to the firm, 0 $/sheet to 10000 $/sheet
   * @return sheets in the price, the price at cost, what is left on average, and the chance of a
   *     loss
   * @throws RefusedException if more were seen than there are, or more were bad than seen
   * @see "derived: beta-binomial distribution; the rest is arithmetic"
   */
  @LibraryFunction(words = {"lump sum", "fixed", "all in", "flat price"})
  public static FixedDeckPrice fixedDeckPrice(
      DeckSeen deck,
      BadShare share,
      @Column("confidence_pct") Figure<Ratio> confidence,
      @Column(value = "cost_usd", unit = "$/sheet") Figure<Per<Money, Sheets>> cost) {
    var sure =
        confidence.within(
            "confidence_pct",
            Units.PERCENT,
            Limits.between(1, 99.99, "the share of houses in which the price is enough; 80"));
    var each = cost.within("cost_usd", Units.USD_PER_SHEET, COST);
    Reading reading = new Reading();
    Chances chances = deck.plain(reading).chances(share.plain(reading));
    int enough = chances.percentile(reading.number("confidence", sure, Units.PERCENT) / 100);
    Solution solution = reading.solution("fixed_deck_price");
    var sheets = solution.figure("sheets", enough, Units.SHEET, BETA_BINOMIAL);
    var mean = solution.figure("mean_sheets", chances.mean(), Units.SHEET, BETA_BINOMIAL);
    var fixed = each.times(sheets).as("fixed_usd", Units.USD, Source.ARITHMETIC);
    return new FixedDeckPrice(
        sheets,
        fixed,
        fixed.minus(each.times(mean)).as("mean_left_usd", Units.USD, Source.ARITHMETIC),
        solution.figure("chance_of_loss", chances.moreThan(enough), Units.RATIO, BETA_BINOMIAL));
  }
}
