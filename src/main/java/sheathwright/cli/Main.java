package sheathwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import sheathwright.figure.Printable;
import sheathwright.figure.RefusedException;
import sheathwright.job.ProblemsException;
import sheathwright.repl.Prompt;
import sheathwright.repl.Script;

/** The command line. Results go to standard output, messages to standard error. */
@Command(
    name = "sheathwright",
    description =
        "Estimates for stripping, inspecting, repairing and levelling the wood roof deck of a house.",
    mixinStandardHelpOptions = true,
    version = "sheathwright 0.1.0",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      QuoteCommand.class,
      FillCommand.class,
      SolveCommand.class,
      RunCommand.class,
      FunctionsCommand.class,
      HelpCommand.class,
      ExplainCommand.class
    },
    footerHeading = "%n",
    footer = {
      "Exit status: 0 done, 2 wrong use, 3 input refused, 1 a fault of the program's own.",
      "Results are planning help: local code and licensed practice decide."
    })
public final class Main implements Callable<Integer> {

  /** The input was refused. */
  static final int REFUSED = 3;

  @Spec private CommandSpec spec;

  /** Runs one command and exits with its status. */
  public static void main(String[] arguments) {
    if (arguments.length > 0 && arguments[0].equals("run")) {
      Script.wake();
    }
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int status = commandLine(out, err).execute(arguments);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** The commands, writing where they are told. */
  public static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    CommandLine commands =
        new CommandLine(new Main())
            .setOut(out)
            .setErr(err)
            .setUsageHelpAutoWidth(true)
            .setExecutionExceptionHandler(Main::said)
            .setParameterExceptionHandler(Main::wrongUse);
    commands.getSubcommands().get("run").setStopAtPositional(true); // the rest is the script's own
    return commands;
  }

  @Override
  public Integer call() throws IOException {
    if (System.console() != null) {
      Path home = Path.of(System.getProperty("user.home"));
      Prompt.open(home.resolve(".sheathwright_history"));
      return 0;
    }
    PrintWriter out = spec.commandLine().getOut();
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    return Script.pipe(in, out, spec.commandLine().getErr()) ? 0 : REFUSED;
  }

  private static int said(
      Exception thrown, CommandLine command, CommandLine.ParseResult arguments) {
    PrintWriter err = command.getErr();
    if (thrown instanceof RefusedException || thrown instanceof ProblemsException) {
      err.println(Printable.lines(thrown.getMessage()));
      return REFUSED;
    }
    if (thrown instanceof java.nio.file.FileSystemException file) {
      err.println(Printable.line(file.getFile() + ": cannot be written or read: " + reason(file)));
      return REFUSED;
    }
    err.println(
        "a fault of sheathwright's own, not of your input: "
            + Printable.line(thrown.toString())
            + "; please report it with the command that you typed");
    return CommandLine.ExitCode.SOFTWARE;
  }

  /** Wrong use is said as picocli says it, whatever was typed. */
  private static int wrongUse(CommandLine.ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(command.getColorScheme().errorText(Printable.lines(wrong.getMessage())));
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err)) {
      command.usage(err);
    }
    return CommandLine.ExitCode.USAGE;
  }

  private static String reason(java.nio.file.FileSystemException file) {
    if (file instanceof java.nio.file.FileAlreadyExistsException) {
      return "a file of that name stands where a folder is wanted";
    }
    if (file instanceof java.nio.file.AccessDeniedException) {
      return "permission is denied";
    }
    return file.getReason() == null ? "the disk refused it" : file.getReason();
  }
}
