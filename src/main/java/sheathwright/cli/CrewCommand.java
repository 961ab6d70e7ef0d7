package sheathwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.Estimate;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Step;
import sheathwright.workbook.page.CrewBook;

/** Writes what a crew takes onto the roof. */
@Command(
    name = "crew",
    mixinStandardHelpOptions = true,
    description = {
      "Write what a crew takes onto the roof, on a phone without a signal or on paper: each plane's map, cut list and marks of"
          + " sisters, and a row for each place to say what was found and done. No price stands in it.",
      "What comes back is taken in with take-in."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  sheathwright crew my-job -o crew.xlsx", "  sheathwright take-in my-job crew.xlsx"})
final class CrewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FILE",
      description = "where to write, - for standard output; else crew.xlsx in the job's folder")
  private Path output;

  @Option(names = "--force", description = "replace the file if it exists")
  private boolean force;

  @Override
  public Integer call() {
    JobFolder job = JobFolder.in(folder);
    job.require(Step.CREW);
    Path place = output == null ? folder.resolve("crew.xlsx") : output;
    Dash.write(place, force, () -> CrewBook.bytes(new Estimate(job.job())));
    if (!Dash.is(place)) {
      Voice.say(spec, "wrote " + place);
      Voice.say(spec, "next: once it comes back, " + job.command("take-in", place.toString()));
    }
    return 0;
  }
}
