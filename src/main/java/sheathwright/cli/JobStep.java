package sheathwright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;
import sheathwright.life.record.JobFolder;

/** A step of the life of one job: whose, and when. */
final class JobStep extends StepDay {

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  Path folder() {
    return folder;
  }

  /** The job as it lies in its folder. */
  JobFolder job() {
    return JobFolder.in(folder);
  }
}
