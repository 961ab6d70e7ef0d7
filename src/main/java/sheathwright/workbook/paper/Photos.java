package sheathwright.workbook.paper;

import java.nio.file.Path;
import sheathwright.job.Job;

/** The pictures of a job, as its table names them and its folder holds them. */
public record Photos(Job job, Path folder) {

  /**
   * The pictures of a job.
   *
   * @param folder that the table's names begin in
   */
  public static Photos of(Job job, Path folder) {
    return new Photos(job, folder);
  }
}
