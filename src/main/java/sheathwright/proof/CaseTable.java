package sheathwright.proof;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import sheathwright.catalog.Card;
import sheathwright.catalog.Result;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.fill.FilledTable;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;

/**
 * A table of cases of one function, read: what each expects, and the function filled down its
 * arguments as any table is.
 *
 * @param card the function
 * @param cases one for each line
 * @param filled the same lines, filled
 */
public record CaseTable(Card card, List<CertifiedCase> cases, FilledTable filled) {

  private static final Limits SHARE =
      Limits.between(0, 1, "a share of what is expected; 1e-9 asks for nine digits");

  private static final Limits DIFFERENCE =
      Limits.between(0, 1e9, "in the result's own unit; half the last digit that is printed");

  /**
   * Reads and runs a table.
   *
   * @throws ProblemsException if it cannot be read, with all that is wrong: line and column
   */
  public static CaseTable of(Card card, CsvFile file) {
    CaseColumns columns = new CaseColumns(card, file);
    FilledTable filled = FilledTable.of(card, columns.arguments());
    List<Problem> problems = new ArrayList<>(filled.lines().problems());
    if (!columns.expectsAny()) {
      problems.add(
          new Problem(
              file.name(),
              1,
              "",
              "no column holds an expected result; %s gives %s"
                  .formatted(
                      card.name(),
                      card.results().stream().map(Result::column).collect(joining(", ")))));
    }
    List<CertifiedCase> cases = new ArrayList<>();
    if (problems.isEmpty()) {
      for (RowSource.Line line : file.lines()) {
        cases.add(certified(file, columns, line, problems));
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(Problem.inOrder(problems));
    }
    return new CaseTable(card, List.copyOf(cases), filled);
  }

  /** What came of each case. */
  public List<Outcome> outcomes() {
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      outcomes.add(Outcome.of(card, cases.get(i), answer(i)));
    }
    return outcomes;
  }

  /** What is wrong with arguments that the function does not take. */
  List<Problem> refused() {
    return filled.rows().stream()
        .filter(FilledRow::isRefused)
        .flatMap(row -> row.problems().stream())
        .toList();
  }

  /** What the function answers at a case. */
  FilledRow answer(int place) {
    return filled.rows().get(place);
  }

  private static CertifiedCase certified(
      CsvFile file, CaseColumns columns, RowSource.Line line, List<Problem> problems) {
    Cell cell = new Cell(file, columns, line, problems);
    List<CertifiedCase.Expected> expected = columns.expected(line);
    double tolerance = cell.number(CaseColumns.TOLERANCE, SHARE);
    double within = cell.number(CaseColumns.WITHIN, DIFFERENCE);
    String source = columns.told(line, CaseColumns.SOURCE);
    if (expected.isEmpty()) {
      cell.wrong("", "nothing is expected of this case; write at least one result");
    }
    if (source.isEmpty()) {
      cell.wrong(
          CaseColumns.SOURCE,
          "it is blank; say who or what the expected values are from, such as hand calculation, B. Engineer");
    }
    if (columns.told(line, CaseColumns.TOLERANCE).isEmpty()
        && columns.told(line, CaseColumns.WITHIN).isEmpty()) {
      cell.wrong(
          CaseColumns.TOLERANCE,
          "it is blank, and so is within; write 0 for exactly, 0.001 for a thousandth of what is expected");
    }
    String label = columns.told(line, CaseColumns.CASE);
    for (CertifiedCase.Expected each : expected) {
      cell.expected(each);
    }
    return new CertifiedCase(
        file.name(),
        line.number(),
        label.isEmpty() ? String.valueOf(line.number() - 1) : label,
        cell.word(CaseColumns.CLASS, CaseClass.ORDINARY),
        cell.word(CaseColumns.KIND, CaseKind.WORKED),
        source,
        tolerance,
        within,
        expected);
  }

  /** The cells of one line, read; what cannot be read is kept as a problem. */
  private record Cell(
      CsvFile file, CaseColumns columns, RowSource.Line line, List<Problem> problems) {

    void wrong(String column, String message) {
      problems.add(new Problem(file.name(), line.number(), column, message));
    }

    private void wrong(String column, RefusedException unreadable) {
      wrong(column, TypedCell.under(column, unreadable.getMessage()));
    }

    double number(String column, Limits limits) {
      String text = columns.told(line, column);
      try {
        return text.isEmpty() ? 0 : file.typed(column, text).number(Units.RATIO, limits);
      } catch (RefusedException unreadable) {
        wrong(column, unreadable);
        return 0;
      }
    }

    <E extends Enum<E>> E word(String column, E usual) {
      String text = columns.told(line, column);
      Class<E> options = usual.getDeclaringClass();
      try {
        return text.isEmpty() ? usual : options.cast(file.typed(column, text).option(options));
      } catch (RefusedException unknown) {
        wrong(column, unknown);
        return usual;
      }
    }

    /** A number where the function gives numbers: words stand where it gives words. */
    void expected(CertifiedCase.Expected each) {
      if (each.result().unit() == null || Outcome.isSaid(each.text())) {
        return;
      }
      try {
        file.typed(each.result().column(), each.text()).number(each.result().unit(), Limits.NONE);
      } catch (RefusedException unreadable) {
        wrong(each.result().column(), unreadable);
      }
    }
  }
}
