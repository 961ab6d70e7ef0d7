package sheathwright.cli.firm;

import java.io.PrintWriter;
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
import sheathwright.job.JobTable;
import sheathwright.job.file.NewFile;
import sheathwright.job.season.Season;
import sheathwright.job.table.Printable;
import sheathwright.life.firm.Calibration;
import sheathwright.life.firm.Proposal;

/** Proposes rates from what a firm's jobs have taken. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description = {
      "What the firm's own jobs teach its rates: the share of bad sheets from history.csv, hours of each task from the crews'"
          + " log.csv, failures of kept sheets from callbacks.csv. Each with its rows, its range, and the reason where nothing"
          + " is proposed.",
      "Written as rates-proposed.csv beside rates.csv, never over it: read it, and type into rates.csv what you believe. What the"
          + " jobs' quotes would have been is said too."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright calibrate office",
      "  sheathwright calibrate office -o proposed-2027.csv --force"
    })
public final class CalibrateCommand implements Callable<Integer> {

  private static final int REFUSED = 3;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      description = "the folder of the jobs, with history.csv and callbacks.csv beside them")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FILE",
      description = "where to write, - for standard output; else rates-proposed.csv in that folder")
  private Path output;

  @Option(names = "--force", description = "replace an older proposal")
  private boolean force;

  @Override
  public Integer call() {
    Path place = output == null ? folder.resolve(Season.PROPOSED) : output;
    if (place.endsWith(JobTable.RATES.file())) {
      throw new ParameterException(
          spec.commandLine(),
          "-o %s: no proposal is written over rates; name another file, such as %s"
              .formatted(place, Season.PROPOSED));
    }
    if (!Dash.is(place)) {
      NewFile.at(place, force);
    }
    Calibration calibration =
        new Calibration(Season.orHistoryIn(folder), Runtime.getRuntime().availableProcessors());
    Dash.write(place, force, calibration::table);
    PrintWriter err = spec.commandLine().getErr();
    calibration.refusals().forEach(each -> err.println(Printable.line(each)));
    if (!Dash.is(place)) {
      calibration.proposals().stream().map(CalibrateCommand::said).forEach(this::say);
      calibration.lines().forEach(this::say);
      say("wrote " + place);
    }
    return calibration.refusals().isEmpty() ? 0 : REFUSED;
  }

  private static String said(Proposal proposal) {
    String old = proposal.old().isEmpty() ? "" : " (now %s)".formatted(proposal.old());
    return proposal.isMade()
        ? "%s: %s%s, range %s, %s rows%s"
            .formatted(
                proposal.rate(),
                proposal.proposed(),
                old,
                proposal.range(),
                proposal.rows(),
                beside(proposal))
        : "%s: nothing proposed%s: %s".formatted(proposal.rate(), old, proposal.reason());
  }

  private static String beside(Proposal proposal) {
    String visit =
        proposal.visit().isEmpty() ? "" : ", beside %s h a visit".formatted(proposal.visit());
    return visit + (proposal.reason().isEmpty() ? "" : "; " + proposal.reason());
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}
