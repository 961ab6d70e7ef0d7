package sheathwright.workbook.book;

import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import sheathwright.figure.Shown;
import sheathwright.workbook.book.Look.Part;

/** The tab that lists every name of a workbook: what it is, and where, to be gone to. */
final class NamesPage {

  private static final List<String> HEADINGS = List.of("Name", "What it is", "Where it stands");
  private static final int[] WIDTHS = {44, 52, 30};
  private static final int WHERE = 2;

  private final Book book;
  private final Tab tab;

  private NamesPage(Book book, Tab tab) {
    this.book = book;
    this.tab = tab;
  }

  /**
   * Writes the tab, the last one.
   *
   * @param like a tab whose title lines say of the workbook what each tab's say
   */
  static void write(Book book, Tab like) {
    NamesPage page = new NamesPage(book, book.tab("Names", WIDTHS).keptBack());
    page.title(like);
    page.tab.note(
        "Inputs, results, totals, columns of lists and published tables have names; the steps between them are pointed"
            + " at by their cells.");
    page.head();
    book.ranges().defined().each(page::line);
  }

  private void title(Tab like) {
    for (int column = 0; column < WIDTHS.length; column++) {
      tab.text(0, column, column == 0 ? tab.name() : "", Part.TITLE);
      tab.text(1, column, column == 0 ? like.textAt(1, 0) : "", Part.SUBTITLE);
    }
    tab.row(0).height(28);
    tab.row(1).height(18);
    like.row(1).cells().stream()
        .filter(cell -> cell != null && !cell.formula().isEmpty())
        .forEach(cell -> tab.cell(1, 1).says(cell));
  }

  private void head() {
    for (int column = 0; column < HEADINGS.size(); column++) {
      tab.text(tab.next(), column, HEADINGS.get(column), Part.COLUMN_HEAD);
    }
    tab.skip(1);
    tab.repeatsLineAbove();
  }

  private void line(String name, String cells) {
    AreaReference area = new AreaReference(cells, SpreadsheetVersion.EXCEL2007);
    CellReference first = area.getFirstCell();
    String where = area.isSingleCell() ? address(first) : address(first) + ":" + last(area);
    int line = tab.line();
    List<String> words = List.of(name, what(name, area), where);
    for (int column = 0; column < words.size(); column++) {
      tab.text(line, column, words.get(column), column == WHERE ? Part.LINK : Part.LISTED_TEXT);
    }
    tab.raiseTo(line, words);
    tab.leadsTo(line, WHERE, cells, "Go to " + where);
  }

  private static String address(CellReference cell) {
    return cell.getSheetName() + ", " + bare(cell);
  }

  private static String last(AreaReference area) {
    return bare(area.getLastCell());
  }

  private static String bare(CellReference cell) {
    return new CellReference(cell.getRow(), cell.getCol()).formatAsString();
  }

  /** The label beside a cell, the heading above a column, or else the name in words. */
  private String what(String name, AreaReference area) {
    CellReference first = area.getFirstCell();
    Tab its = book.tabNamed(first.getSheetName());
    int row = area.isSingleCell() ? first.getRow() : first.getRow() - 1;
    int column = area.isSingleCell() ? 0 : first.getCol();
    boolean isLabeled = !area.isSingleCell() || first.getCol() == 1;
    String label = isLabeled ? its.textAt(row, column) : "";
    String words = Shown.inWords(name);
    if (label.isEmpty()) {
      return words;
    }
    return area.isSingleCell() ? label : "%s: %s".formatted(words, label);
  }
}
