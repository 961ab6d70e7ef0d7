package sheathwright.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.util.CellReference;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.figure.Choice;
import sheathwright.figure.Limits;
import sheathwright.figure.Roll;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Working;
import sheathwright.job.FilledTable;
import sheathwright.workbook.Look.Part;

/**
 * A filled table as a live workbook: each row's inputs, steps and results, with one formula a
 * column.
 */
public final class FillBook {

  private static final Traced BLANK = Choice.literal("");

  private final FilledTable filled;
  private final Card card;
  private final Book book = new Book();

  /**
   * One column: its name, its unit, its formula in words, and the limits that its cells are held
   * to.
   */
  private record Heading(String name, Unit<?> unit, String how, Limits limits) {}

  private FillBook(FilledTable filled) {
    this.filled = filled;
    this.card = filled.card();
  }

  /** The workbook of a filled table, as the bytes of an .xlsx file. */
  public static byte[] bytes(FilledTable filled) {
    return new FillBook(filled).written();
  }

  /** The book itself, for tests that need to know where each input stands. */
  static Book book(FilledTable filled, java.util.function.Consumer<byte[]> bytes) {
    FillBook written = new FillBook(filled);
    bytes.accept(written.written());
    return written.book;
  }

  private byte[] written() {
    String subtitle = card.name() + ", filled down " + filled.file().name();
    List<Traced> model = model();
    List<Heading> headings = headings(model);
    Tab front = Sections.titled(book.tab("Read me first", 37, 14, 12, 13, 14, 15), subtitle);
    int[] widths = new int[Math.max(3, headings.size())];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = i < headings.size() && headings.get(i).name().equals("error") ? 60 : 17;
    }
    Tab table = Sections.titled(book.tab("Filled", widths), subtitle);
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    front(front);
    fill(table, headings);
    return book.finished(working, tables);
  }

  private void front(Tab tab) {
    tab.heading(card.name());
    tab.paragraph(card.text().summary());
    card.text().formula().lines().forEach(tab::paragraph);
    tab.paragraph(card.text().limits());
    tab.paragraph("Source: " + card.text().source() + ".");
    tab.heading("How to use this workbook");
    tab.paragraph(
        "On the tab Filled, straw-coloured cells with a frame are inputs: change them and the row follows. A cell that says"
            + " #N/A was refused: an argument lies outside the least and most above its column.");
    tab.paragraph("Planning help: local code and licensed practice decide.");
  }

  /** The steps of the first row that could be computed: every row has the same. */
  private List<Traced> model() {
    return filled.rows().stream()
        .filter(row -> !row.results().isEmpty())
        .findFirst()
        .map(row -> RowSteps.between(row.arguments(), row.results()))
        .orElse(List.of());
  }

  private List<Heading> headings(List<Traced> model) {
    List<Heading> headings = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (String own : ownColumns()) {
      headings.add(heading(taken, own, null, "", Limits.NONE));
    }
    for (Parameter parameter : card.parameters()) {
      headings.add(heading(taken, parameter.column(), parameter.unit(), "given", Limits.NONE));
    }
    for (Result result : card.results()) {
      taken.add(result.column());
    }
    int steps = 0;
    for (Traced step : model) {
      steps++;
      String name = step.isNamed() ? step.name() : "step_" + steps;
      if (step.step() instanceof Step.Guarded guard) {
        headings.add(heading(taken, name, Tab.unitOf(step), "within limits", guard.limits()));
      } else {
        headings.add(heading(taken, name, Tab.unitOf(step), Working.symbols(step), Limits.NONE));
      }
    }
    for (Result result : card.results()) {
      headings.add(new Heading(result.column(), result.unit(), "result", Limits.NONE));
    }
    headings.add(new Heading("error", null, "", Limits.NONE));
    return headings;
  }

  private static Heading heading(
      Set<String> taken, String wanted, Unit<?> unit, String how, Limits limits) {
    String name = wanted;
    for (int i = 2; !taken.add(name); i++) {
      name = wanted + "_" + i;
    }
    return new Heading(name, unit, how, limits);
  }

  private List<String> ownColumns() {
    return filled.keptHeadings().stream().filter(name -> card.parameter(name) == null).toList();
  }

  private void fill(Tab tab, List<Heading> headings) {
    int line = tab.next();
    for (int column = 0; column < headings.size(); column++) {
      Heading heading = headings.get(column);
      tab.text(line, column, heading.how(), Part.NOTE);
      if (heading.limits().exist()) {
        tab.number(line + 1, column, heading.limits().least());
        tab.number(line + 2, column, heading.limits().most());
      }
    }
    tab.skip(3);
    List<List<Traced>> rows = filled.rows().stream().map(row -> cells(row, headings)).toList();
    guard(tab, line, rows);
    List<Roll.Column<List<Traced>>> columns = new ArrayList<>();
    for (int column = 0; column < headings.size(); column++) {
      int index = column;
      columns.add(Roll.column(headings.get(column).name(), row -> row.get(index)));
    }
    Roll roll = Roll.of("filled", "the filled table", rows, columns);
    tab.list(
        roll,
        headings.stream().map(Heading::name).toList(),
        headings.stream().<Unit<?>>map(Heading::unit).toList());
  }

  private void guard(Tab tab, int line, List<List<Traced>> rows) {
    for (List<Traced> row : rows) {
      for (int column = 0; column < row.size(); column++) {
        if (row.get(column).step() instanceof Step.Guarded guard) {
          book.guarded(
              guard,
              new CellReference(line + 1, column, true, false).formatAsString(),
              new CellReference(line + 2, column, true, false).formatAsString());
        }
      }
    }
  }

  private List<Traced> cells(FilledTable.Row row, List<Heading> headings) {
    List<Traced> cells = new ArrayList<>();
    List<String> kept = filled.keptHeadings();
    for (String own : ownColumns()) {
      cells.add(Choice.literal(filled.keptCells(row).get(kept.indexOf(own))));
    }
    if (row.results().isEmpty()) {
      for (Parameter parameter : card.parameters()) {
        int column = kept.indexOf(parameter.column());
        cells.add(column < 0 ? BLANK : Choice.literal(filled.keptCells(row).get(column)));
      }
      while (cells.size() < headings.size() - 1) {
        cells.add(Choice.literal(""));
      }
    } else {
      cells.addAll(row.arguments());
      cells.addAll(RowSteps.between(row.arguments(), row.results()));
      cells.addAll(row.results());
    }
    cells.add(Choice.literal(row.error()));
    return cells;
  }
}
