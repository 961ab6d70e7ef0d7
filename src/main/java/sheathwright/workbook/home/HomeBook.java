package sheathwright.workbook.home;

import java.time.LocalDate;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.Refusals;
import sheathwright.job.table.Dates;
import sheathwright.life.record.Issue;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.told.Letterhead;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Sheaf;

/**
 * The homeowner's file: what is asked, what was seen, what may change, and how rafters will lie.
 */
public final class HomeBook {

  private final Estimate estimate;
  private final Book book;
  private final String subtitle;
  private final String document;
  private final LocalDate date;
  private final Photos photos;

  private HomeBook(Estimate estimate, Photos photos, String kind, String document, LocalDate date) {
    this.estimate = estimate;
    this.photos = photos;
    this.document = document;
    this.date = date;
    this.book =
        new Book(
            Audience.homeowner(estimate.job()),
            Particulars.of(estimate.job(), kind, Optional.of(date)));
    subtitle =
        "%s · %s · %s"
            .formatted(
                estimate.job().fact(JobFields.PREPARED_BY).value(), kind, Dates.inWords(date));
  }

  /** The file of an estimate, not issued yet, without photographs. */
  public static HomeBook of(Estimate estimate) {
    return of(estimate, Photos.none());
  }

  /** The file of an estimate, not issued yet. */
  public static HomeBook of(Estimate estimate, Photos photos) {
    Job job = estimate.job();
    return new HomeBook(
        estimate,
        photos,
        job.isNumbered()
            ? "draft of quote " + job.fact(JobFields.QUOTE_NUMBER).value()
            : "draft of a quote, not numbered yet",
        "",
        Dates.read(job.fact(JobFields.QUOTE_DATE).value()));
  }

  /** The file that goes out. */
  public static HomeBook of(Estimate estimate, Photos photos, Issue issue) {
    return new HomeBook(
        estimate, photos, "quote " + issue.document(), issue.document(), issue.on().day());
  }

  /**
   * The file's bytes; made once.
   *
   * @throws sheathwright.job.table.ProblemsException if a number in it is refused
   */
  public byte[] bytes() {
    Refusals refusals = new Refusals();
    var bytes = refusals.tried(this::written);
    book.refused().forEach(refusals::add);
    refusals.raise();
    return bytes.orElseThrow();
  }

  /** What it is laid out in, which knows where each input stands. */
  public Book book() {
    return book;
  }

  private byte[] written() {
    Letter quote = letter("Your quote", 34, 10, 12, 14, 15);
    Sheaf seen = Sheaf.of("What we found", name -> letter(name, 34, 12, 20, 30).tab());
    QuotePage page = new QuotePage(quote, estimate, document, date);
    Letterhead.write(quote, estimate.job().firm());
    page.write();
    new SeenPage(seen, estimate, photos).write();
    page.writeOnceMore(seen);
    new TermsPage(letter("What you get", 30, 16, 16, 16, 14), estimate).write();
    RaftersPage.write(book, estimate, () -> letter("Your rafters", 20, 17, 17, 17, 17));
    return book.finished();
  }

  private Letter letter(String name, int... widths) {
    Tab tab = book.tab(name, widths);
    for (int column = 0; column < tab.columns(); column++) {
      tab.text(0, column, column == 0 ? name : "", Part.TITLE);
      tab.text(1, column, column == 0 ? subtitle : "", Part.SUBTITLE);
    }
    tab.row(0).height(28);
    tab.row(1).height(18);
    return Letter.on(tab);
  }
}
