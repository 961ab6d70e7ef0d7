package sheathwright.cli.pipe;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import sheathwright.figure.Shown;
import sheathwright.job.fill.FilledLines;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemLines;

/** What became of a table's rows, counted as they are written. */
public final class FillTally implements Consumer<FilledRow> {

  private static final int ROWS_A_STEP = 1_000;

  private final int all;
  private final PrintWriter err;
  private final Watch watch;
  private final List<Problem> problems;
  private int written;
  private int refused;
  private int inPart;

  /**
   * A tally that begins.
   *
   * @param watch that is told how far it is
   */
  public FillTally(FilledLines lines, PrintWriter err, Watch watch) {
    this.all = lines.file().lines().size();
    this.err = err;
    this.watch = watch;
    this.problems = new ArrayList<>(lines.problems());
  }

  @Override
  public void accept(FilledRow row) {
    written++;
    problems.addAll(row.problems());
    if (row.isRefused()) {
      refused++;
    }
    if (row.isAnsweredInPart()) {
      inPart++;
    }
    if (written % ROWS_A_STEP == 0) {
      watch.show(Shown.text("%,d of %,d rows", written, all));
    }
  }

  /** Says what is wrong and how many rows were refused. */
  public void say() {
    watch.clear();
    ProblemLines.of(problems).forEach(err::println);
    if (refused > 0) {
      err.println(Shown.text("%,d of %,d rows refused", refused, all));
    }
    if (inPart > 0) {
      err.println(Shown.text("%,d of %,d rows answered in part", inPart, all));
    }
  }

  /** Whether nothing was wrong. */
  public boolean isClean() {
    return problems.isEmpty();
  }
}
