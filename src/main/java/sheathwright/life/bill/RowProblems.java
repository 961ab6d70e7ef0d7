package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.JobTable;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;

/** What is wrong with the rows of some tables, gathered so that all of it is said at once. */
final class RowProblems {

  private final List<Problem> all = new ArrayList<>();

  /** Says what is wrong with one cell of a row. */
  void add(JobTable table, Row row, Field<?> field, String message) {
    all.add(new Problem(table.file(), row.line().number(), field.name(), message));
  }

  /** Says what is wrong with a table as a whole. */
  void add(JobTable table, String message) {
    all.add(new Problem(table.file(), 0, "", message));
  }

  /** Stops here if anything is wrong. */
  void raise() {
    if (!all.isEmpty()) {
      throw new ProblemsException(all);
    }
  }
}
