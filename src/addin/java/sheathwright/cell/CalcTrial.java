package sheathwright.cell;

import com.sun.star.beans.PropertyValue;
import com.sun.star.bridge.XUnoUrlResolver;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.container.XIndexAccess;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.StartingValues;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.cell.CellCall;

/** Calls the add-in in a spreadsheet program without a screen, and says what was wrong. */
public final class CalcTrial {

  private static final int CHAINED = 5000;
  private static final double SECONDS = 2;

  /** The program is warm after the first, and others may be busy during one. */
  private static final int TIMES = 4;

  private static final int ATTEMPTS = 120;
  private static final double RELATIVE = 1e-12;

  private final XSpreadsheetDocument document;
  private final XSpreadsheet sheet;
  private int faults;

  private CalcTrial(XSpreadsheetDocument document, XSpreadsheet sheet) {
    this.document = document;
    this.sheet = sheet;
  }

  /** Connects to the program that listens at a pipe, and closes it at the end. */
  public static void main(String[] arguments) throws Exception {
    XComponentContext office = office(arguments[0]);
    XMultiComponentFactory services = office.getServiceManager();
    Object desktop = services.createInstanceWithContext("com.sun.star.frame.Desktop", office);
    PropertyValue hidden = new PropertyValue();
    hidden.Name = "Hidden";
    hidden.Value = true;
    Object opened =
        as(XComponentLoader.class, desktop)
            .loadComponentFromURL(
                "private:factory/scalc", "_blank", 0, new PropertyValue[] {hidden});
    XSpreadsheetDocument document = as(XSpreadsheetDocument.class, opened);
    Object first = as(XIndexAccess.class, document.getSheets()).getByIndex(0);
    CalcTrial trial = new CalcTrial(document, as(XSpreadsheet.class, first));
    try {
      trial.numbers();
      trial.everyFunction();
      trial.descriptions(
          as(
              XIndexAccess.class,
              services.createInstanceWithContext(
                  "com.sun.star.sheet.FunctionDescriptions", office)));
      trial.chained();
    } finally {
      as(XCloseable.class, document).close(true);
      as(XDesktop.class, desktop).terminate();
    }
    System.exit(trial.faults == 0 ? 0 : 1);
  }

  private static XComponentContext office(String pipe) throws Exception {
    XComponentContext here = Bootstrap.createInitialComponentContext(null);
    XUnoUrlResolver resolver =
        as(
            XUnoUrlResolver.class,
            here.getServiceManager()
                .createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", here));
    for (int attempt = 1; ; attempt++) {
      try {
        return as(
            XComponentContext.class,
            resolver.resolve("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext"));
      } catch (com.sun.star.connection.NoConnectException notYet) {
        if (attempt == ATTEMPTS) {
          throw notYet;
        }
        TimeUnit.MILLISECONDS.sleep(500);
      }
    }
  }

  private static <T> T as(Class<T> type, Object object) {
    return UnoRuntime.queryInterface(type, object);
  }

  /** Nails counted by hand, a span, a row, a refusal, a name, the working, a table. */
  private void numbers() throws Exception {
    expect("43", call("nailsPerSheet", "16", "6", "12"));
    expect("69", call("nailsPerSheet", "24", "6", "6", "\"yes\""));
    expect("43", call("answer", "\"nails_per_sheet\"", "16", "\"field_spacing_in=12\"", "6"));
    expect(
        "refused: edge_spacing_in is 0; it must be from 1 to 24, 6 is usual, 4 in high wind",
        call("nailsPerSheet", "16", "0", "12"));
    array("A2:C2", call("jointBearing", "48", "48", "0"));
    expect("0.75, 0.75, yes", said(0, 1) + ", " + said(1, 1) + ", " + said(2, 1));
    data(
        "A4:C6",
        new Object[][] {
          {"support_spacing_in", "edge_spacing_in", "field_spacing_in"},
          {16.0, 6.0, 12.0},
          {24.0, 0.0, 6.0}
        });
    array("E4:F6", call("table", "\"nails_per_sheet\"", "A4:C6"));
    expect("nails, 43, true", said(4, 3) + ", " + said(4, 4) + ", " + said(5, 5).contains("is 0"));
    String working = shown(call("working", "\"slope_length\"", "\"15-0\"", "0"));
    expect("true", String.valueOf(working.contains("15' 0\"")));
  }

  /** Every function says in a cell what it says in Java. */
  private void everyFunction() throws Exception {
    for (Card card : Catalog.shipped().cards()) {
      List<Traced> arguments = StartingValues.of(card);
      Object java = CellCall.results(card.name(), StartingValues.pairs(card).toArray())[0];
      String cell =
          shown(call(card.call(), arguments.stream().map(CalcTrial::typed).toArray(String[]::new)));
      boolean isSame =
          java instanceof Double number && !cell.startsWith("error")
              ? Math.abs(Double.parseDouble(cell) - number) <= RELATIVE * Math.abs(number)
              : java.equals(cell);
      if (!isSame) {
        fault(card.name(), java, cell);
      }
    }
    System.out.println("functions called in cells: " + Catalog.shipped().cards().size());
  }

  private static String typed(Traced argument) {
    return argument instanceof Figure<?> figure
        ? figure.isAbsent() ? "" : argument.plain()
        : "\"" + argument.plain() + "\"";
  }

  /** The program's own list has each function with what is said of it and of its arguments. */
  private void descriptions(XIndexAccess functions) throws Exception {
    int found = 0;
    for (int i = 0; i < functions.getCount(); i++) {
      PropertyValue[] about = (PropertyValue[]) functions.getByIndex(i);
      String name = about(about, "Name").toString();
      if (name.equals("DECK_NAILS_PER_SHEET")) {
        expectSaid(
            Catalog.shipped().named("nails_per_sheet").text().summary(),
            about(about, "Description").toString());
        var hints = (com.sun.star.sheet.FunctionArgument[]) about(about, "Arguments");
        expectSaid("support_spacing_in", hints[0].Name);
        expectSaid("sheet_width_in", hints[hints.length - 1].Name);
      }
      found += name.startsWith("DECK_") ? 1 : 0;
    }
    expectSaid(Catalog.shipped().cards().size() + 3, found);
  }

  private static Object about(PropertyValue[] all, String name) {
    return Arrays.stream(all)
        .filter(each -> each.Name.equals(name))
        .findFirst()
        .orElseThrow()
        .Value;
  }

  /** Calls that each rest on the one above, timed once the program is warm. */
  private void chained() throws Exception {
    Object[][] formulas = new Object[CHAINED][];
    formulas[0] = new Object[] {call("slopeFactor", "6")};
    for (int i = 1; i < CHAINED; i++) {
      formulas[i] = new Object[] {call("slopeFactor", "H" + i)};
    }
    as(com.sun.star.sheet.XCellRangeFormula.class, sheet.getCellRangeByName("H1:H" + CHAINED))
        .setFormulaArray(
            Arrays.stream(formulas)
                .map(row -> new String[] {(String) row[0]})
                .toArray(String[][]::new));
    XCalculatable calculated = as(XCalculatable.class, document);
    double seconds = Double.MAX_VALUE;
    for (int time = 0; time < TIMES; time++) {
      long start = System.nanoTime();
      calculated.calculateAll();
      seconds = Math.min(seconds, (System.nanoTime() - start) / 1e9);
    }
    System.out.printf(Locale.ROOT, "%d chained calls: %.2f s%n", CHAINED, seconds);
    double last = sheet.getCellByPosition(7, CHAINED - 1).getValue();
    if (seconds > SECONDS || last < 1 || last > 2) {
      fault("chained calls", SECONDS + " s", seconds + " s, " + last);
    }
  }

  private static String call(String method, String... values) {
    return "="
        + (AddInFiles.SERVICE + "." + method).toUpperCase(Locale.ROOT)
        + "("
        + String.join(";", values)
        + ")";
  }

  private void expect(String expected, String formula) throws Exception {
    String said = formula.startsWith("=") ? shown(formula) : formula;
    if (!said.equals(expected)) {
      fault(formula, expected, said);
    }
  }

  private void expectSaid(Object expected, Object said) {
    if (!said.equals(expected)) {
      fault("the list of functions", expected, said);
    }
  }

  private void fault(String what, Object expected, Object said) {
    faults++;
    System.err.printf("%s: expected %s, the cell says %s%n", what, expected, said);
  }

  private String shown(String formula) throws Exception {
    XCell cell = sheet.getCellByPosition(0, 0);
    cell.setFormula(formula);
    return said(0, 0);
  }

  private String said(int column, int row) throws Exception {
    XCell cell = sheet.getCellByPosition(column, row);
    String text = as(XText.class, cell).getString();
    boolean isNumber = cell.getError() == 0 && text.matches("[-+0-9.,Ee$ ]+");
    if (cell.getError() != 0) {
      return "error " + cell.getError();
    }
    double value = cell.getValue();
    return !isNumber
        ? text
        : value == Math.rint(value) && Math.abs(value) < 1e9
            ? String.valueOf((long) value)
            : String.valueOf(value);
  }

  private void array(String range, String formula) throws Exception {
    XCellRange cells = sheet.getCellRangeByName(range);
    as(XArrayFormulaRange.class, cells).setArrayFormula(formula);
  }

  private void data(String range, Object[][] rows) throws Exception {
    as(XCellRangeData.class, sheet.getCellRangeByName(range)).setDataArray(rows);
  }
}
