package sheathwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Nearest;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.table.Printable;
import sheathwright.life.record.JobFolder;
import sheathwright.life.unseen.OpenRoof;

/** Says what the rest of a deck likely holds, and whether the work goes on as agreed. */
@Command(
    name = "forecast",
    mixinStandardHelpOptions = true,
    description = {
      "After each plane that is opened: what the rest of the deck likely holds, in plain words and percentiles; whether so much is"
          + " found that you are to speak with the owner before the next plane; whether patching still costs less than the whole"
          + " deck anew; whether the sheets on the truck are enough; how much may be opened in a day, and at which chance of rain"
          + " nothing.",
      "A plane is open once a mark was found on it with the covering off, or it is named. What is not known is said, with the key"
          + " to fill. Nothing is written."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright forecast my-job",
      "  sheathwright forecast my-job --open A,B --truck 12"
    })
final class ForecastCommand implements Callable<Integer> {

  private static final int MOST_SHEETS = 5_000;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Option(
      names = "--open",
      paramLabel = "PLANE",
      split = ",",
      description = "planes that are open though nothing was found on them")
  private List<String> open = List.of();

  @Option(
      names = "--truck",
      paramLabel = "SHEETS",
      description = "sheets on the truck; else truck_sheets in job.csv")
  private Integer truck;

  @Override
  public Integer call() {
    Estimate estimate = new Estimate(JobFolder.in(folder).job());
    OpenRoof roof = new OpenRoof(estimate, planes(estimate), loaded());
    PrintWriter out = spec.commandLine().getOut();
    roof.lines().forEach(line -> out.println(Printable.line(line)));
    PrintWriter err = spec.commandLine().getErr();
    roof.unknown().forEach(line -> err.println(Printable.line("not known: " + line)));
    return 0;
  }

  private Set<String> planes(Estimate estimate) {
    List<String> known =
        estimate.deck().parts().stream().map(Deck.Part::plane).map(plane -> plane.name()).toList();
    Set<String> planes = new LinkedHashSet<>();
    for (String name : open) {
      String plane = name.strip();
      if (!known.contains(plane)) {
        throw new ParameterException(
            spec.commandLine(),
            "--open: the roof has no plane \"%s\"; it has %s%s"
                .formatted(plane, String.join(", ", known), Nearest.asked(plane, known)));
      }
      planes.add(plane);
    }
    return planes;
  }

  private Optional<Figure<sheathwright.figure.Quantity.Sheets>> loaded() {
    if (truck != null && (truck < 0 || truck > MOST_SHEETS)) {
      throw new ParameterException(
          spec.commandLine(),
          Shown.text("--truck is %s; it must be from 0 to %,d sheets", truck, MOST_SHEETS));
    }
    return Optional.ofNullable(truck).map(sheets -> Figure.of(sheets, Units.SHEET));
  }
}
