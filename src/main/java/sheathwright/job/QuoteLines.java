package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The lines that the homeowner pays, their total, and the prices of what may be found besides. */
public final class QuoteLines {

  private static final Figure<Sheets> NO_SHEETS = Figure.of(0, Units.SHEET);

  /**
   * One line.
   *
   * @param item what it is for
   * @param quantity how many
   * @param unit of what
   * @param price of each, as quoted
   */
  public record Line(String item, Figure<?> quantity, String unit, Figure<?> price) {

    Figure<Money> amount() {
      return quantity.times(price).in(Units.USD).toCents();
    }
  }

  private final List<Line> lines;
  private final Roll roll;
  private final Figure<Money> sumOfLines;
  private final Figure<Money> total;
  private final Figure<Per<Money, Sheets>> extraSheet;
  private final Figure<Per<Money, Sheets>> credit;
  private final Figure<Sheets> mostExtraSheets;
  private final Figure<Money> worstCase;

  QuoteLines(Job job, Estimate estimate) {
    this(
        linesOf(job, estimate),
        estimate.extraSheet().quoted(),
        job.fact("credit_usd", Units.USD_PER_SHEET),
        estimate.plannedSheets(),
        estimate.deckSheets());
  }

  private QuoteLines(
      List<Line> lines,
      Figure<Per<Money, Sheets>> extraSheet,
      Figure<Per<Money, Sheets>> credit,
      Figure<Sheets> planned,
      Figure<Sheets> deck) {
    this.lines = lines;
    this.extraSheet = extraSheet;
    this.credit = credit;
    roll =
        Roll.of(
            "lines",
            "the lines of the quote",
            lines,
            Roll.<Line>column("item", line -> Choice.literal(line.item())),
            Roll.column("quantity", Line::quantity),
            Roll.column("unit", line -> Choice.literal(line.unit())),
            Roll.column("price_usd", Line::price),
            Roll.column("amount_usd", Line::amount));
    sumOfLines = roll.sum("amount_usd", Units.USD);
    total = sumOfLines.as("quote_total_usd", Units.USD);
    mostExtraSheets = deck.minus(planned).orIfMore(NO_SHEETS).as("most_extra_sheets", Units.SHEET);
    worstCase =
        total
            .plus(mostExtraSheets.times(extraSheet).in(Units.USD).toCents())
            .as("worst_case_usd", Units.USD);
  }

  private static List<Line> linesOf(Job job, Estimate estimate) {
    List<Line> lines = new ArrayList<>();
    Figure<?> once = Figure.of(1, Units.RATIO);
    lines.add(new Line("Covering", once, "job", job.fact("base_roofing_usd", Units.USD)));
    lines.add(new Line("Permit", once, "job", job.fact("permit_usd", Units.USD)));
    if (job.knows("engineer_usd")) {
      lines.add(new Line("Engineer's letter", once, "job", job.fact("engineer_usd", Units.USD)));
    }
    lines.add(
        new Line(
            "Deck sheets taken out and replaced",
            estimate.plannedSheets(),
            "sheet",
            estimate.plannedSheet().quoted()));
    estimate
        .rafterLevelling()
        .ifPresent(
            levelling -> {
              lines.add(
                  new Line(
                      "Rafters sistered to a string line",
                      levelling.sisters(),
                      "rafter",
                      levelling.sisterPrice().quoted()));
              lines.add(
                  new Line(
                      "Rafters shimmed",
                      levelling.shims(),
                      "rafter",
                      levelling.shimPrice().quoted()));
            });
    return lines;
  }

  /**
   * The same quote with every price restated: whoever receives it learns the price, not how it was
   * built up.
   *
   * @param estimate the estimate that it belongs to
   */
  public QuoteLines restated(Estimate estimate) {
    List<Line> told =
        lines.stream()
            .map(line -> new Line(line.item(), line.quantity(), line.unit(), told(line.price())))
            .toList();
    return new QuoteLines(
        told, told(extraSheet), told(credit), estimate.plannedSheets(), estimate.deckSheets());
  }

  private static <Q extends sheathwright.figure.Quantity> Figure<Q> told(Figure<Q> price) {
    Source source = Source.given("as quoted");
    return price.restated(
        price.name(), sheathwright.figure.Limits.between(0, 1_000_000, ""), source);
  }

  public Roll roll() {
    return roll;
  }

  Figure<Money> sumOfLines() {
    return sumOfLines;
  }

  public Figure<Money> total() {
    return total;
  }

  public Figure<Per<Money, Sheets>> extraSheet() {
    return extraSheet;
  }

  public Figure<Per<Money, Sheets>> credit() {
    return credit;
  }

  public Figure<Sheets> mostExtraSheets() {
    return mostExtraSheets;
  }

  public Figure<Money> worstCase() {
    return worstCase;
  }
}
