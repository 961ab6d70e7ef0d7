package sheathwright.job.tab;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import sheathwright.job.tab.SheetCells.Cell;
import sheathwright.job.table.CellRules;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;

/** A table that stands on a workbook's tab, with whatever else above its headings. */
public final class SheetTable implements RowSource {

  /** Its headings stand no further down the tab. */
  private static final int LINES_ABOVE = 5_000;

  private static final int LONGEST_HEADING = 100;
  private static final int LONGEST_CELL = 32_767;

  private final String name;
  private final long headingLine;
  private final List<String> header;
  private final List<Integer> columns;
  private final List<Line> lines;
  private final List<String> formulas;

  private SheetTable(String name, SortedMap<Integer, SortedMap<Integer, Cell>> cells, int head) {
    this.name = name;
    this.headingLine = head + 1;
    SortedMap<Integer, SortedMap<Integer, Cell>> below = cells.tailMap(head + 1);
    int last = 0;
    for (SortedMap<Integer, Cell> line : below.values()) {
      last = Math.max(last, line.lastKey());
    }
    SortedMap<Integer, Cell> heads = cells.get(head);
    this.lines = new ArrayList<>();
    this.formulas = new ArrayList<>();
    this.columns = new ArrayList<>();
    this.header = new ArrayList<>();
    for (int column = 0; column <= Math.max(last, heads.lastKey()); column++) {
      int at = column;
      if (heads.containsKey(column) || below.values().stream().anyMatch(line -> holds(line, at))) {
        columns.add(column);
        header.add(text(heads, column).strip());
      }
    }
    List<Problem> problems = new ArrayList<>();
    for (String heading : header) {
      CellRules.wrongWith(heading, LONGEST_HEADING)
          .ifPresent(wrong -> problems.add(problem(headingLine, "", "a heading: " + wrong)));
    }
    below.forEach((row, line) -> read(row, line, problems));
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }

  private void read(int row, SortedMap<Integer, Cell> line, List<Problem> problems) {
    if (columns.stream().noneMatch(column -> holds(line, column))) {
      return;
    }
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      String text = text(line, columns.get(i));
      String heading = header.get(i);
      texts.add(text);
      CellRules.wrongWith(text, LONGEST_CELL)
          .ifPresent(wrong -> problems.add(problem(row + 1, heading, wrong)));
      if (line.containsKey(columns.get(i)) && line.get(columns.get(i)).isFormula()) {
        formulas.add(SheetCells.address(row, columns.get(i)));
      }
    }
    lines.add(new Line(row + 1, List.copyOf(texts)));
  }

  /**
   * The table on a tab: its headings stand in the line that has most of these.
   *
   * @param name in messages
   * @param known what its headings may be
   * @throws ProblemsException if no line has any of them
   */
  static SheetTable on(String name, SheetCells sheet, Collection<String> known) {
    int head = -1;
    long most = 0;
    Map<Integer, SortedMap<Integer, Cell>> above = new TreeMap<>(sheet.lines());
    for (Map.Entry<Integer, SortedMap<Integer, Cell>> line : above.entrySet()) {
      long named =
          line.getValue().values().stream()
              .filter(cell -> known.contains(cell.text().strip()))
              .count();
      if (line.getKey() < LINES_ABOVE && named > most) {
        head = line.getKey();
        most = named;
      }
    }
    if (head < 0) {
      throw WorkbookParts.refused(
          name, "no line of it names the columns, such as " + String.join(", ", known));
    }
    return new SheetTable(name, sheet.lines(), head);
  }

  /**
   * The same without the lines that nobody has filled in.
   *
   * @param value the column that is filled in
   * @param until the column that tells what stands there until then; it is left out
   */
  public SheetTable said(String value, String until) {
    int valuePlace = header.indexOf(value);
    int untilPlace = header.indexOf(until);
    return valuePlace < 0 || untilPlace < 0 ? this : new SheetTable(this, valuePlace, untilPlace);
  }

  private SheetTable(SheetTable whole, int value, int until) {
    this.name = whole.name;
    this.headingLine = whole.headingLine;
    this.formulas = whole.formulas;
    this.header = without(whole.header, until);
    this.columns = without(whole.columns, until);
    this.lines =
        whole.lines.stream()
            .filter(
                line ->
                    line.cells().get(until).isBlank()
                        || !line.cells().get(until).equals(line.cells().get(value)))
            .map(line -> new Line(line.number(), without(line.cells(), until)))
            .toList();
  }

  private static <T> List<T> without(List<T> list, int place) {
    List<T> others = new ArrayList<>(list);
    others.remove(place);
    return others;
  }

  private static boolean holds(SortedMap<Integer, Cell> line, int column) {
    return !text(line, column).isBlank();
  }

  private static String text(SortedMap<Integer, Cell> line, int column) {
    return line.containsKey(column) ? line.get(column).text() : "";
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public List<String> header() {
    return header;
  }

  @Override
  public long headingLine() {
    return headingLine;
  }

  @Override
  public List<Line> lines() {
    return lines;
  }

  @Override
  public String readable(String cell) {
    return CellRules.readable(cell);
  }

  @Override
  public Problem problem(long line, String column, String message) {
    int place = header.indexOf(column);
    String cell = place < 0 ? "" : SheetCells.address((int) line - 1, columns.get(place));
    return new Problem(name, line, column, message, cell);
  }

  /** Formulas that somebody typed where values stand: what they came to is read, and said once. */
  @Override
  public List<Problem> questions() {
    if (formulas.isEmpty()) {
      return List.of();
    }
    String others = formulas.size() == 1 ? "" : " and %s more cells".formatted(formulas.size() - 1);
    String message =
        "%s%s held a formula; the value that it came to is read, and the formula is gone";
    return List.of(new Problem(name, 0, "", message.formatted(formulas.get(0), others)));
  }
}
