package sheathwright.workbook.calculator;

import static sheathwright.workbook.calculator.Calculator.capital;

import java.util.Set;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.catalog.Text;
import sheathwright.figure.Shown;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Cautions;
import sheathwright.workbook.page.Sections;

/**
 * The page of one function: what goes in, what comes out, where it is from, what to beware of, and
 * every step of the working.
 */
final class FunctionPage {

  /** Label, value, unit, least, most, how a step is worked out, its source. */
  private static final int[] WIDTHS = {30, 15, 11, 8, 9, 40, 23};

  /** Rooms whose results somebody's safety may hang on. */
  private static final Set<String> STRUCTURAL =
      Set.of("wood", "loads", "framing", "fastening", "leveling");

  /** So many results stand in large letters. */
  private static final int FEW = 8;

  /** Below the title and its line. */
  private static final int ABOVE = 2;

  private final Calculator calculator;
  private final Tab tab;

  private FunctionPage(Calculator calculator, Tab tab) {
    this.calculator = calculator;
    this.tab = tab;
  }

  /** Writes the page behind those that a book has. */
  static Tab write(Book book, Calculator calculator, Tab contents) {
    String subtitle =
        "%s: %s".formatted(Errand.of(calculator.card()).title(), calculator.card().name());
    Tab tab = Sections.titled(book.tab(calculator.title(), WIDTHS).oneOfMany(), subtitle);
    tab.link(ABOVE, 0, contents);
    new FunctionPage(calculator, tab).write();
    return tab;
  }

  private void write() {
    Text text = calculator.card().text();
    tab.paragraph(text.summary());
    tab.heading("What goes in");
    for (int i = 0; i < calculator.arguments().size(); i++) {
      Parameter parameter = calculator.card().parameters().get(i);
      tab.called(
          label(parameter.column()),
          calculator.cellName(parameter.column()),
          calculator.arguments().get(i),
          capital(parameter.text()) + unlessSaid(parameter));
    }
    tab.heading("What comes of it");
    for (int i = 0; i < calculator.results().size(); i++) {
      Result result = calculator.card().results().get(i);
      String name = calculator.cellName(result.column());
      if (calculator.results().size() <= FEW) {
        tab.answer(label(result.column()), name, calculator.results().get(i));
      } else {
        tab.called(label(result.column()), name, calculator.results().get(i), "");
      }
    }
    tab.note(capital(text.result()) + ".");
    tab.heading("How, and by whose rule");
    text.formula().lines().map(FunctionPage::oneSpaced).forEach(tab::paragraph);
    tab.paragraph("Source: " + text.source() + ".");
    tab.heading("Before you rely on it");
    if (STRUCTURAL.contains(calculator.card().room())) {
      tab.caution(Cautions.SCREENING);
    }
    tab.paragraph(text.limits().replace(Cautions.SCREENING, "").strip());
    if (!text.notes().isBlank()) {
      tab.paragraph(text.notes());
    }
    tab.paragraph("Refuses, and then says #N/A: " + text.refusals() + ".");
    Page.startNew(tab);
    tab.heading("The working");
    tab.working(calculator.results());
  }

  /** Blanks that line up in letters of one width do not in ours. */
  private static String oneSpaced(String line) {
    return line.strip().replaceAll(" +", " ");
  }

  /** What a parameter is where nobody says it. */
  private static String unlessSaid(Parameter parameter) {
    if (parameter.isRequired()) {
      return "";
    }
    return parameter.isLeftOpen(parameter.preset())
        ? "; blank if nobody measured"
        : "; " + parameter.preset() + " is usual";
  }

  private static String label(String column) {
    return capital(Shown.inWords(column));
  }
}
