package sheathwright.workbook.calculator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.figure.RefusedException;
import sheathwright.job.solve.Solver;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Sections;

/**
 * Library functions as a live workbook: a page of contents, and a page for each function whose
 * results cells can follow.
 */
public final class CalculatorBook {

  private final Map<Calculator, Tab> pages = new LinkedHashMap<>();
  private final List<Calculator> live;
  private final List<Calculator> solved;
  private final List<Solver> tables;

  private CalculatorBook(List<Calculator> all, List<Solver> tables) {
    this.live = all.stream().filter(Calculator::isLive).toList();
    this.solved = all.stream().filter(each -> !each.isLive()).toList();
    this.tables = tables;
  }

  /** Every function. */
  public static byte[] ofAll() {
    List<Calculator> all = new ArrayList<>();
    Catalog.shipped().cards().forEach(card -> all.add(Calculator.of(card)));
    all.sort(java.util.Comparator.comparing(each -> Errand.of(each.card())));
    return new CalculatorBook(all, List.of(Solver.values())).bytes();
  }

  /**
   * Some functions, in the order in which they are named.
   *
   * @throws RefusedException if no cell can follow any of them
   */
  public static byte[] of(List<Card> cards) {
    CalculatorBook book =
        new CalculatorBook(cards.stream().distinct().map(Calculator::of).toList(), List.of());
    if (book.live.isEmpty()) {
      throw new RefusedException(
          "%s is solved, which no cell can do; run ./sheathwright explain %s, or fill it down a table"
              .formatted(cards.get(0).name(), cards.get(0).name()));
    }
    return book.bytes();
  }

  private byte[] bytes() {
    Book book =
        new Book(
            Particulars.of(
                "Calculators for a wood roof deck", "Each library function as a page that works"));
    book.leaveOutEmptyPages();
    String subtitle =
        live.size() == 1 ? "one function" : "%s functions, each on a page".formatted(live.size());
    live.forEach(each -> book.leaveNamesToTables(each.results()));
    ContentsPage contents = ContentsPage.of(book, subtitle);
    live.forEach(each -> pages.put(each, FunctionPage.write(book, each, contents.tab())));
    contents.write(pages, solved, tables);
    return book.finished(Sections.workingTab(book, subtitle), Sections.tablesTab(book, subtitle));
  }
}
