package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.QuoteLines;
import sheathwright.life.found.FoundWork;
import sheathwright.life.found.SheetsSettled;
import sheathwright.life.record.Issue;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;

/**
 * The workbook of a job for one reader. Every reader gets the same tabs, made by the same pages;
 * the audience says what may stand on them. Nothing in a homeowner's file leads to a cost, and
 * every price in it is restated as it was quoted.
 */
public final class JobBook {

  private final Estimate estimate;
  private final Book book;
  private final String kind;
  private final QuoteLines quote;
  private final LevelPages levels;
  private final FoundWork work;
  private final SheetsSettled settled;

  private JobBook(
      Estimate estimate, Audience audience, String kind, QuoteLines quote, SheetsSettled settled) {
    this.estimate = estimate;
    this.book = new Book(audience);
    this.kind = kind;
    this.quote = quote;
    this.levels = new LevelPages(book, estimate);
    this.work = settled.work();
    this.settled = settled;
  }

  /** The office's own: what is known, what to buy, what it costs and why. */
  public static JobBook estimate(Estimate estimate) {
    return estimate(estimate, SheetsSettled.of(estimate), Optional.empty());
  }

  /** The same as it stands when an issue of the quote goes out, if one does. */
  static JobBook estimate(Estimate estimate, SheetsSettled settled, Optional<Issue> issue) {
    String of = issue.map(sent -> " of " + sent.document()).orElse("");
    return new JobBook(
        estimate,
        Audience.office(),
        "estimate" + of + ", for the office only",
        estimate.quote(),
        settled);
  }

  /**
   * The homeowner's, not issued yet: no cost, overhead, margin or wage stands anywhere in the file.
   */
  public static JobBook quote(Estimate estimate) {
    return quote(estimate, SheetsSettled.of(estimate), Optional.empty());
  }

  /** The same, a draft unless it is issued. */
  static JobBook quote(Estimate estimate, SheetsSettled settled, Optional<Issue> issue) {
    String draft = "draft of quote " + estimate.job().fact(JobFields.QUOTE_NUMBER).value();
    return new JobBook(
        estimate,
        Audience.homeowner(estimate.job()),
        issue.map(sent -> "quote " + sent.document()).orElse(draft),
        estimate.quote().restated(estimate),
        settled);
  }

  /**
   * The workbook as the bytes of an .xlsx file; made once.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return JobBooks.laidOut(book, this::written);
  }

  /** What it is laid out in, which knows where each input stands. */
  public Book book() {
    return book;
  }

  private byte[] written() {
    JobTabs tabs =
        JobTabs.of(book, estimate, estimate.job().fact(JobFields.JOB_NAME).value() + " · " + kind);
    KnownPage.write(tabs.known(), estimate, quote, levels);
    DeckPages.found(tabs.found(), estimate, work);
    StopPage.write(tabs.stops(), estimate);
    DeckPages.work(tabs.work(), estimate);
    levels.charts(tabs.work());
    Sections.cautions(tabs.work());
    BuyPage.write(tabs.buy(), estimate, levels);
    Listing lines = CostPage.write(tabs.costs(), estimate, quote);
    tabs.sheets().ifPresent(tab -> SheetsPage.write(tab, estimate, work, settled));
    tabs.marks().ifPresent(tab -> MarksPage.write(book, tab, estimate));
    ProofPage.write(tabs.proof(), estimate);
    new FrontPage(book, tabs.front(), estimate, quote).write(lines);
    Selfcheck selfcheck = new Selfcheck(ties(), estimate.checksNotLookedAt());
    selfcheck.write(tabs.check(), List.of(quote.total(), quote.worstCase()));
    Sections.titles(book, selfcheck);
    return book.finished(tabs.working(), tabs.tables());
  }

  /** The bill of what is found stands in the office's book alone. */
  private List<Estimate.Tie> ofMarks() {
    return book.audience().isOffice() ? settled.ties() : settled.tiesToTheMap();
  }

  private List<Estimate.Tie> ties() {
    List<Estimate.Tie> ties = new ArrayList<>();
    ties.add(
        Estimate.Tie.all(
            "Every number told twice says the same in both places", "told_again_", book.repeats()));
    Stream.concat(estimate.ties(quote).stream(), ofMarks().stream())
        .filter(tie -> book.audience().maySee(tie.holds()))
        .forEach(ties::add);
    return ties;
  }
}
