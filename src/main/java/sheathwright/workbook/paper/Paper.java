package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.table.Field;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
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

  private final Job job;
  private final Book book;
  private final String subtitle;
  private final List<Tab> pages = new ArrayList<>();
  private PhonePage phone;

  /**
   * An empty document.
   *
   * @param kind what it is, with its number and day
   */
  Paper(Estimate estimate, String kind) {
    job = estimate.job();
    book = new Book(Audience.homeowner(job));
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
    return page(book.tab(name, widths));
  }

  /** Lets a tab be such a page. */
  Tab page(Tab tab) {
    pages.add(tab);
    return Sections.titled(tab, subtitle);
  }

  /** The first page, for a phone, which says at its end how the self-check stands. */
  PhonePage phonePage(String name) {
    phone = PhonePage.of(book, name, subtitle);
    return phone;
  }

  /** What the job says in words; a dash where it says nothing. */
  String said(Field<Choice<String>> fact) {
    return job.knows(fact) ? job.fact(fact).value() : "–";
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

  private byte[] written(List<Estimate.Tie> ties, List<Figure<Money>> headlines) {
    Tab working = page(Sections.workingTab(book, subtitle));
    Tab tables = page(Sections.tablesTab(book, subtitle));
    Tab check = page(Sections.tab(book, "Self-check", subtitle));
    Selfcheck selfcheck = new Selfcheck(ties);
    selfcheck.write(check, headlines);
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
