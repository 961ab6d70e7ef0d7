package sheathwright.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.TableGuide.For;
import sheathwright.life.record.Step;
import sheathwright.life.start.Starting;

/** Begins a job, or an office. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Begin a job: write its tables into a folder, every key with its unit, its range and an example in the column of notes.",
      "What is not known stays blank. What the office keeps in a folder above (firm.csv, prices.csv, rates.csv, lumber.csv) is not written again.",
      "Nothing is ever written over."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright new --firm office        the office's letterhead and price book, once",
      "  sheathwright new office/quince-lane   a job of that office",
      "  sheathwright new office/hip-cottage --hip --rafters"
    })
final class NewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "where its tables go; it is made if need be")
  private Path folder;

  @Option(
      names = "--firm",
      description =
          "begin an office instead: firm.csv, prices.csv, rates.csv, lumber.csv, rules.csv")
  private boolean isFirm;

  @Option(names = "--hip", description = "four planes whose sides lean in, instead of two")
  private boolean isHip;

  @Option(
      names = "--rafters",
      description = "rafters that are checked, and straightened by one reading each")
  private boolean hasRafters;

  @Option(names = "--stations", description = "the same, with readings at several stations")
  private boolean hasStations;

  @Option(names = "--trusses", description = "trusses that were read at several stations")
  private boolean hasTrusses;

  @Option(names = "--seam", description = "a standing-seam covering")
  private boolean hasSeam;

  @Option(names = "--maker", description = "what the covering's maker asks of the deck")
  private boolean hasMaker;

  @Override
  public Integer call() {
    boolean isOfAJob = isHip || hasRafters || hasStations || hasTrusses || hasSeam || hasMaker;
    if (isFirm && isOfAJob) {
      throw new ParameterException(
          spec.commandLine(),
          "--firm begins an office, which has no roof; leave the other options to its jobs");
    }
    Starting start =
        isFirm ? Starting.office(folder) : Starting.job(folder, isHip, hasMaker, kinds());
    start.write();
    say("wrote %s into %s".formatted(String.join(", ", start.files()), folder));
    if (isFirm) {
      say(
          "fill in firm.csv, prices.csv and rates.csv, in any spreadsheet program; the notes say what each is");
      say("next: " + Step.command("new", folder.resolve("JOB").toString(), ""));
    } else {
      if (!start.fromAbove().isEmpty()) {
        say("from the office: " + String.join(", ", start.fromAbove()));
      }
      say(
          "fill in job.csv and planes.csv first; a note that ends in \"if known\" may stay blank, and quote says what is missing");
      say("next: " + Step.command("quote", folder.toString(), ""));
    }
    return 0;
  }

  private Set<For> kinds() {
    Set<For> kinds = EnumSet.noneOf(For.class);
    if (hasRafters) {
      kinds.add(For.RAFTERS);
    }
    if (hasStations || hasTrusses) {
      kinds.add(For.STATIONS);
    }
    if (hasTrusses) {
      kinds.add(For.TRUSSES);
    }
    if (hasSeam) {
      kinds.add(For.SEAM);
    }
    return kinds;
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}
