package sheathwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.file.NewFile;
import sheathwright.job.file.NewFiles;
import sheathwright.job.table.Printable;
import sheathwright.job.table.ProblemLines;
import sheathwright.workbook.page.JobBooks;

/** Makes a job's two workbooks. */
@Command(
    name = "quote",
    mixinStandardHelpOptions = true,
    description = {
      "Make a job's workbooks: estimate.xlsx for the office, and quote.xlsx for the homeowner, which holds no cost.",
      "A job is a folder of small tables. It needs those marked *, and the others as it has them:"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright quote demo-data/quince-hollow",
      "  sheathwright quote demo-data/mistwater-cottage -o out --force"
    })
final class QuoteCommand implements Callable<Integer> {

  private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write; else into the job's own folder")
  private Path output;

  @Option(names = "--force", description = "replace the workbooks if they exist")
  private boolean force;

  /** Takes what the command is made of, and tells its help of the tables. */
  @Spec
  void take(CommandSpec described) {
    spec = described;
    List<String> lines = new ArrayList<>(List.of(described.usageMessage().description()));
    for (JobTable table : JobTable.values()) {
      String mark = table.isNeeded() ? "*" : " ";
      lines.add("  %s %-12s  %s".formatted(mark, table.file(), table.meaning()));
    }
    described.usageMessage().description(lines.toArray(String[]::new));
  }

  @Override
  public Integer call() throws IOException {
    Path place = output == null ? folder : output;
    Estimate estimate = new Estimate(Job.in(folder));
    JobBooks books = JobBooks.of(estimate);
    Files.createDirectories(place);
    NewFile forOffice = NewFile.at(place.resolve("estimate.xlsx"), force);
    NewFile forHomeowner = NewFile.at(place.resolve("quote.xlsx"), force);
    new NewFiles().with(forOffice, books.office()).with(forHomeowner, books.homeowner()).write();
    var out = spec.commandLine().getOut();
    out.println(
        Printable.line(
            "wrote " + place.resolve("estimate.xlsx") + " and " + place.resolve("quote.xlsx")));
    out.println(
        "the homeowner pays " + estimate.total() + ", at worst " + estimate.quote().worstCase());
    out.println("the rafters: " + estimate.framing().decision());
    var err = spec.commandLine().getErr();
    if (!estimate.stopTie().holds().holds()) {
      err.println(
          estimate.framing().decision() + "; until then nobody repairs the rafters by this quote");
      estimate.framing().stops().lines().forEach(err::println);
    }
    ProblemLines.of(estimate.job().questions()).forEach(each -> err.println("question: " + each));
    estimate.ties().stream()
        .filter(tie -> !tie.holds().holds())
        .forEach(tie -> err.println("check: " + tie.what()));
    return 0;
  }
}
