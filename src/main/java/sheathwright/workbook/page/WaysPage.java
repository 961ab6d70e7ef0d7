package sheathwright.workbook.page;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.forecast.Chances;
import sheathwright.job.Estimate;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.table.Field;
import sheathwright.life.found.FoundWork;
import sheathwright.life.unseen.DeckNumbers;
import sheathwright.life.unseen.DeckPricing;
import sheathwright.life.unseen.DeckWays;
import sheathwright.life.unseen.ForecastBasis;
import sheathwright.life.unseen.JobForecast;
import sheathwright.life.unseen.OfficeShare;
import sheathwright.life.unseen.ZoneList;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.ChanceChart;

/**
 * How many sheets are likely bad that nobody has seen, and three ways to price them: for the office
 * alone. Its chances stand on a tab of their own, on which every price is worked out.
 */
final class WaysPage {

  private static final int BAD = 0;
  private static final int CHANCE = 1;

  /** Rarer counts are not drawn. */
  private static final double TOO_RARE_TO_DRAW = 0.004;

  private static final String FORESEEN_OR_NOT =
      "Foreseen: the sheets in the price cost what a planned one does; scattered: each costs what one found on the day does. Both with overhead and without margin, so that what is kept is for the margin. The rest of the quote is the same in every line.";
  private static final String CAUTION =
      "A forecast is no better than its history: crews that find sheets because they earn on them, another idea of bad, another crew or region, and leaky roofs that come first all bend it. What was seen was not chosen blindly, and sheets beside each other rot together. It informs the price; the map and the photographs decide the bill.";
  private static final List<Unit<?>> SHEETS =
      Sections.units(null, Units.SHEET, Units.SHEET, Units.SHEET, Units.SHEET, Units.SHEET);

  private final Book book;
  private final Tab tab;
  private final Tab chances;
  private final Estimate estimate;
  private final JobForecast forecast;
  private final Optional<JobForecast> now;
  private final DeckPricing pricing;
  private final DeckWays ways;
  private final DeckNumbers numbers;

  private WaysPage(
      Book book,
      Estimate estimate,
      JobForecast forecast,
      Optional<JobForecast> now,
      Tab tab,
      Tab chances) {
    this.now = now;
    this.book = book;
    this.tab = tab;
    this.chances = chances;
    this.estimate = estimate;
    this.forecast = forecast;
    this.pricing = DeckPricing.of(estimate, forecast);
    this.ways = DeckWays.of(estimate, pricing);
    this.numbers = DeckNumbers.of(estimate.job(), pricing);
  }

  /** The tab of a job's page, if there is anything to forecast from. */
  static Optional<Tab> tab(Book book, Estimate estimate, String subtitle) {
    return ForecastBasis.isGiven(estimate)
        ? Optional.of(
            Sections.titled(
                    book.tab("Pricing the deck", 34, 10, 10, 10, 10, 11, 11, 9, 11, 9), subtitle)
                .onOnePage())
        : Optional.empty();
  }

  /** The tab that holds its chances. */
  static Tab chancesTab(Book book, String subtitle) {
    return Sections.titled(
            book.tab("Deck chances", 12, 12, 12, 12, 12, 12, 14, 14, 14, 14), subtitle)
        .keptBack();
  }

  /** The page of a job, to be written on its tabs. */
  static WaysPage of(Book book, Estimate estimate, FoundWork work, Tab tab, Tab chances) {
    Optional<JobForecast> now =
        JobForecast.hasBegun(estimate, work)
            ? Optional.of(JobForecast.now(estimate, work, Set.of()))
            : Optional.empty();
    return new WaysPage(book, estimate, JobForecast.before(estimate), now, tab, chances);
  }

  /** That the chances were solved for what stands in the workbook. */
  List<Estimate.Tie> ties() {
    return Stream.concat(Stream.of(forecast), now.stream())
        .map(JobForecast::solution)
        .map(Estimate.Tie::solved)
        .toList();
  }

  void write() {
    Listing counted = chances();
    likely();
    ChanceChart.draw(
        book,
        tab,
        "How likely each number of bad places is",
        "bad places of the deck",
        new ChanceChart.Part(counted, lastDrawn(), BAD, CHANCE));
    ways();
    numbers();
    tab.heading("Before anybody leans on it");
    tab.paragraph(CAUTION);
  }

  /** What everything on the page is worked out from, line by line. */
  private Listing chances() {
    chances.heading("The chance of each number of bad places");
    Listing counted =
        chances.list(
            pricing.counts(),
            List.of(
                "Bad places",
                "Chance",
                "No more",
                "More on average",
                "Sheets on the bill",
                "Not enough in the price",
                "Not enough for a fixed price",
                "Ceiling costs too much"),
            Sections.units(
                Units.SHEET,
                Units.RATIO,
                Units.RATIO,
                Units.SHEET,
                Units.SHEET,
                Units.SHEET,
                Units.SHEET,
                Units.SHEET));
    chances.heading("What each comes to");
    chances.list(ways.money());
    chances.heading("The chance that the firm loses by it");
    chances.list(ways.losses());
    chances.heading("The chance that more is found than the office sets");
    chances.list(numbers.passed());
    return counted;
  }

  private int lastDrawn() {
    Chances all = forecast.chances();
    int last = Math.min(1, all.most());
    while (last < pricing.counts().rows().size() - 1 && all.moreThan(last) > TOO_RARE_TO_DRAW) {
      last++;
    }
    return last;
  }

  private void likely() {
    tab.heading("How many sheets of this deck are likely bad");
    now.ifPresent(
        open -> {
          tab.sentence(open.inHouses());
          tab.note("What follows is as it was before anything was open, which is what was priced.");
        });
    tab.sentence(forecast.inHouses());
    tab.list(
        ways.badInHouses(),
        List.of("Not more than, in", "Half", "8 of 10", "9 of 10", "19 of 20", "All bad"),
        SHEETS);
    tab.list(
        ZoneList.of(estimate, forecast),
        List.of("Zone", "Places", "Seen", "Of which bad", "Odds", "Shows, %", "9 of 10"),
        Sections.units(
            null, Units.SHEET, Units.RATIO, Units.RATIO, Units.RATIO, Units.PERCENT, Units.SHEET));
    tab.fact("What is known of other houses", forecast.told());
    said(ForecastFields.BAD_ALPHA, forecast.share().alpha(), "");
    said(ForecastFields.BAD_BETA, forecast.share().beta(), "");
    tab.entry(
        "Sheets a place on the bill", pricing.perPlace(), "small pieces count less than a sheet");
  }

  private void ways() {
    tab.heading("Three ways to price it: what the owner pays for the deck");
    tab.list(
        ways.roll(),
        List.of(
            "Way",
            "Half",
            "8 of 10",
            "9 of 10",
            "19 of 20",
            "All bad",
            "Firm keeps, foreseen",
            "Loses in, %",
            "Firm keeps, scattered",
            "Loses in, %"),
        Sections.units(
            null,
            Units.USD,
            Units.USD,
            Units.USD,
            Units.USD,
            Units.USD,
            Units.USD,
            Units.PERCENT,
            Units.USD,
            Units.PERCENT));
    tab.note(FORESEEN_OR_NOT);
    ways.carriers().forEach((way, who) -> tab.said(way + ": who carries the rest", who));
    tab.entry(
        "Charge for the ceiling",
        ways.charge(),
        "to be put into the price: what the firm carries above it costs so much on average");
    tab.shown(
        "Fixed price is made for", pricing.fixed(), "each at the price of one found on the day");
  }

  private void numbers() {
    tab.heading("What follows for this job");
    tab.list(
        numbers.roll(),
        List.of("What the office sets", "In this job", "Passed in, %", "Suggested", "Passed in, %"),
        Sections.units(null, Units.SHEET, Units.PERCENT, Units.SHEET, Units.PERCENT));
    tab.entry(
        "Houses in which they are to be enough",
        pricing.ratio(),
        "then the sheets in the price cost the owner least on average; a credit near the price makes any number fair");
    said(ForecastFields.NUISANCE, pricing.nuisance(), OfficeShare.GUESS);
    said(ForecastFields.FIXED_SURE, pricing.sure(), OfficeShare.GUESS);
    said(ForecastFields.CEILING_CHARGE, pricing.mostCharge(), OfficeShare.GUESS);
    tab.entry(
        "15 % over the price's sheets",
        pricing.beyondTheQuantity(), "public work reopens a unit price there (48 CFR 11.702)");
  }

  /** What the office may say in its rates, and what holds where it does not. */
  private void said(Field<?> field, Figure<?> value, String otherwise) {
    String note =
        value.source().cell().isPresent()
            ? ""
            : Stream.of(otherwise, field.name() + " in rates.csv says another")
                .filter(any -> !any.isEmpty())
                .collect(joining(": "));
    tab.shown(field.label(), value, note);
  }
}
