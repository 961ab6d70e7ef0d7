package sheathwright.job.solve;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.job.solve.PlanTable.What;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;

/**
 * What a file with a plan of cuts and its certificate comes to, checked without any search.
 *
 * @param plan what the plan is, in words
 * @param fault what is wrong with the plan; empty if it cuts what is asked
 * @param least what no plan undercuts, in words
 * @param isHeld whether the certificate proves that
 * @param isProven whether plan and certificate meet
 */
public record PlanProof(
    String plan, Optional<String> fault, String least, boolean isHeld, boolean isProven) {

  /** Whether a table is such a file. */
  public static boolean is(CsvFile file) {
    return file.header().contains(PlanTable.WHAT.name())
        && file.header().contains(PlanTable.PARTS.name());
  }

  /**
   * Checks one.
   *
   * @throws ProblemsException if it cannot be read, with all that is wrong: line and column
   */
  public static PlanProof of(CsvFile file) {
    boolean isOfSticks = file.header().contains(PlanTable.LENGTH.name());
    TableReader reader = new TableReader();
    List<Row> rows = reader.rows(file, isOfSticks ? PlanTable.OF_STICKS : PlanTable.OF_SHEETS);
    reader.raiseProblems();
    Lines lines = new Lines(file, rows);
    return isOfSticks ? StickProof.of(lines) : SheetProof.of(lines);
  }

  /** Whether all that it says is so. */
  public boolean holds() {
    return fault.isEmpty() && isHeld;
  }

  /** The lines of a plan, by what they are. */
  record Lines(CsvFile file, List<Row> rows) {

    List<Row> of(What what) {
      return rows.stream().filter(row -> row.of(PlanTable.WHAT).value() == what).toList();
    }

    /** The one line of its kind. */
    Row one(What what) {
      List<Row> found = of(what);
      if (found.size() != 1) {
        throw refused(
            0,
            "",
            "it has %d lines that begin with %s; a plan has one"
                .formatted(found.size(), what.word()));
      }
      return found.get(0);
    }

    <Q extends Quantity> double number(Row row, Field<Figure<Q>> column) {
      return row.read(column)
          .orElseThrow(() -> refused(row.line().number(), column.name(), "it is missing"))
          .value();
    }

    /** A whole number of parts. */
    long parts(Row row) {
      Choice<String> text =
          row.read(PlanTable.PARTS)
              .orElseThrow(
                  () -> refused(row.line().number(), PlanTable.PARTS.name(), "it is missing"));
      try {
        return Long.parseLong(text.value());
      } catch (NumberFormatException noNumber) {
        throw refused(
            row.line().number(),
            PlanTable.PARTS.name(),
            "\"%s\" is no whole number of parts".formatted(text.value()));
      }
    }

    ProblemsException refused(long line, String column, String why) {
      return new ProblemsException(List.of(new Problem(file.name(), line, column, why)));
    }
  }
}
