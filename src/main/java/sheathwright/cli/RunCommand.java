package sheathwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Dash;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.repl.Script;

/** Runs a script. */
@Command(
    name = RunCommand.NAME,
    mixinStandardHelpOptions = true,
    description = {
      "Run a script in the language of the prompt. Answers of bare expressions are shown, definitions are not.",
      "The first line that fails ends it, with file:line: and the reason."
    },
    footerHeading = "%nExample:%n",
    footer = "  sheathwright run houses.jsh 12 14")
final class RunCommand implements Callable<Integer> {

  static final String NAME = "run";

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "SCRIPT",
      description = "the script's file; - for standard input")
  private Path script;

  @Parameters(
      index = "1..*",
      paramLabel = "ARG",
      description = "stand in the script as args[0], args[1] and so on")
  private List<String> arguments = List.of();

  @Override
  public Integer call() throws IOException {
    var commandLine = spec.commandLine();
    if (Dash.is(script)) {
      return Script.run(
          Dash.INPUT, Dash.text(), arguments, commandLine.getOut(), commandLine.getErr());
    }
    if (!Files.exists(script) || Files.isDirectory(script)) {
      String why = Files.exists(script) ? "it is a folder" : "there is no such script";
      throw new ProblemsException(List.of(new Problem(script.toString(), 0, "", why)));
    }
    return Script.run(script, arguments, commandLine.getOut(), commandLine.getErr());
  }
}
