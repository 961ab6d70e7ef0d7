package sheathwright.workbook.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sheathwright.figure.Choice;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.table.Moment;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.Sheaf;

/**
 * A document for whoever pays for the job, in the making. Everything in it is the reader's: each
 * number that another is made from stands on one of its pages, and each page is one sheet of paper.
 */
final class Paper {

  private static final String TIES = "The numbers are as they were written.";
  private static final String CHANGED = "A number was changed: ask us before you sign or pay.";

  private final Book book;
  private final String subtitle;
  private final String document;

  /**
   * An empty document.
   *
   * @param kind what it is, with its number and day
   * @param document what it is called behind the quote's number in the list of what was sent
   * @param on that day
   */
  Paper(Estimate estimate, String kind, String document, Moment on) {
    this(
        estimate.job(),
        kind,
        estimate.job().fact(JobFields.QUOTE_NUMBER).value() + document,
        Optional.of(on.day()));
  }

  /**
   * A view of a job's tables as they stand, which bears no number and no day.
   *
   * @param kind what it is
   */
  Paper(Estimate estimate, String kind) {
    this(estimate.job(), kind, "", Optional.empty());
  }

  private Paper(Job job, String kind, String document, Optional<LocalDate> on) {
    this.document = document;
    book = new Book(Audience.homeowner(job), Particulars.of(job, kind, on));
    book.leaveOutEmptyPages();
    book.showCountsPlainly();
    subtitle = "%s · %s".formatted(job.fact(JobFields.PREPARED_BY).value(), kind);
  }

  /** A page, one sheet of paper. */
  Tab page(String name, int... widths) {
    return Sections.titled(book.tab(name, widths), subtitle).onOnePage();
  }

  /** A page that goes on on as many sheets of paper as it needs. */
  Sheaf sheaf(String name, int... widths) {
    return Sheaf.of(name, each -> page(each, widths));
  }

  /** A page for a phone. */
  PhonePage phonePage(String name) {
    return PhonePage.of(book, name, subtitle);
  }

  /** A fact in words that nobody computes with, as long as it may be. */
  static void fact(Tab tab, String label, String words) {
    int line = tab.line();
    int last = tab.columns() - 1;
    tab.text(line, 0, label, Part.LABEL);
    for (int column = 1; column <= last; column++) {
      tab.text(line, column, column == 1 ? words : "", Part.LISTED_TEXT);
    }
    tab.merge(line, 1, last);
    tab.row(line).height(Tab.LINE_HEIGHT * tab.linesOf(words, 1, last, Part.LISTED_TEXT) + 2);
  }

  /** A column of words that nobody computes with. */
  static <T> Roll.Column<T> words(String name, Function<T, String> words) {
    return Roll.column(name, item -> (Traced) Choice.literal(words.apply(item)));
  }

  /**
   * A list of words alone, which goes on on further sheets.
   *
   * @param name begins the names of its columns
   * @param rows each with as many words as there are headings
   */
  static void table(
      Sheaf sheaf, String name, String heading, List<String> headings, List<List<String>> rows) {
    List<Roll.Column<List<String>>> columns = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      int place = i;
      columns.add(words("column_" + (i + 1), row -> row.get(place)));
    }
    sheaf.list(
        heading,
        rows,
        (some, part) -> Roll.of(Sheaf.named(name, part), heading, some, columns),
        headings,
        Collections.nCopies(headings.size(), null));
  }

  /** The numbers of the document once more, and whether one of them was changed. */
  static Choice<String> told(OnceMore again, Sheaf sheaf) {
    return again.write(
        sheaf, "The numbers once more, as they were written", "As written", TIES, CHANGED);
  }

  /**
   * The file.
   *
   * @param pages writes them all
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  byte[] bytes(Runnable pages) {
    return JobBooks.laidOut(
        book,
        () -> {
          pages.run();
          book.tabs().iterator().next().document(document);
          return book.finished();
        });
  }
}
