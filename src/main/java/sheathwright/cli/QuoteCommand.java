package sheathwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.figure.Printable;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.NewFile;
import sheathwright.job.ProblemLines;
import sheathwright.workbook.EstimateBook;
import sheathwright.workbook.QuoteBook;

/** Makes a job's two workbooks. */
@Command(
    name = "quote",
    mixinStandardHelpOptions = true,
    description = {
      "Make a job's workbooks: estimate.xlsx for the office, and quote.xlsx for the homeowner, which holds no cost.",
      "A job is a folder of small tables: job.csv, planes.csv, prices.csv, rates.csv and, if rafters are levelled, readings.csv."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright quote demo-data/quince-hollow",
      "  sheathwright quote demo-data/mistwater-cottage -o out --force"
    })
final class QuoteCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write; else into the job's own folder")
  private Path output;

  @Option(names = "--force", description = "replace the workbooks if they exist")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    Path place = output == null ? folder : output;
    Estimate estimate = new Estimate(Job.in(folder));
    Files.createDirectories(place);
    NewFile forOffice = NewFile.at(place.resolve("estimate.xlsx"), force);
    NewFile forHomeowner = NewFile.at(place.resolve("quote.xlsx"), force);
    byte[] office = EstimateBook.bytes(estimate);
    byte[] homeowner = QuoteBook.bytes(estimate);
    forOffice.write(office);
    forHomeowner.write(homeowner);
    var out = spec.commandLine().getOut();
    out.println(
        Printable.line(
            "wrote " + place.resolve("estimate.xlsx") + " and " + place.resolve("quote.xlsx")));
    out.println(
        "the homeowner pays " + estimate.total() + ", at worst " + estimate.quote().worstCase());
    out.println("the rafters: " + estimate.framing().decision());
    var err = spec.commandLine().getErr();
    ProblemLines.of(estimate.job().questions()).forEach(each -> err.println("question: " + each));
    estimate.ties().stream()
        .filter(tie -> !tie.holds().holds())
        .forEach(tie -> err.println("look, this does not hold: " + tie.what()));
    return 0;
  }
}
