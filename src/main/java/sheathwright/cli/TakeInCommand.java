package sheathwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.TakingIn;

/** Takes what crews found into a job's tables. */
@Command(
    name = "take-in",
    mixinStandardHelpOptions = true,
    description = {
      "Take what crews found into marks.csv, photos.csv and log.csv: rows that are new, and cells that only the crew changed.",
      "Where two changed one cell differently, both are said and nothing is written. Taking in twice changes nothing."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright take-in my-job crew.xlsx",
      "  sheathwright take-in my-job phone-1.xlsx phone-2.xlsx"
    })
final class TakeInCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "workbooks that the command crew wrote and a crew filled in")
  private List<Path> workbooks;

  @Override
  public Integer call() {
    JobFolder job = JobFolder.in(folder);
    List<String> changes = new TakingIn(job, workbooks).write();
    if (changes.isEmpty()) {
      Voice.say(spec, "nothing in them is new: no table is changed");
    }
    changes.forEach(change -> Voice.say(spec, change));
    return 0;
  }
}
