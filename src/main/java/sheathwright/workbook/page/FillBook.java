package sheathwright.workbook.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellReference;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.figure.Choice;
import sheathwright.figure.Limits;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Working;
import sheathwright.job.fill.FilledLines;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.fill.FilledTable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.CellNotation;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;

/**
 * A filled table as a live workbook: each row's inputs, steps and results, with one formula a
 * column.
 */
public final class FillBook {

  /** A sheet has 1,048,576 rows, and some stand above the table. */
  private static final int MOST_LINES = 1_000_000;

  private final FilledLines filled;
  private final Card card;
  private final List<String> kept;
  private final Book book;
  private final Optional<FilledRow> model;
  private final RowSteps steps;
  private final RowGuard guard;
  private int next;

  /**
   * One column: its name, its unit, its formula in words, and the limits that its cells are held
   * to.
   */
  private record Heading(String name, Unit<?> unit, String how, Limits limits) {}

  private FillBook(FilledLines filled) {
    this.filled = filled;
    this.card = filled.card();
    this.kept = filled.keptHeadings();
    this.book =
        new Book(
            Particulars.of(
                "%s, filled down %s".formatted(card.name(), filled.file().name()),
                card.text().summary()));
    this.model = filled.firstComputed();
    this.steps =
        RowSteps.like(
            model.map(FilledRow::arguments).orElse(List.of()),
            model.map(FilledRow::results).orElse(List.of()));
    this.guard =
        RowGuard.like(
            model.map(FilledRow::arguments).orElse(List.of()),
            model.map(FilledRow::results).orElse(List.of()));
  }

  /** The workbook of a small filled table, as the bytes of an .xlsx file. */
  public static byte[] bytes(FilledTable filled) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(filled.lines(), bytes, row -> {});
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /**
   * Writes the workbook of a table as long as a sheet can be: each row is computed, written and
   * forgotten.
   *
   * @param written is told of each row
   * @throws ProblemsException if the table has more lines than a sheet
   */
  public static void write(FilledLines filled, OutputStream out, Consumer<FilledRow> written)
      throws IOException {
    int lines = filled.file().lines().size();
    if (lines > MOST_LINES) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  filled.file().name(),
                  0,
                  "",
                  Shown.text(
                      "it has %,d lines; a workbook takes at most %,d: fill it into a .csv file",
                      lines, MOST_LINES))));
    }
    new FillBook(filled).write(out, written);
  }

  private void write(OutputStream out, Consumer<FilledRow> written) throws IOException {
    String subtitle = card.name() + ", filled down " + filled.file().name();
    List<Heading> headings = headings();
    Tab front = Sections.titled(book.tab("Read me first", 37, 14, 12, 13, 14, 15), subtitle);
    int[] widths = new int[Math.max(3, headings.size())];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = i < headings.size() && headings.get(i).name().equals("error") ? 60 : 17;
    }
    Tab table = Sections.titled(book.tab("Filled", widths), subtitle);
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    front(front);
    int limits = table.next();
    head(table, headings);
    book.finish(
        working,
        tables,
        table,
        out,
        (sheet, notation) -> {
          model.ifPresent(
              row -> sheet.formulas(formulas(cells(row, headings.size()), limits, notation)));
          filled.forEach(
              row -> {
                sheet.line(next++, cells(row, headings.size()));
                written.accept(row);
              });
        });
  }

  /** The formula of each column: one for all rows. */
  private static List<String> formulas(List<Traced> model, int limits, CellNotation notation) {
    CellNotation inRow = notation.inEveryRow(model, guards(model, limits));
    List<String> formulas = new ArrayList<>();
    for (int column = 0; column < model.size(); column++) {
      Traced value = model.get(column);
      boolean standsBefore = CellNotation.column(model, value) < column;
      if (standsBefore) {
        formulas.add(inRow.of(value).text());
      } else {
        formulas.add(value.step().isValueOnly() ? "" : inRow.formula(value));
      }
    }
    return formulas;
  }

  private void front(Tab tab) {
    tab.heading(card.name());
    tab.paragraph(card.text().summary());
    card.text().formula().lines().forEach(tab::paragraph);
    tab.paragraph(card.text().limits());
    tab.paragraph("Source: " + card.text().source() + ".");
    tab.heading("How to use this workbook");
    tab.paragraph(
        "On the tab Filled, straw-colored cells with a frame are inputs: change them and the row follows. A cell that says"
            + " #N/A was refused: an argument lies outside the least and most above its column.");
    tab.paragraph("Planning help: local code and licensed practice decide.");
  }

  private List<Heading> headings() {
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
    int count = 0;
    for (Traced step : model.map(row -> steps.of(row.results())).orElse(List.of())) {
      count++;
      String name = step.isNamed() ? step.name() : "step_" + count;
      boolean isGuarded = step.step().guard().isPresent();
      String how = isGuarded ? "within limits" : Working.symbols(step);
      headings.add(heading(taken, name, Tab.unitOf(step), how, step.step().limits()));
    }
    for (Result result : card.results()) {
      headings.add(new Heading(result.column(), result.unit(), "result", Limits.NONE));
    }
    List<String> parameters = card.parameters().stream().map(Parameter::column).toList();
    for (String held : guard.headings(parameters)) {
      headings.add(heading(taken, held, null, "", Limits.NONE));
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
    return kept.stream().filter(name -> card.parameter(name) == null).toList();
  }

  /** Formulas in words, limits and headings; the model tells what every row is made of. */
  private void head(Tab tab, List<Heading> headings) {
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
    List<List<Traced>> rows = model.map(row -> cells(row, headings.size())).stream().toList();
    rows.forEach(cells -> guards(cells, line).forEach(book::guarded));
    List<Roll.Column<List<Traced>>> columns = new ArrayList<>();
    for (int column = 0; column < headings.size(); column++) {
      int index = column;
      columns.add(Roll.column(headings.get(column).name(), row -> row.get(index)));
    }
    next = tab.next() + 1;
    tab.headingsOf(
        Roll.of("filled", "the filled table", rows, columns),
        headings.stream().map(Heading::name).toList(),
        headings.stream().<Unit<?>>map(Heading::unit).toList(),
        filled.file().lines().size());
  }

  /** Where the limits of a row's guarded arguments stand: two lines below the formulas in words. */
  private static Map<Step.Guarded, CellNotation.Guard> guards(List<Traced> cells, int line) {
    Map<Step.Guarded, CellNotation.Guard> guards = new HashMap<>();
    for (int column = 0; column < cells.size(); column++) {
      CellNotation.Guard limits =
          new CellNotation.Guard(
              new CellReference(line + 1, column, true, false).formatAsString(),
              new CellReference(line + 2, column, true, false).formatAsString());
      cells.get(column).step().guard().ifPresent(guard -> guards.put(guard, limits));
    }
    return guards;
  }

  private List<Traced> cells(FilledRow row, int columns) {
    List<Traced> cells = new ArrayList<>();
    List<String> given = filled.keptCells(row.line());
    for (int column = 0; column < given.size(); column++) {
      if (card.parameter(kept.get(column)) == null) {
        cells.add(Choice.literal(given.get(column)));
      }
    }
    if (row.results().isEmpty()) {
      for (Parameter parameter : card.parameters()) {
        int column = kept.indexOf(parameter.column());
        cells.add(Choice.literal(column < 0 ? "" : given.get(column)));
      }
      while (cells.size() < columns - 1) {
        cells.add(Choice.literal(""));
      }
    } else {
      cells.addAll(row.arguments());
      cells.addAll(steps.of(row.results()));
      cells.addAll(row.results());
      cells.addAll(guard.of(row.arguments()));
    }
    cells.add(Choice.literal(row.error()));
    return cells;
  }
}
