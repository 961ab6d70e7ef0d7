package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.QuoteLines;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.LinesChart;

/**
 * The homeowner's workbook of a job. Every price in it is restated as it was quoted: no cost,
 * overhead, margin or wage stands anywhere in the file, and no formula leads to one.
 */
public final class QuoteBook {

  private static final List<String> FACTS =
      List.of("job_name", "customer", "site", "prepared_by", "quote_number", "quote_date");

  private static final String WORST = "by area or as they are laid, whichever are more";

  private final Estimate estimate;
  private final Job job;
  private final QuoteLines quote;
  private final Audience audience;
  private final Book book;
  private final LevelPages levels;
  private final Selfcheck selfcheck;

  private QuoteBook(Estimate estimate) {
    this.estimate = estimate;
    this.job = estimate.job();
    this.audience = Audience.homeowner(job);
    this.book = new Book(audience);
    this.quote = estimate.quote().restated(estimate);
    this.levels = new LevelPages(book, estimate);
    this.selfcheck = new Selfcheck(ties());
  }

  /** The workbook of a quote, as the bytes of an .xlsx file; refused if a cell has no value. */
  public static byte[] bytes(Estimate estimate) {
    QuoteBook book = new QuoteBook(estimate);
    return JobBooks.laidOut(book.book, book::written);
  }

  /** The same, for tests that need to know where each input stands. */
  public static Book book(Estimate estimate, java.util.function.Consumer<byte[]> bytes) {
    QuoteBook written = new QuoteBook(estimate);
    bytes.accept(JobBooks.laidOut(written.book, written::written));
    return written.book;
  }

  private List<Estimate.Tie> ties() {
    List<Estimate.Tie> ties = new ArrayList<>();
    ties.addAll(quote.ties());
    ties.add(estimate.sheetsTie());
    ties.add(estimate.stopTie());
    ties.add(
        new Estimate.Tie(
            "The total is not more than the worst case",
            quote.total().isAtMost(quote.worstCase())));
    estimate.solvedTies().stream().filter(tie -> audience.maySee(tie.holds())).forEach(ties::add);
    return ties;
  }

  private byte[] written() {
    String subtitle = job.text("job_name").plain() + " · quote " + job.text("quote_number").plain();
    JobTabs tabs = JobTabs.of(book, estimate, subtitle);
    known(tabs.known());
    DeckPages.found(tabs.found(), estimate);
    DeckPages.work(tabs.work(), estimate);
    levels.charts(tabs.work());
    Sections.cautions(tabs.work());
    buy(tabs.buy());
    Listing lines = costs(tabs.costs());
    ProofPage.write(tabs.proof(), estimate);
    selfcheck.write(tabs.check(), List.of(quote.total(), quote.worstCase()));
    front(tabs.front(), lines);
    Sections.titles(book, selfcheck);
    return book.finished(tabs.working(), tabs.tables());
  }

  private void front(Tab tab, Listing lines) {
    tab.heading("Your quote");
    for (String fact : FACTS) {
      tab.link(Sections.label(job, fact), job.text(fact), "");
    }
    tab.link("Price good for, days", fact("valid_days"), "from the date of the quote");
    tab.heading("The price");
    tab.linkedTotal("You pay", quote.total(), "line by line on the tab What it costs");
    tab.link("Deck sheets in that price", estimate.plannedSheets(), "");
    tab.link(
        "Each sheet more, if it is found bad",
        quote.extraSheet(),
        "shown to you before it is covered");
    tab.link("Credit for each sheet that is not needed", quote.credit(), "");
    tab.link("Most it can come to, every sheet bad", quote.worstCase(), "");
    tab.linkedVerdict("Your rafters", estimate.framing().decision());
    tab.paragraph(Cautions.SCREENING + " " + Cautions.SISTERS);
    tab.heading("Where the money goes");
    LinesChart.draw(book, tab, lines);
    tab.heading("Why a price for sheets that nobody has seen");
    tab.paragraph(
        "The wood deck under the old roof cannot be seen until the roof is off. So the price holds a number of sheets, and"
            + " says now what each one more, or each one fewer, will change. One sheet is a panel of up to 4 by 8 ft taken"
            + " out, replaced, nailed and carried away.");
    said("looked_at", "We looked at: ", tab);
    said("not_looked_at", "We could not see: ", tab);
    tab.heading("Agreed");
    tab.fact("Homeowner, date", "");
    tab.fact("Contractor, date", "");
    tab.paragraph(
        "Local law decides what a contract must say. This quote is not one until both have signed a contract that does.");
  }

  private void said(String fact, String before, Tab tab) {
    if (job.knows(fact)) {
      tab.paragraph(before + job.text(fact).plain());
    }
  }

  private Traced fact(String name) {
    return job.given(name);
  }

  private void known(Tab tab) {
    tab.heading("Facts of the job");
    job.labeledFacts()
        .forEach(
            (label, value) -> {
              boolean isPrice = value instanceof Figure<?> figure && isMoney(figure);
              if (!isPrice) {
                tab.entry(label, value, "");
              }
            });
    DeckPages.measured(tab, estimate);
    levels.readings(tab);
    tab.heading("Prices, as quoted");
    tab.entry("An extra sheet", quote.extraSheet(), "");
    tab.entry("Credit for a sheet not needed", quote.credit(), "");
  }

  private static boolean isMoney(Figure<?> figure) {
    return figure.unit().symbol().startsWith("$");
  }

  private void buy(Tab tab) {
    tab.heading("Materials included");
    tab.link("Deck sheets", estimate.plannedSheets(), "");
    tab.entry("Sheets of the whole deck", estimate.deckSheets(), "a count by area");
    tab.entry("The same, as they would be laid", estimate.deck().layout().sheets(), "");
    tab.entry("Deck sheets, if all were replaced", estimate.sheetsAtWorst(), WORST);
    tab.entry("Nails in each sheet", estimate.nailsInASheet(), "");
    levels.stock(tab);
  }

  private Listing costs(Tab tab) {
    Listing lines = Sections.lines(tab, estimate, quote);
    tab.heading("If more is found");
    tab.link("An extra sheet", quote.extraSheet(), "");
    tab.link("Credit for a sheet not needed", quote.credit(), "");
    tab.entry("Sheets that could still turn out bad", quote.mostExtraSheets(), WORST);
    tab.total("Most it can come to", quote.worstCase(), "every sheet of the deck replaced");
    return lines;
  }
}
