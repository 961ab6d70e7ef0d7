package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Bad sheets one by one, or the whole deck anew. */
public final class Redecking {

  private static final Source BETA_BINOMIAL = Source.derived("beta-binomial distribution");
  private static final Figure<Sheets> NONE = Figure.of(0, Units.SHEET);

  /** A break-even that is a whole number but for rounding is that number. */
  private static final double ROUNDING = 1e-9;

  private Redecking() {}

  /**
   * From how many bad sheets on the whole deck laid anew costs no more than patching it.
   *
   * <pre>
   * bad = sheets × (redeck − keep) ÷ (patch − keep);   0 where keeping costs as much as new
   * </pre>
   *
   * <p>Does not cover kept sheets that fail later: add their cost to keep_usd, or see
   * patch_or_redeck.
   *
   * <pre>{@code
   * redeckBreakEven(sheets(121), RedeckPrices.patch(usdPerSheet(66.8811)).redeck(usdPerSheet(57.6005)).keep(usdPerSheet(5.7586))) // 102.63 sheets
   * }</pre>
   *
   * @param sheets the places of the whole deck, 1 to 10,000
   * @param prices one place replaced by itself, laid anew with all others, or kept
   * @return bad sheets, more than there are where patching always costs less
   * @throws RefusedException if patching a sheet costs no more than keeping one
   * @see "derived: arithmetic"
   */
  @LibraryFunction(words = {"patch or redeck", "whole deck", "new deck", "worth it"})
  @Column(value = "bad_sheets", unit = "sheet")
  public static Figure<Sheets> redeckBreakEven(
      @Column(value = "sheets", unit = "sheet") Figure<Sheets> sheets, RedeckPrices prices) {
    var all =
        sheets.within(
            "sheets",
            Units.SHEET,
            Limits.whole(1, DeckSeen.MOST, "the places of the whole deck, 121 for instance"));
    return breakEven(all, prices, prices.keep()).as("bad_sheets", Units.SHEET, Source.ARITHMETIC);
  }

  private static Figure<Sheets> breakEven(
      Figure<Sheets> sheets, RedeckPrices prices, Figure<Per<Money, Sheets>> keep) {
    var patch =
        prices
            .patch()
            .onlyIf(
                prices.patch().isMoreThan(keep),
                "replacing one bad sheet costs no more than keeping a sound one; then nothing breaks"
                    + " even: patch_usd more than keep_usd");
    return Figure.choose(
        keep.isLessThan(prices.redeck()),
        sheets
            .times(prices.redeck().minus(keep))
            .dividedBy(patch.minus(keep))
            .as("break_even_sheets", Units.SHEET),
        NONE);
  }

  /**
   * Whether to patch a deck or to lay it anew, with what is not counted yet and what may fail
   * later.
   *
   * <pre>
   * keeping one = keep + share that fails × cost of a failure
   * break-even = sheets × (redeck − keeping) ÷ (patch − keeping)
   * patch on average = bad × patch + (sheets − bad) × keeping,   chance = P(bad ≥ break-even)
   * </pre>
   *
   * <p>Does not cover time, weather, or a code that asks for a new deck whatever it costs.
   *
   * <pre>{@code
   * patchOrRedeck(DeckSeen.sheets(sheets(121)).seen(sheets(60)).bad(sheets(21)), BadShare.of(number(1.472231), number(21.794786)), RedeckPrices.patch(usdPerSheet(66.8811)).redeck(usdPerSheet(57.6005)).keep(usdPerSheet(5.7586)), LaterFailure.of(pct(5), usdPerSheet(900))).breakEven() // 51.35 sheets
   * }</pre>
   *
   * @param deck the sheets of the roof, how many were seen and how many of those were bad; 1 to
   *     10,000
   * @param share of bad sheets in the firm's houses, as a beta distribution
   * @param prices one place replaced by itself, laid anew with all others, or kept
   * @param failure what may come of a sheet that was kept
   * @return break-even, what patching costs on average, what the whole deck costs anew, and the
   *     chance that the latter is the cheaper
   * @throws RefusedException if patching a sheet costs no more than keeping one
   * @see "derived: beta-binomial distribution; the rest is arithmetic"
   */
  @LibraryFunction(words = {"patch or redeck", "whole deck", "callback", "risk", "worth it"})
  public static PatchOrRedeck patchOrRedeck(
      DeckSeen deck, BadShare share, RedeckPrices prices, LaterFailure failure) {
    var keep =
        prices
            .keep()
            .plus(failure.share().times(failure.cost()))
            .as("keeping_usd", Units.USD_PER_SHEET);
    var breakEven = breakEven(deck.sheets(), prices, keep).as("break_even_sheets", Units.SHEET);
    Reading reading = new Reading();
    Chances chances = deck.plain(reading).chances(share.plain(reading));
    double enough = reading.number("break-even", breakEven, Units.SHEET);
    Solution solution = reading.solution("patch_or_redeck");
    var bad = solution.figure("mean_bad_sheets", chances.mean(), Units.SHEET, BETA_BINOMIAL);
    return new PatchOrRedeck(
        breakEven,
        bad.times(prices.patch())
            .plus(deck.sheets().minus(bad).times(keep))
            .as("patch_mean_usd", Units.USD, Source.ARITHMETIC),
        deck.sheets().times(prices.redeck()).as("redeck_all_usd", Units.USD, Source.ARITHMETIC),
        solution.figure(
            "chance_redeck_cheaper",
            chances.moreThan((int) Math.ceil(enough - ROUNDING) - 1),
            Units.RATIO,
            BETA_BINOMIAL));
  }
}
