package sheathwright.life.unseen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.forecast.BadSheetForecast;
import sheathwright.job.Estimate;

/**
 * Three ways to price a deck that nobody has seen whole: a unit price with some sheets included,
 * the same with a ceiling, and one fixed price. For each what the owner pays in this house or that,
 * what the firm keeps on average, and how often it loses.
 */
public final class DeckWays {

  private static final Figure<Sheets> NONE = Figure.of(0, Units.SHEET);
  private static final Figure<Ratio> NO = Figure.of(0, Units.RATIO);
  private static final Source STOP_LOSS =
      Source.derived("stop-loss premium: Klugman, Panjer, Willmot, Loss Models, from memory");

  private final DeckPricing pricing;
  private final SheetTerms terms;
  private final Figure<Sheets> ceiling;
  private final List<Line> lines;
  private final Roll money;
  private final Figure<Money> charge;
  private final Figure<Money> fixed;
  private final Roll losses;
  private final Roll bad;
  private final Roll ways;

  /** A number of bad places and what it comes to. */
  private record Line(
      CountLine count,
      Figure<Money> paid,
      Figure<Money> below,
      Figure<Money> foreseen,
      Figure<Money> scattered) {

    Figure<Money> weighed(Figure<Money> amount) {
      return count.chance().times(amount).in(Units.USD);
    }

    Figure<Ratio> ifLost(Figure<Money> taken, Figure<Money> cost) {
      return Figure.choose(taken.isLessThan(cost), count.chance(), NO);
    }
  }

  /**
   * A way to price the deck, as a line of the page.
   *
   * @param words for the office
   * @param pays what the owner pays, in each of the houses that the page tells of
   * @param taken what the firm takes on average
   * @param name of the columns of its losses
   */
  private record Way(String words, List<Figure<Money>> pays, Figure<Money> taken, String name) {}

  private DeckWays(Estimate estimate, DeckPricing pricing) {
    this.pricing = pricing;
    this.terms = pricing.terms();
    this.ceiling = pricing.ceilingIn(estimate.job());
    this.lines = pricing.lines().stream().map(this::line).toList();
    this.money =
        Roll.of(
            "deck_money",
            "what each number of bad places comes to",
            lines,
            Roll.<Line>column("sheets", line -> line.count().sheets()),
            Roll.column("paid_usd", Line::paid),
            Roll.column("below_usd", Line::below),
            Roll.column("foreseen_usd", Line::foreseen),
            Roll.column("scattered_usd", Line::scattered),
            Roll.column("over", this::over),
            Roll.column("mean_paid_usd", line -> line.weighed(line.paid())),
            Roll.column("mean_below_usd", line -> line.weighed(line.below())),
            Roll.column("mean_foreseen_usd", line -> line.weighed(line.foreseen())),
            Roll.column("mean_scattered_usd", line -> line.weighed(line.scattered())));
    this.charge =
        terms
            .scattered()
            .times(money.sum("over", Units.SHEET))
            .in(Units.USD)
            .toCents()
            .as("charge_for_the_ceiling_usd", Units.USD, STOP_LOSS);
    this.fixed =
        terms.extra().times(pricing.fixed()).in(Units.USD).toCents().as("fixed_usd", Units.USD);
    this.losses = lost();
    this.bad = counted();
    this.ways = roll(ways(pricing.forecast().figures()));
  }

  /** The three ways of a job. */
  public static DeckWays of(Estimate estimate, DeckPricing pricing) {
    return new DeckWays(estimate, pricing);
  }

  private Line line(CountLine count) {
    return new Line(
        count,
        terms.paid(count.sheets()),
        terms.paid(count.sheets().min(ceiling)),
        terms.costForeseen(count.sheets()),
        terms.costScattered(count.sheets()));
  }

  private Figure<Sheets> over(Line line) {
    return line.count()
        .chance()
        .times(line.count().sheets().minus(ceiling).max(NONE))
        .in(Units.SHEET);
  }

  private Roll lost() {
    return Roll.of(
        "deck_losses",
        "the chances of a loss",
        lines,
        Roll.<Line>column("sheets", line -> line.count().sheets()),
        Roll.column("unit_foreseen", line -> line.ifLost(line.paid(), line.foreseen())),
        Roll.column("unit_scattered", line -> line.ifLost(line.paid(), line.scattered())),
        Roll.column(
            "ceiling_foreseen", line -> line.ifLost(line.below().plus(charge), line.foreseen())),
        Roll.column(
            "ceiling_scattered", line -> line.ifLost(line.below().plus(charge), line.scattered())),
        Roll.column("fixed_foreseen", line -> line.ifLost(fixed, line.foreseen())),
        Roll.column("fixed_scattered", line -> line.ifLost(fixed, line.scattered())));
  }

  /** What the page says of the houses that it tells of, in places and as the bill counts them. */
  private Roll counted() {
    BadSheetForecast places = pricing.forecast().figures();
    List<List<Figure<Sheets>>> both =
        List.of(
            List.of(places.p50(), places.p80(), places.p90(), places.p95(), pricing.places()),
            sheets(places));
    List<String> words = List.of("bad places", "sheets on the bill");
    return Roll.of(
        "deck_bad",
        "how many are bad",
        List.of(0, 1),
        Roll.<Integer>column("what", row -> Choice.literal(words.get(row))),
        Roll.column("p50", row -> both.get(row).get(0)),
        Roll.column("p80", row -> both.get(row).get(1)),
        Roll.column("p90", row -> both.get(row).get(2)),
        Roll.column("p95", row -> both.get(row).get(3)),
        Roll.column("all", row -> both.get(row).get(4)));
  }

  private List<Figure<Sheets>> sheets(BadSheetForecast places) {
    List<Figure<Sheets>> sheets = new ArrayList<>();
    for (Figure<Sheets> each : List.of(places.p50(), places.p80(), places.p90(), places.p95())) {
      sheets.add(pricing.billed(each));
    }
    sheets.add(pricing.atWorst());
    return sheets;
  }

  private List<Way> ways(BadSheetForecast places) {
    List<Figure<Sheets>> sheets = sheets(places);
    return List.of(
        new Way(
            "unit price, sheets included",
            sheets.stream().map(terms::paid).map(Figure::toCents).toList(),
            money.sum("mean_paid_usd", Units.USD),
            "unit"),
        new Way(
            "unit price with a ceiling",
            sheets.stream()
                .map(each -> terms.paid(each.min(ceiling)).plus(charge).toCents())
                .toList(),
            money.sum("mean_below_usd", Units.USD).plus(charge),
            "ceiling"),
        new Way("fixed price", sheets.stream().map(each -> fixed).toList(), fixed, "fixed"));
  }

  private Roll roll(List<Way> ways) {
    return Roll.of(
        "deck_ways",
        "three ways to price the deck",
        ways,
        Roll.<Way>column("way", way -> Choice.literal(way.words())),
        Roll.column("p50_usd", way -> way.pays().get(0)),
        Roll.column("p80_usd", way -> way.pays().get(1)),
        Roll.column("p90_usd", way -> way.pays().get(2)),
        Roll.column("p95_usd", way -> way.pays().get(3)),
        Roll.column("all_usd", way -> way.pays().get(4)),
        Roll.column("keeps_foreseen_usd", way -> kept(way, "foreseen")),
        Roll.column("loses_foreseen_pct", way -> lost(way, "foreseen")),
        Roll.column("keeps_scattered_usd", way -> kept(way, "scattered")),
        Roll.column("loses_scattered_pct", way -> lost(way, "scattered")));
  }

  private Figure<Money> kept(Way way, String kind) {
    return way.taken()
        .minus(money.sum("mean_" + kind + "_usd", Units.USD))
        .toCents()
        .as("%s_keeps_%s_usd".formatted(way.name(), kind), Units.USD);
  }

  private Figure<Ratio> lost(Way way, String kind) {
    return losses
        .sum(way.name() + "_" + kind, Units.RATIO)
        .as("%s_loses_%s_pct".formatted(way.name(), kind), Units.PERCENT);
  }

  /** Who carries what was not foreseen, by what each way is called. */
  public Map<String, Choice<String>> carriers() {
    Map<String, Choice<String>> carriers = new LinkedHashMap<>();
    carriers.put(
        "Unit price",
        Choice.sentence(
            Choice.literal("The owner, sheet by sheet, up to "),
            pricing.atWorst(),
            Choice.literal(" on the bill; the firm only what is scattered among the first ones.")));
    Condition isAll = ceiling.isAtLeast(pricing.atWorst());
    carriers.put(
        "With a ceiling",
        Choice.choose(
            isAll,
            Choice.literal("The owner all of it: a ceiling at every sheet of the map is none."),
            Choice.sentence(
                Choice.literal("The owner up to "),
                ceiling,
                Choice.literal(" on the bill, the firm every one above it."))));
    carriers.put(
        "Fixed",
        Choice.literal(
            "The firm, however many there are; the owner of a sound deck pays for those of bad ones."));
    return carriers;
  }

  /** What each number of bad places comes to. */
  public Roll money() {
    return money;
  }

  /** How likely the firm loses, number by number. */
  public Roll losses() {
    return losses;
  }

  /** How many are bad in the houses that the page tells of. */
  public Roll badInHouses() {
    return bad;
  }

  /** The three ways, a line each. */
  public Roll roll() {
    return ways;
  }

  /** The ceiling that the page is worked out with. */
  public Figure<Sheets> ceiling() {
    return ceiling;
  }

  /** What the ceiling costs the firm on average, to be put into the price. */
  public Figure<Money> charge() {
    return charge;
  }

  /** One price for the whole deck. */
  public Figure<Money> fixed() {
    return fixed;
  }
}
