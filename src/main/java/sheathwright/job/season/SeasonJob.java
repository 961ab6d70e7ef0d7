package sheathwright.job.season;

import java.nio.file.Path;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** One job of a season. */
public final class SeasonJob {

  private final String name;
  private final Path folder;
  private final Supplier<JobTables> tables;
  private final UnaryOperator<Problem> inTheSeason;

  SeasonJob(
      String name, Path folder, Supplier<JobTables> tables, UnaryOperator<Problem> inTheSeason) {
    this.name = name;
    this.folder = folder;
    this.tables = tables;
    this.inTheSeason = inTheSeason;
  }

  /** What the season calls it: no two jobs alike, and good for a folder's name. */
  public String name() {
    return name;
  }

  /** Where its pictures lie, and what was sent. */
  public Path folder() {
    return folder;
  }

  /**
   * Its tables, as if they were all that there are.
   *
   * @throws ProblemsException with everything that is wrong with its folder and its files
   */
  public JobTables tables() {
    return said(tables);
  }

  /**
   * The job, read.
   *
   * @throws ProblemsException with everything that is wrong with its tables
   */
  public Job job() {
    JobTables all = tables();
    return said(() -> Job.of(all));
  }

  /**
   * What is made of this job.
   *
   * @throws ProblemsException with what is refused, said so that one can tell which job is meant
   */
  public <T> T said(Supplier<T> made) {
    try {
      return made.get();
    } catch (ProblemsException wrong) {
      throw new ProblemsException(wrong.problems().stream().map(inTheSeason).toList());
    }
  }
}
