package sheathwright.workbook.own;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import sheathwright.figure.Check;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.job.file.NewFile;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Sections;

/**
 * A workbook of figures that somebody worked out: sections of named figures, notes and tables on
 * one page, every step on <i>Working</i>, every published value on <i>Tables</i>. A number that was
 * given is an input; change it in any spreadsheet program, and everything made from it follows.
 *
 * <pre>{@code
 * var deck = ft(42).times(ft(16.5)).in(Units.SQUARE_FOOT);
 * FigureBook.titled("Pine Street")
 *     .section("The deck")
 *     .figure("deck area", deck)
 *     .figure("sheets", sheetsByArea(deck, pct(10)))
 *     .note("Measured from the ground.")
 *     .save(Path.of("pine-street.xlsx"));
 * }</pre>
 *
 * <p>Once saved it is finished: nothing more goes in.
 *
 * @since 0.1
 */
public final class FigureBook {

  private static final String LEGAL = "[A-Za-z][A-Za-z0-9 _-]{0,59}";

  private final String title;
  private final Book book;
  private final Tab page;
  private final Set<String> names = new HashSet<>();
  private byte[] bytes;

  private FigureBook(String title) {
    this.title = title;
    this.book = new Book(Particulars.of(title, "Figures and what they are made from"));
    this.page = Sections.tab(book, "Figures", title);
    book.takeLiteralsAsInputs();
  }

  /** An empty workbook under a title. */
  public static FigureBook titled(String title) {
    if (title.isBlank()) {
      throw new RefusedException("a workbook's title is blank; say what it is of");
    }
    return new FigureBook(title.strip());
  }

  /** Begins a section. */
  public FigureBook section(String heading) {
    page().heading(heading);
    return this;
  }

  /** Sets a paragraph of plain words. */
  public FigureBook note(String words) {
    page().paragraph(words);
    return this;
  }

  /**
   * Sets a figure, a choice or a condition, in a cell that bears the name.
   *
   * @param name in words, such as {@code deck area}: the cell is called {@code deck_area}
   * @throws RefusedException if the name is none, is given already, or there is no value to set
   */
  public FigureBook figure(String name, Traced value) {
    return figure(name, value, value.step().isGiven() ? "given" : Working.symbols(value));
  }

  /**
   * The same with a note beside it instead of the formula in words.
   *
   * @throws RefusedException if the name is none, is given already, or there is no value to set
   */
  public FigureBook figure(String name, Traced value, String note) {
    String cell = cellName(name);
    value
        .refusal()
        .filter(refusal -> !refusal.isAnswer())
        .ifPresent(
            none -> {
              throw new RefusedException(name + " has no value: " + none.reason());
            });
    if (book.hasPlace(value)) {
      page().link(name, value, note);
    } else {
      page().variable(name, cell, value, note);
    }
    return this;
  }

  /** Sets how far a check is used, as a ratio: above 1 it does not hold. */
  public FigureBook figure(String name, Check check) {
    return figure(name, check.ratio());
  }

  /** Sets a list as a table with live cells, a line for each of its items. */
  public FigureBook table(Roll roll) {
    page().heading(roll.title());
    page().list(roll);
    return this;
  }

  /** The file's bytes; the same figures give the same bytes. */
  public byte[] bytes() {
    if (bytes == null) {
      bytes = book.finished(Sections.workingTab(book, title), Sections.tablesTab(book, title));
    }
    return bytes.clone();
  }

  /**
   * Writes the workbook, whole or not at all.
   *
   * @throws RefusedException if the file exists already, or cannot be written
   */
  public void save(Path file) {
    try {
      NewFile.once(file, "name another, or move it elsewhere").write(bytes());
    } catch (sheathwright.job.table.ProblemsException refused) {
      throw new RefusedException(refused.getMessage());
    }
  }

  private Tab page() {
    if (bytes != null) {
      throw new IllegalStateException("the workbook is finished: make another for more");
    }
    return page;
  }

  private String cellName(String name) {
    if (!name.matches(LEGAL)) {
      throw new RefusedException(
          "\"%s\" names no cell; write a letter, then up to 59 letters, digits and spaces, such as deck area"
              .formatted(name));
    }
    String cell = name.toLowerCase(Locale.ROOT).replaceAll("[ -]", "_");
    if (!names.add(cell)) {
      throw new RefusedException(
          "\"%s\" is named already in this workbook; name each of its figures otherwise, such as %s 2"
              .formatted(name, Shown.inWords(cell)));
    }
    return cell;
  }
}
