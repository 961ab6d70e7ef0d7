package sheathwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.life.back.TakingIn;

/** Takes what came back from the roof and the attic into a job's tables. */
@Command(
    name = "take-in",
    mixinStandardHelpOptions = true,
    description = {
      "Take what came back from the roof into the job's tables: of a crew's workbook what was found, read, photographed and"
          + " done, of a survey whatever the tables do not say yet.",
      "Where two say a cell differently, both are said and nothing is written. Taking in twice changes nothing."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright take-in my-job crew.xlsx",
      "  sheathwright take-in my-job phone-1.xlsx phone-2.xlsx",
      "  sheathwright take-in my-job survey.xlsx"
    })
final class TakeInCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "workbooks that the commands crew and intake wrote, filled in")
  private List<Path> workbooks;

  @Override
  public Integer call() {
    TakingIn taking = new TakingIn(folder, workbooks);
    List<String> changes = taking.write();
    if (changes.isEmpty()) {
      Voice.say(spec, "nothing in them is new: no table is changed");
    }
    changes.forEach(change -> Voice.say(spec, change));
    taking.next().ifPresent(next -> Voice.say(spec, next));
    return 0;
  }
}
