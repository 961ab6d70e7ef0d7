package sheathwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.Voice;
import sheathwright.workbook.page.IntakeBook;

/** Writes an empty survey. */
@Command(
    name = "intake",
    mixinStandardHelpOptions = true,
    description = {
      "Write an empty survey for a phone or a tablet: what is asked on the first call, and the tables of the roof with a"
          + " drop-down, a range and a line of help at each cell.",
      "Filled in, it is taken into a job's tables with take-in, or quoted like an estimate; prices, rates and lumber stand"
          + " beside it or in the folder above."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright intake my-job",
      "  sheathwright intake -o survey.xlsx",
      "  sheathwright take-in my-job my-job/survey.xlsx",
      "  sheathwright quote my-job/survey.xlsx"
    })
final class IntakeCommand implements Callable<Integer> {

  private static final String NAME = "survey.xlsx";

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "where survey.xlsx is written")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FILE",
      description = "the file, instead of a folder; - for standard output")
  private Path output;

  @Option(names = "--force", description = "replace the file if it exists")
  private boolean force;

  @Override
  public Integer call() {
    if ((folder == null) == (output == null)) {
      throw new ParameterException(
          spec.commandLine(), "name a folder, or with -o a file: one of the two");
    }
    Path place = output == null ? folder.resolve(NAME) : output;
    Dash.write(place, force, IntakeBook::bytes);
    if (!Dash.is(place)) {
      Voice.say(spec, "wrote " + place);
    }
    return 0;
  }
}
