package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.table.Moment;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Particulars;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.book.TabCell;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.page.Selfcheck;

/**
 * A document for whoever pays for the job, in the making: its pages, and at its end the self-check
 * with whatever steps and tables stand on none of them.
 */
final class Paper {

  private static final int STATE_CHARACTERS = 30;
  private static final int FACT_CHARACTERS = 60;

  private final Job job;
  private final Book book;
  private final String subtitle;
  private final String document;
  private final List<Tab> pages = new ArrayList<>();
  private PhonePage phone;

  /**
   * An empty document.
   *
   * @param kind what it is, with its number and day
   * @param document what it is called behind the quote's number in the list of what was sent
   * @param on that day
   */
  Paper(Estimate estimate, String kind, String document, Moment on) {
    this.document = estimate.job().fact(JobFields.QUOTE_NUMBER).value() + document;
    job = estimate.job();
    book = new Book(Audience.homeowner(job), Particulars.of(job, kind, Optional.of(on.day())));
    book.leaveOutEmptyPages();
    book.showCountsPlainly();
    subtitle = kind;
  }

  Book book() {
    return book;
  }

  String subtitle() {
    return subtitle;
  }

  /** A page that says at its top how the self-check stands. */
  Tab page(String name, int... widths) {
    Tab tab = Sections.titled(book.tab(name, widths), subtitle);
    pages.add(tab);
    return tab;
  }

  /** The first page, for a phone, which says at its end how the self-check stands. */
  PhonePage phonePage(String name) {
    phone = PhonePage.of(book, name, subtitle);
    return phone;
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
    tab.row(line).height(Tab.LINE_HEIGHT * (1 + words.length() / FACT_CHARACTERS) + 2);
  }

  /** A column of words that nobody computes with. */
  static <T> Roll.Column<T> words(String name, java.util.function.Function<T, String> words) {
    return Roll.column(name, item -> (Traced) Choice.literal(words.apply(item)));
  }

  /**
   * The file.
   *
   * @param pages writes them all
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  byte[] bytes(Supplier<List<Estimate.Tie>> pages, List<Figure<Money>> headlines) {
    return JobBooks.laidOut(book, () -> written(pages.get(), headlines));
  }

  /** A document that went out never comes to anything else again, whatever is deleted from it. */
  private List<Estimate.Tie> with(List<Estimate.Tie> ties, List<Figure<Money>> headlines) {
    List<Estimate.Tie> all = new ArrayList<>(ties);
    List<Condition> stand = headlines.stream().map(Paper::standsAsWritten).toList();
    addAll(all, "Each sum is what it was when this was written", "stands_as_written_", stand);
    addAll(
        all, "Every number told twice says the same in both places", "told_again_", book.repeats());
    return all;
  }

  private static Condition standsAsWritten(Figure<Money> headline) {
    return headline
        .toCents()
        .isTheSameAs(
            Figure.constant(
                "written_" + headline.name(),
                headline.toCents().value(),
                Units.USD,
                Source.derived("when this was written")));
  }

  private static void addAll(
      List<Estimate.Tie> all, String what, String name, List<Condition> conditions) {
    if (!conditions.isEmpty()) {
      all.add(Estimate.Tie.all(what, name, conditions));
    }
  }

  private byte[] written(List<Estimate.Tie> ties, List<Figure<Money>> headlines) {
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    pages.addAll(List.of(working, tables));
    Tab check = page("Self-check", 76, 12, 6, 6, 5, 5);
    Selfcheck selfcheck = new Selfcheck(with(ties, headlines));
    selfcheck.write(check, List.of());
    check.document(document);
    for (Tab tab : pages) {
      TabCell cell = tab.cell(1, tab.columnBefore(STATE_CHARACTERS));
      book.later(notation -> book.writeLink(cell, selfcheck.state(), notation));
    }
    if (phone != null) {
      phone.note(selfcheck.state());
    }
    return book.finished(working, tables);
  }
}
