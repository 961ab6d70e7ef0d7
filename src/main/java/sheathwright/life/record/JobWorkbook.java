package sheathwright.life.record;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** A job as the estimate's workbook tells it, whoever changed it and in whatever program. */
public final class JobWorkbook {

  private final Path file;
  private final TableBook book;
  private final Estimate estimate;

  private JobWorkbook(Path file) {
    this.file = file;
    this.book = TableBook.in(file);
    Job job = Job.of(JobTables.in(book, folder()));
    if (!Step.DRAFT.isAllowedAt(job.stage().value())) {
      throw new ProblemsException(
          List.of(new Problem(book.name(), 0, "", Step.DRAFT.refusal(job.stage().value(), "JOB"))));
    }
    this.estimate = new Estimate(job);
  }

  /** Whether a path names a workbook and not a job's folder. */
  public static boolean isNamed(Path path) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
  }

  /**
   * The job in a workbook.
   *
   * @throws ProblemsException with everything that is wrong with the file and its tables, or if its
   *     stage does not allow a quote
   */
  public static JobWorkbook in(Path file) {
    return new JobWorkbook(file);
  }

  /** Where it lies. */
  public Path folder() {
    return file.toAbsolutePath().getParent();
  }

  /** The job worked out anew. */
  public Estimate estimate() {
    return estimate;
  }

  /** The issues that the workbook tells of, and this one. */
  public Revisions revisions() {
    return Revisions.after(book, estimate);
  }
}
