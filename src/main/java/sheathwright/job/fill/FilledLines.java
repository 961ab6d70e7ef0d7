package sheathwright.job.fill;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Figure;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.CsvLines;
import sheathwright.job.table.Meant;
import sheathwright.job.table.Problem;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableColumns;

/**
 * One function filled down a table a line at a time: a row is computed when it is asked for, and
 * nobody has to keep it.
 */
public final class FilledLines {

  private static final String ERROR = "error";
  private static final Set<String> CARRIED = Set.of("job", "id");

  private final Card card;
  private final CsvFile file;
  private final TableColumns columns;
  private final List<Integer> keptColumns;
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> wrongWithAll = new ArrayList<>();

  private FilledLines(Card card, CsvFile file) {
    this.card = card;
    this.file = file;
    this.keptColumns = keptColumns();
    this.columns = columns();
    problems.addAll(columns.unknown());
    problems.addAll(columns.missing());
    columns.unknown().forEach(wrong -> wrongWithAll.add(said(wrong)));
  }

  /** A function to be filled down a table, whose headings are read now. */
  public static FilledLines of(Card card, CsvFile file) {
    return new FilledLines(card, file);
  }

  /** The function. */
  public Card card() {
    return card;
  }

  /** The table it is filled down. */
  public CsvFile file() {
    return file;
  }

  /** What is wrong with the headings. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /**
   * The headings that are kept from the table: all but results and errors of an earlier filling.
   */
  public List<String> keptHeadings() {
    return keptColumns.stream().map(file.header()::get).toList();
  }

  /** A line's own cells under the headings that are kept. */
  public List<String> keptCells(RowSource.Line line) {
    return keptColumns.stream().map(line.cells()::get).toList();
  }

  /** Does something with each row in turn, computed then and there. */
  public void forEach(Consumer<FilledRow> action) {
    rows().forEach(action);
  }

  /** The rows in turn, each computed when it is asked for. */
  public Iterable<FilledRow> rows() {
    return () -> file.lines().stream().map(this::row).iterator();
  }

  /** The first row that has every result; where none has, the first whose arguments are read. */
  public Optional<FilledRow> firstComputed() {
    FilledRow wanting = null;
    for (RowSource.Line line : file.lines()) {
      FilledRow row = row(line);
      if (!row.isRefused() && !row.isAnsweredInPart()) {
        return Optional.of(row);
      }
      wanting = wanting == null && !row.results().isEmpty() ? row : wanting;
    }
    return Optional.ofNullable(wanting);
  }

  /**
   * The same rows with result columns and an error column appended, as CSV.
   *
   * @param written is told of each row
   */
  public void writeTo(Appendable out, Consumer<FilledRow> written) throws IOException {
    CsvLines lines = new CsvLines(out, file.separator());
    List<String> header = new ArrayList<>(keptHeadings());
    card.results().forEach(result -> header.add(result.column()));
    header.add(ERROR);
    lines.line(header);
    for (RowSource.Line line : file.lines()) {
      FilledRow row = row(line);
      List<String> cells = new ArrayList<>(keptCells(line));
      for (int i = 0; i < card.results().size(); i++) {
        cells.add(row.isRefused() ? "" : plain(row.results().get(i)));
      }
      cells.add(row.error());
      lines.line(cells);
      written.accept(row);
    }
    lines.flush();
  }

  /** A row by its headings: texts, numbers, and nothing for what is blank or refused. */
  public Map<String, Object> named(FilledRow row) {
    Map<String, Object> named = new LinkedHashMap<>();
    for (int i : keptColumns) {
      String heading = file.header().get(i);
      named.put(heading, kept(heading, row.line().cells().get(i).strip(), row));
    }
    for (int i = 0; i < card.results().size(); i++) {
      named.put(
          card.results().get(i).column(), row.isRefused() ? null : value(row.results().get(i)));
    }
    named.put(ERROR, row.error().isEmpty() ? null : row.error());
    return named;
  }

  /** What stands in a line under a heading: of a parameter, as it was read. */
  private Object kept(String heading, String text, FilledRow row) {
    Parameter parameter = card.parameter(heading);
    if (text.isEmpty()) {
      return null;
    }
    try {
      return parameter == null ? text : value(argument(parameter, row.line()));
    } catch (RefusedException unreadable) {
      return text;
    }
  }

  private static Object value(Traced traced) {
    String plain = plain(traced);
    if (plain.isEmpty()) {
      return null;
    }
    return traced instanceof Figure ? new BigDecimal(plain) : plain;
  }

  /** A result as a cell of the table; one that is refused stays blank beside the others. */
  private static String plain(Traced result) {
    return FilledRow.isRefused(result) ? "" : result.plain();
  }

  private List<Integer> keptColumns() {
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < file.header().size(); i++) {
      String heading = file.header().get(i);
      if (card.parameter(heading) != null || !isOwnAnswer(heading)) {
        kept.add(i);
      }
    }
    return kept;
  }

  private boolean isOwnAnswer(String heading) {
    return heading.equals(ERROR)
        || card.results().stream().map(Result::column).anyMatch(heading::equals);
  }

  /** What tells rows apart for whoever keeps the table: it is nobody's argument. */
  private static boolean isCarried(String heading) {
    return CARRIED.contains(heading) || TableColumns.isNote(heading);
  }

  private TableColumns columns() {
    List<String> names = card.parameters().stream().map(Parameter::column).toList();
    return TableColumns.of(
        file,
        Meant.of(names),
        card.parameters().stream().filter(Parameter::isRequired).map(Parameter::column).toList(),
        heading -> isCarried(heading) || isOwnAnswer(heading),
        card.name(),
        "note");
  }

  private static String said(Problem wrong) {
    return (wrong.column().isEmpty() ? "" : "column " + wrong.column() + ": ") + wrong.message();
  }

  private boolean isMissing(Parameter parameter) {
    return parameter.isRequired() && !columns.has(parameter.column());
  }

  /** One line, filled. Nothing in it stops the other lines from being filled. */
  private FilledRow row(RowSource.Line line) {
    List<Problem> wrongHere = new ArrayList<>();
    List<String> wrong = new ArrayList<>(wrongWithAll);
    List<Traced> arguments = new ArrayList<>();
    for (Parameter parameter : card.parameters()) {
      try {
        arguments.add(argument(parameter, line));
      } catch (RefusedException unreadable) {
        wrong.add(unreadable.getMessage());
        if (!isMissing(parameter)) {
          String column = parameter.column();
          String reason = TypedCell.under(column, unreadable.getMessage());
          wrongHere.add(new Problem(file.name(), line.number(), column, reason));
        }
      }
    }
    if (arguments.size() < card.parameters().size()) {
      return new FilledRow(line, List.of(), List.of(), wrongHere, String.join("; ", wrong));
    }
    List<Traced> results;
    try {
      results = card.answer(arguments);
    } catch (RefusedException outright) {
      wrong.add(outright.getMessage());
      wrongHere.add(
          new Problem(
              file.name(), line.number(), columnIn(outright.getMessage()), outright.getMessage()));
      return new FilledRow(line, List.of(), List.of(), wrongHere, String.join("; ", wrong));
    }
    results.stream()
        .filter(FilledRow::isRefused)
        .flatMap(result -> result.refusal().stream())
        .map(Refusal::reason)
        .distinct()
        .forEach(
            reason -> {
              wrong.add(reason);
              wrongHere.add(new Problem(file.name(), line.number(), columnIn(reason), reason));
            });
    return new FilledRow(line, arguments, results, wrongHere, String.join("; ", wrong));
  }

  private Traced argument(Parameter parameter, RowSource.Line line) {
    TypedCell cell = file.typed(parameter.column(), columns.cell(line, parameter.column()));
    Source source =
        cell.text().isBlank()
            ? Source.given("preset of " + card.name())
            : Source.given(file.name() + ", line " + line.number());
    return parameter.read(cell.text(), source);
  }

  /** The parameter that a refusal speaks of: it begins with the name. */
  private String columnIn(String reason) {
    return card.parameters().stream()
        .map(Parameter::column)
        .filter(column -> reason.startsWith(column + " "))
        .findFirst()
        .orElse("");
  }
}
