package sheathwright.life.unseen;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.sheathing.place.BillRule;

/**
 * What follows for a job's price from what nobody has seen of its deck: how many sheets to have in
 * it, where to put a ceiling, when to talk again. Chances are solved; everything in dollars follows
 * them live.
 */
public final class DeckPricing {

  private static final Figure<Sheets> NONE = Figure.of(0, Units.SHEET);
  private static final Figure<Sheets> ONE = Figure.of(1, Units.SHEET);
  private static final Figure<Per<Money, Sheets>> A_CENT =
      Figure.constant("a_cent", 0.01, Units.USD_PER_SHEET, Source.ARITHMETIC);
  private static final Source GUESS = new Source(OfficeShare.GUESS, Source.Mark.COMMON_PRACTICE);
  private static final Source NEWSVENDOR =
      Source.derived("smallest count with F(count) at least the ratio, the newsvendor rule");
  private static final Source QUANTITIES = Source.read("48 CFR 11.702");
  private static final Figure<Ratio> FAR_OFF =
      Figure.constant("quantity_is_off_pct", 15, Units.PERCENT, QUANTITIES);

  private static final double NUISANCE = 25;
  private static final double SURE = 80;
  private static final double CHARGE = 5;

  private final JobForecast forecast;
  private final SheetTerms terms;
  private final Figure<Sheets> atWorst;
  private final Figure<Sheets> places;
  private final Figure<Ratio> perPlace;
  private final Figure<Per<Money, Sheets>> nuisance;
  private final Figure<Ratio> sure;
  private final Figure<Money> mostCharge;
  private final Figure<Ratio> ratio;
  private final List<CountLine> lines;
  private final Roll counts;
  private final Figure<Sheets> included;
  private final Figure<Sheets> ceiling;
  private final Figure<Sheets> reopen;
  private final Figure<Sheets> fixed;

  private DeckPricing(Estimate estimate, JobForecast forecast) {
    this.forecast = forecast;
    this.terms = SheetTerms.of(estimate);
    this.atWorst = estimate.sheetsAtWorst();
    this.places =
        estimate
            .deck()
            .units()
            .of(estimate.deckArea())
            .by(Choice.literal(BillRule.PLACE), "places_of_the_deck");
    this.perPlace = atWorst.dividedBy(places).as("sheets_a_place", Units.RATIO);
    Facts rates = estimate.job().rateBook();
    this.nuisance = said(rates, ForecastFields.NUISANCE, NUISANCE);
    this.sure = said(rates, ForecastFields.FIXED_SURE, SURE);
    this.mostCharge = said(rates, ForecastFields.CEILING_CHARGE, CHARGE);
    Figure<Per<Money, Sheets>> surprise = terms.extra().plus(nuisance);
    this.ratio =
        surprise
            .minus(terms.price())
            .dividedBy(surprise.minus(terms.credit()).max(A_CENT))
            .as("enough_in_pct", Units.PERCENT, NEWSVENDOR);
    this.lines = CountLine.of(forecast, perPlace);
    this.counts =
        Roll.of(
            "deck_counts",
            "the chances of bad places",
            lines,
            Roll.<CountLine>column("bad", CountLine::bad),
            Roll.column("chance", CountLine::chance),
            Roll.column("reached", CountLine::reached),
            Roll.column("beyond", CountLine::beyond),
            Roll.column("sheets", CountLine::sheets),
            Roll.column("few", line -> oneIf(line.reached().isLessThan(ratio))),
            Roll.column("short", line -> oneIf(line.reached().isLessThan(sure))),
            Roll.column("dear", line -> oneIf(chargeBeyond(line).isMoreThan(mostCharge))));
    this.included = sheetsOf("few", "suggested_included");
    this.ceiling = sheetsOf("dear", "suggested_ceiling");
    this.fixed = sheetsOf("short", "sheets_of_the_fixed_price");
    this.reopen =
        billed(forecast.figures().p95()).roundedUp().plus(ONE).as("suggested_reopen", Units.SHEET);
  }

  /** The pricing of a job by a forecast of its deck. */
  public static DeckPricing of(Estimate estimate, JobForecast forecast) {
    return new DeckPricing(estimate, forecast);
  }

  private static <Q extends sheathwright.figure.Quantity> Figure<Q> said(
      Facts rates, Field<Figure<Q>> field, double guess) {
    return rates.knows(field)
        ? rates.fact(field)
        : Figure.constant(field.name(), guess, Field.figure(field, guess).unit(), GUESS);
  }

  private static Figure<Sheets> oneIf(Condition holds) {
    return Figure.choose(holds, ONE, NONE);
  }

  /** What a ceiling at so many places costs on average. */
  private Figure<Money> chargeBeyond(CountLine line) {
    return terms.scattered().times(line.beyond().times(perPlace)).in(Units.USD);
  }

  /** As many places as lines are marked, as the bill counts them, up to whole sheets. */
  private Figure<Sheets> sheetsOf(String column, String name) {
    return billed(counts.sum(column, Units.SHEET)).roundedUp().min(atWorst).as(name, Units.SHEET);
  }

  /** What so many places count on the bill. */
  Figure<Sheets> billed(Figure<Sheets> places) {
    return places.times(perPlace).in(Units.SHEET);
  }

  /** Every place of the deck. */
  Figure<Sheets> places() {
    return places;
  }

  public JobForecast forecast() {
    return forecast;
  }

  SheetTerms terms() {
    return terms;
  }

  List<CountLine> lines() {
    return lines;
  }

  /** The chance of each number of bad places, and what is counted on it. */
  public Roll counts() {
    return counts;
  }

  /** Every place of the deck, as the bill counts it. */
  Figure<Sheets> atWorst() {
    return atWorst;
  }

  /** Sheets that a place counts on the bill, on average. */
  public Figure<Ratio> perPlace() {
    return perPlace;
  }

  /** What one surprise sheet is worth to an owner in delay and worry. */
  public Figure<Per<Money, Sheets>> nuisance() {
    return nuisance;
  }

  /** The share of houses in which a fixed price is enough. */
  public Figure<Ratio> sure() {
    return sure;
  }

  /** The most that a ceiling may cost the firm on average. */
  public Figure<Money> mostCharge() {
    return mostCharge;
  }

  /** The share of houses that should get by with the sheets in the price. */
  public Figure<Ratio> ratio() {
    return ratio;
  }

  /** How many sheets to have in the price, so that the owner pays least on average. */
  public Figure<Sheets> included() {
    return included;
  }

  /** The lowest ceiling that costs the firm no more on average than it is willing to carry. */
  public Figure<Sheets> ceiling() {
    return ceiling;
  }

  /** One more than 19 houses of 20 have. */
  public Figure<Sheets> reopen() {
    return reopen;
  }

  /** As many as a fixed price is made for. */
  public Figure<Sheets> fixed() {
    return fixed;
  }

  /** 15 % over the sheets in the price, where public work lets a unit price be reopened. */
  public Figure<Sheets> beyondTheQuantity() {
    return terms
        .included()
        .times(Figure.of(1, Units.RATIO).plus(FAR_OFF))
        .in(Units.SHEET)
        .as("sheets_off_the_quantity", Units.SHEET, QUANTITIES);
  }

  /** What the job says of a number; none where it leaves it open. */
  static Figure<Sheets> inTheJob(Job job, Field<Figure<Sheets>> field) {
    return job.knows(field) ? job.fact(field) : Figure.none("not set", Units.SHEET);
  }

  /** The ceiling that holds: the job's, or else the suggested one. */
  Figure<Sheets> ceilingIn(Job job) {
    return job.knows(LifeFields.CEILING_SHEETS) ? job.fact(LifeFields.CEILING_SHEETS) : ceiling;
  }
}
