package sheathwright.cli.firm;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;

/** Sums up a season. */
@Command(
    name = "season",
    mixinStandardHelpOptions = true,
    description = {
      "All jobs of a season in one table and one workbook, season.csv and season.xlsx, a row a job: stage, total, at worst, sheets"
          + " in the price and likely bad, found, billed and approved, what is unpaid, how long the price is good and what today's"
          + " prices make of it, days and sheets to buy. The workbook's sums are live; a chart shows whether forecasts have held.",
      "A job that cannot be read is a line with its reason, and stops no other."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  sheathwright season office", "  sheathwright season office -o out --force"})
public final class SeasonCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      description = "the season: a folder of job folders, or of tables with a column job")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write; else into that folder")
  private Path output;

  @Option(names = "--force", description = "replace an older summary")
  private boolean force;

  @Override
  public Integer call() {
    return SeasonFiles.of(folder, Optional.ofNullable(output), force)
        .write(line -> Voice.say(spec, line), spec.commandLine().getErr());
  }
}
