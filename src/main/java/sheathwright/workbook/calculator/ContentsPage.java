package sheathwright.workbook.calculator;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.Card;
import sheathwright.catalog.StartingValues;
import sheathwright.job.solve.Solver;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/**
 * The page that leads to all others, by what somebody wants done, and says how to ask what no cell
 * can answer.
 */
final class ContentsPage {

  private static final int[] WIDTHS = {28, 80, 28};

  /** A heading is not left alone at the foot of a page; in points. */
  private static final double A_HEADING_AND_MORE = 100;

  private final Tab tab;

  private ContentsPage(Tab tab) {
    this.tab = tab;
  }

  /** Takes the first place of a book. */
  static ContentsPage of(Book book, String subtitle) {
    return new ContentsPage(Sections.titled(book.tab("Contents", WIDTHS), subtitle));
  }

  Tab tab() {
    return tab;
  }

  /** Writes it, now that each page has its place. */
  void write(Map<Calculator, Tab> pages, List<Calculator> solved, List<Solver> tables) {
    tab.paragraph(
        "Each page is one function of the library. Straw-colored cells with a frame are yours to change, within the words and"
            + " the range that show when you stand on them; everything else follows, and is locked against slips, without a"
            + " password. A cell that says #N/A was refused something: the page says what.");
    tab.paragraph("Planning help: local code and licensed practice decide.");
    byErrand(pages)
        .forEach(
            (errand, calculators) -> {
              Page.keepTogether(tab, A_HEADING_AND_MORE);
              tab.heading(errand.title());
              calculators.forEach(calculator -> line(calculator, pages.get(calculator)));
            });
    if (!solved.isEmpty()) {
      Page.keepTogether(tab, A_HEADING_AND_MORE);
      tab.heading("Solved, which no cell can do: ask for these at the command line");
      solved.forEach(calculator -> asked(calculator.card()));
    }
    if (!tables.isEmpty()) {
      tab.heading("Solved over a whole table");
      tab.paragraph(
          "Each reads a table and writes one: ./sheathwright solve --help has their columns and options.");
      tables.forEach(
          solver ->
              line(
                  Calculator.capital(solver.word().replace('_', ' ')),
                  "./sheathwright solve %s table.csv".formatted(solver.word()),
                  solver.word()));
    }
  }

  private static Map<Errand, List<Calculator>> byErrand(Map<Calculator, Tab> pages) {
    return pages.keySet().stream()
        .collect(
            groupingBy(
                calculator -> Errand.of(calculator.card()),
                () -> new EnumMap<>(Errand.class),
                toList()));
  }

  private void line(Calculator calculator, Tab page) {
    int line = tab.next();
    line(calculator.title(), calculator.card().text().summary(), calculator.card().name());
    tab.link(line, 0, page);
  }

  private void asked(Card card) {
    line(Calculator.capital(card.name().replace('_', ' ')), card.text().summary(), card.name());
    int line = tab.line();
    tab.text(
        line,
        1,
        "./sheathwright explain %s %s"
            .formatted(card.name(), String.join(" ", StartingValues.pairs(card))),
        Part.NOTE);
  }

  private void line(String title, String what, String name) {
    int line = tab.line();
    tab.text(line, 0, title, Part.LISTED_TEXT);
    tab.text(line, 1, what, Part.LISTED_TEXT);
    tab.text(line, 2, name, Part.LISTED_TEXT);
  }
}
