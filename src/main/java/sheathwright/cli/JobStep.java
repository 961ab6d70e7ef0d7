package sheathwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.Job;
import sheathwright.job.table.Printable;
import sheathwright.job.table.ProblemLines;
import sheathwright.life.record.JobFolder;
import sheathwright.workbook.told.PhotoCount;

/** A step of the life of one job: whose, and when. */
final class JobStep extends StepDay {

  private static final int MOST_ASKED = 12;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  Path folder() {
    return folder;
  }

  /** Asks about what is allowed in a job's tables, but hardly meant. */
  static void ask(Job job, PrintWriter err) {
    List<String> all = ProblemLines.of(job.questions());
    all.stream().limit(MOST_ASKED).forEach(each -> err.println("question: " + each));
    if (all.size() > MOST_ASKED) {
      err.println(
          "question: and %s more; the first page of the estimate has them all"
              .formatted(all.size() - MOST_ASKED));
    }
  }

  /**
   * Says how many photographs a document rests on, and as a check which marks none of them shows.
   */
  static void tell(String where, PhotoCount photographs, CommandSpec command) {
    String count =
        photographs.missing().isPresent() ? photographs.counted() + "." : photographs.words();
    Voice.say(command, where + ": " + count);
    photographs
        .missing()
        .ifPresent(
            marks ->
                command
                    .commandLine()
                    .getErr()
                    .println("check: " + Printable.line("photographs, " + marks)));
  }

  /** The job as it lies in its folder. */
  JobFolder job() {
    return JobFolder.in(folder);
  }
}
