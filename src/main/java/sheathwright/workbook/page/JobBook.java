package sheathwright.workbook.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.QuoteLines;
import sheathwright.job.table.Dates;
import sheathwright.life.bill.Accounts;
import sheathwright.life.doubt.Doubts;
import sheathwright.life.found.FoundWork;
import sheathwright.life.found.SheetsSettled;
import sheathwright.life.record.Bill;
import sheathwright.life.record.Issue;
import sheathwright.life.record.Revisions;
import sheathwright.life.supply.Supply;
import sheathwright.life.supply.WorkHours;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.file.Particulars;

/** The office's workbook of a job: what is known, what to buy, what it costs and why. */
public final class JobBook {

  private final Estimate estimate;
  private final Book book;
  private final String kind;
  private final String document;
  private final QuoteLines quote;
  private final LevelPages levels;
  private final FoundWork work;
  private final SheetsSettled settled;
  private final Supply supply;
  private final Revisions revisions;
  private final Optional<Accounts> agreed;

  private JobBook(
      Estimate estimate,
      SheetsSettled settled,
      Revisions revisions,
      String kind,
      String document,
      LocalDate on) {
    this.document = document;
    this.estimate = estimate;
    this.book = new Book(Particulars.of(estimate.job(), kind, Optional.of(on)));
    this.kind = kind;
    this.quote = estimate.quote();
    this.levels = new LevelPages(book, estimate);
    this.work = settled.work();
    this.settled = settled;
    this.supply = new Supply(estimate, work.quantities());
    this.revisions = revisions;
    this.agreed = Bill.soFar(estimate);
  }

  /** The office's own: what is known, what to buy, what it costs and why. */
  public static JobBook estimate(Estimate estimate) {
    return estimate(estimate, SheetsSettled.of(estimate));
  }

  static JobBook estimate(Estimate estimate, SheetsSettled settled) {
    return estimate(estimate, settled, Revisions.first(1, estimate));
  }

  /** The same as one of several issues. */
  static JobBook estimate(Estimate estimate, SheetsSettled settled, Revisions revisions) {
    return new JobBook(
        estimate,
        settled,
        revisions,
        "estimate, for the office only",
        "",
        Dates.read(estimate.job().fact(JobFields.QUOTE_DATE).value()));
  }

  /** The same as it stood when a quote went out. */
  static JobBook estimate(Estimate estimate, SheetsSettled settled, Issue issue) {
    return new JobBook(
        estimate,
        settled,
        Revisions.first(issue.number(), estimate),
        "estimate of " + issue.document() + ", for the office only",
        issue.estimate(),
        issue.on().day());
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
        JobTabs.of(
            book,
            estimate,
            work,
            revisions,
            estimate.job().fact(JobFields.JOB_NAME).value() + " · " + kind,
            agreed);
    book.draws(List.of(work.solution()));
    KnownPage.write(tabs.known(), estimate, quote, levels);
    DeckPages.found(tabs.found(), estimate, work);
    StopPage.write(tabs.stops(), estimate);
    DeckPages.work(tabs.work(), estimate);
    levels.charts(tabs.work());
    Sections.cautions(tabs.work());
    for (CrewPage page : tabs.crew()) {
      page.write(supply, page == tabs.crew().get(0));
    }
    OrderPage.write(tabs.order(), estimate, supply);
    HoursPage.write(tabs.hours(), estimate, new WorkHours(estimate, work.quantities(), supply));
    LayoutPage.write(tabs.layout(), estimate, levels);
    CostPage.write(tabs.costs(), estimate, quote);
    SheetsPage.write(tabs.sheets(), estimate, work, settled);
    tabs.ways().ifPresent(WaysPage::write);
    tabs.marks().ifPresent(tab -> MarksPage.write(book, tab, estimate));
    ProofPage.write(tabs.proof(), estimate);
    new FrontPage(tabs.front(), estimate, quote, document, Doubts.of(estimate, settled)).write();
    Selfcheck selfcheck = new Selfcheck(ties(tabs), estimate.checksNotLookedAt());
    selfcheck.write(tabs.check(), List.of(quote.total(), quote.worstCase()));
    Sections.titles(book, selfcheck);
    return book.finished(tabs.working(), tabs.tables());
  }

  private List<Estimate.Tie> ties(JobTabs tabs) {
    List<Estimate.Tie> ties = new ArrayList<>();
    ties.add(
        Estimate.Tie.all(
            "Every number told twice says the same in both places", "told_again_", book.repeats()));
    ties.addAll(estimate.ties(quote));
    ties.addAll(settled.ties());
    tabs.ways().map(WaysPage::ties).ifPresent(ties::addAll);
    agreed.ifPresent(accounts -> ties.addAll(accounts.ties()));
    return ties;
  }
}
