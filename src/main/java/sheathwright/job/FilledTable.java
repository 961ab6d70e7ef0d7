package sheathwright.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/**
 * One function filled down a table: each line's arguments, its results or what is wrong with it.
 *
 * @param card the function
 * @param file the table it was given
 * @param rows one for each line
 * @param problems everything wrong, in the order of the lines
 */
public record FilledTable(Card card, CsvFile file, List<Row> rows, List<Problem> problems) {

  private static final String ERROR = "error";

  /**
   * One line, filled.
   *
   * @param line as it came
   * @param arguments one for each parameter; empty if they could not be read
   * @param results one for each result, perhaps refused; empty if the arguments could not be read
   * @param error what is wrong, in one line, or empty
   */
  public record Row(CsvFile.Line line, List<Traced> arguments, List<Traced> results, String error) {

    private String plain(int result) {
      boolean hasNone = results.isEmpty() || results.stream().anyMatch(FilledTable::isRefused);
      return hasNone ? "" : results.get(result).plain();
    }
  }

  /**
   * Fills a function down a table. Nothing in the table stops the other lines from being filled.
   */
  public static FilledTable of(Card card, CsvFile file) {
    return new Filler(card, file).filled();
  }

  /**
   * The headings that are kept from the table: all but results and errors of an earlier filling.
   */
  public List<String> keptHeadings() {
    return keptColumns().stream().map(file.header()::get).toList();
  }

  /** A line's own cells under the headings that are kept. */
  public List<String> keptCells(Row row) {
    return keptColumns().stream().map(row.line().cells()::get).toList();
  }

  /** The same rows with result columns and an error column appended, as CSV. */
  public void writeTo(Appendable out) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(file.separator()).setRecordSeparator('\n').get();
    CSVPrinter printer = new CSVPrinter(out, format);
    List<String> header = new ArrayList<>(keptHeadings());
    card.results().forEach(result -> header.add(result.column()));
    header.add(ERROR);
    printer.printRecord(header);
    for (Row row : rows) {
      List<String> cells = new ArrayList<>(keptCells(row));
      for (int i = 0; i < card.results().size(); i++) {
        cells.add(row.plain(i));
      }
      cells.add(row.error());
      printer.printRecord(cells);
    }
    printer.flush();
  }

  private static boolean isRefused(Traced result) {
    return result.refusal().filter(refusal -> !refusal.isAnswer()).isPresent();
  }

  private List<Integer> keptColumns() {
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < file.header().size(); i++) {
      String heading = file.header().get(i);
      if (card.parameter(heading) != null || !isOwnAnswer(card, heading)) {
        kept.add(i);
      }
    }
    return kept;
  }

  private static boolean isOwnAnswer(Card card, String heading) {
    return heading.equals(ERROR)
        || card.results().stream().map(Result::column).anyMatch(heading::equals);
  }

  /** Reads the headings once, then line after line. */
  private static final class Filler {

    private final Card card;
    private final CsvFile file;
    private final Map<String, Integer> columnOf = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> wrongWithAll = new ArrayList<>();

    Filler(Card card, CsvFile file) {
      this.card = card;
      this.file = file;
    }

    FilledTable filled() {
      readHeadings();
      List<Row> rows = file.lines().stream().map(this::filled).toList();
      return new FilledTable(card, file, rows, List.copyOf(problems));
    }

    private void readHeadings() {
      List<String> names = card.parameters().stream().map(Parameter::column).toList();
      String allowed = "%s has %s and note".formatted(card.name(), String.join(", ", names));
      for (Problem wrong :
          Headings.problems(
              file,
              names,
              heading -> Headings.isNote(heading) || isOwnAnswer(card, heading),
              allowed)) {
        problems.add(wrong);
        wrongWithAll.add(
            (wrong.column().isEmpty() ? "" : "column " + wrong.column() + ": ") + wrong.message());
      }
      for (int i = 0; i < file.header().size(); i++) {
        columnOf.putIfAbsent(file.header().get(i), i);
      }
      for (Parameter parameter : card.parameters()) {
        if (parameter.isRequired() && !columnOf.containsKey(parameter.column())) {
          problems.add(new Problem(file.name(), 1, parameter.column(), "this column is missing"));
        }
      }
    }

    private Row filled(CsvFile.Line line) {
      List<String> wrong = new ArrayList<>(wrongWithAll);
      List<Traced> arguments = new ArrayList<>();
      for (Parameter parameter : card.parameters()) {
        try {
          arguments.add(argument(parameter, line));
        } catch (RefusedException unreadable) {
          wrong.add(unreadable.getMessage());
          boolean saidOfTheHeading =
              parameter.isRequired() && !columnOf.containsKey(parameter.column());
          if (!saidOfTheHeading) {
            String reason = unreadable.getMessage();
            String named = parameter.column() + ": ";
            problems.add(
                new Problem(
                    file.name(),
                    line.number(),
                    parameter.column(),
                    reason.startsWith(named) ? reason.substring(named.length()) : reason));
          }
        }
      }
      if (arguments.size() < card.parameters().size()) {
        return new Row(line, List.of(), List.of(), String.join("; ", wrong));
      }
      List<Traced> results = card.answer(arguments);
      results.stream()
          .filter(FilledTable::isRefused)
          .flatMap(result -> result.refusal().stream())
          .map(Refusal::reason)
          .distinct()
          .forEach(
              reason -> {
                wrong.add(reason);
                problems.add(new Problem(file.name(), line.number(), columnIn(reason), reason));
              });
      return new Row(line, arguments, results, String.join("; ", wrong));
    }

    private Traced argument(Parameter parameter, CsvFile.Line line) {
      Integer column = columnOf.get(parameter.column());
      String cell = column == null ? "" : file.readable(line.cells().get(column));
      Source source =
          cell.isBlank()
              ? Source.given("preset of " + card.name())
              : Source.given(file.name() + ", line " + line.number());
      return parameter.read(cell, source);
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
}
