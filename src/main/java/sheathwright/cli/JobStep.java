package sheathwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;
import sheathwright.job.Job;
import sheathwright.job.table.ProblemLines;
import sheathwright.life.record.JobFolder;

/** A step of the life of one job: whose, and when. */
final class JobStep extends StepDay {

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  Path folder() {
    return folder;
  }

  /** Asks about what is allowed in a job's tables, but hardly meant. */
  static void ask(Job job, PrintWriter err) {
    ProblemLines.of(job.questions()).forEach(each -> err.println("question: " + each));
  }

  /** The job as it lies in its folder. */
  JobFolder job() {
    return JobFolder.in(folder);
  }
}
