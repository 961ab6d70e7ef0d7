package sheathwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
import sheathwright.job.table.Printable;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.SentDocument;
import sheathwright.life.record.Taking;
import sheathwright.workbook.audit.Audit;
import sheathwright.workbook.audit.AuditBook;

/** Holds a workbook that came back against what went out. */
@Command(
    name = "audit",
    mixinStandardHelpOptions = true,
    description = {
      "A workbook of ours came back: say what in it is not as it was written, and what that does to the total.",
      "It is held against the file kept in the job's folder sent, found by its number; else against the manifest that it"
          + " carries; else against the job's tables, written anew.",
      "Exit status 3 if something is to be cleared up before anybody goes on with it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright audit returned.xlsx --job my-job",
      "  sheathwright audit returned.xlsx --job my-job -o audit.xlsx",
      "  sheathwright audit returned.xlsx --job my-job --take"
    })
final class AuditCommand implements Callable<Integer> {

  private static final int MOST_LINES = 100;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      description = "the workbook that came back; - for standard input")
  private Path file;

  @Option(
      names = "--job",
      paramLabel = "JOB",
      description = "the job's folder; else the folder that FILE lies in, if it is a job's")
  private Path folder;

  @Option(names = "-o", paramLabel = "FILE", description = "write what was found as a workbook")
  private Path output;

  @Option(names = "--force", description = "replace that workbook if it exists")
  private boolean force;

  @Option(
      names = "--take",
      description =
          "write what whoever held it was free to change into the job's tables, if nothing else was changed")
  private boolean take;

  @Option(
      names = "--recalculate",
      description = "work out every formula, even where nothing was changed")
  private boolean recalculate;

  @Override
  public Integer call() throws IOException {
    Optional<JobFolder> job = job().map(JobFolder::in);
    if (take && job.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "--take writes into a job's tables; name its folder with --job JOB");
    }
    String name = Dash.name(file);
    Audit audit = Audit.of(name, Dash.bytes(file), job, recalculate);
    audit.lines().stream().limit(MOST_LINES).forEach(this::say);
    if (audit.lines().size() > MOST_LINES) {
      say(
          "and %s more; -o audit.xlsx writes all of them"
              .formatted(audit.lines().size() - MOST_LINES));
    }
    audit.words().forEach(this::say);
    if (output != null) {
      Dash.write(output, force, () -> AuditBook.of(audit, name));
      if (!Dash.is(output)) {
        Voice.say(spec, "wrote " + output);
      }
    }
    if (audit.stops()) {
      return Main.REFUSED;
    }
    if (take) {
      taken(job.orElseThrow(), audit.taken());
    }
    return 0;
  }

  private Optional<Path> job() {
    if (folder != null || Dash.is(file)) {
      return Optional.ofNullable(folder);
    }
    Path place = file.toAbsolutePath().normalize().getParent();
    boolean isSent = place != null && place.endsWith(SentDocument.FOLDER);
    return Optional.ofNullable(isSent ? place.getParent() : place)
        .filter(each -> Files.exists(each.resolve(JobTable.JOB.file())));
  }

  private void taken(JobFolder job, List<Taking.Input> inputs) {
    if (inputs.isEmpty()) {
      say("there is nothing to take");
      return;
    }
    Taking taking = new Taking(job, inputs);
    taking.lines().forEach(this::say);
    taking.write();
    say("written: " + String.join(", ", taking.tables()));
  }

  private void say(String line) {
    PrintWriter out =
        output != null && Dash.is(output)
            ? spec.commandLine().getErr()
            : spec.commandLine().getOut();
    out.println(Printable.line(line));
  }
}
