package sheathwright.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import sheathwright.cli.firm.CalibrateCommand;
import sheathwright.cli.firm.SeasonCommand;
import sheathwright.cli.pipe.StandardOutput;
import sheathwright.cli.pipe.Voice;
import sheathwright.cli.proof.VerifyCommand;
import sheathwright.job.table.Printable;
import sheathwright.repl.Prompt;
import sheathwright.repl.Script;
import sheathwright.workbook.file.Program;

/** The command line. Results go to standard output, messages to standard error. */
@Command(
    name = "sheathwright",
    description =
        "Estimates for stripping, inspecting, repairing and leveling the wood roof deck of a house.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%n",
    footer = {
      "Exit status: 0 done, 2 wrong use, 3 input or output refused (a full disk too), 1 a fault of the program's own. A reader of a pipe who has had enough refuses nothing.",
      "Results are planning help: local code and licensed practice decide."
    })
public final class Main implements Callable<Integer> {

  static final List<Class<?>> COMMANDS =
      List.of(
          NewCommand.class,
          IntakeCommand.class,
          CheckCommand.class,
          QuoteCommand.class,
          AgreeCommand.class,
          ForecastCommand.class,
          ChangeOrderCommand.class,
          CloseCommand.class,
          AuditCommand.class,
          CompareCommand.class,
          PapersCommand.class,
          CrewCommand.class,
          TakeInCommand.class,
          LetterheadCommand.class,
          CalculatorsCommand.class,
          FillCommand.class,
          SolveCommand.class,
          SeasonCommand.class,
          CalibrateCommand.class,
          RunCommand.class,
          FunctionsCommand.class,
          TablesCommand.class,
          VerifyCommand.class,
          HelpCommand.class,
          ExplainCommand.class);

  /** The input was refused, or a file or standard output could not be written. */
  static final int REFUSED = Script.REFUSED;

  private static final String USAGE = "Usage: ";

  /** The version, as the build left it. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {Program.COMMAND};
    }
  }

  @Spec private CommandSpec spec;

  @Mixin private Voice voice;

  /** Runs one command and exits with its status. */
  public static void main(String[] arguments) {
    Locale.setDefault(Locale.ENGLISH); // what is said, and read of Java's compiler, is English
    StandardOutput standardOutput = new StandardOutput(new FileOutputStream(FileDescriptor.out));
    System.setOut(new PrintStream(standardOutput, true, StandardCharsets.UTF_8));
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(status(standardOutput, err, arguments));
  }

  /** The status of one command; when it ends, its output has been written or its loss is said. */
  static int status(StandardOutput standardOutput, PrintWriter err, String... arguments) {
    PrintWriter out = new PrintWriter(standardOutput, true, StandardCharsets.UTF_8);
    int status;
    try {
      status = commandLine(out, err, arguments).execute(arguments);
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError thrown) {
      status = said(thrown, err);
    }
    out.flush();
    Optional<String> complaint = standardOutput.complaint();
    complaint.ifPresent(err::println);
    err.flush();
    return status == 0 && complaint.isPresent() ? REFUSED : status;
  }

  /**
   * The commands, writing where they are told. Where the arguments begin with a command that needs
   * no other, it alone is made: each costs the start some milliseconds.
   */
  public static CommandLine commandLine(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine commands = new CommandLine(new Main());
    commandsFor(arguments.length == 0 ? "" : arguments[0]).forEach(commands::addSubcommand);
    commands
        .setOut(out)
        .setErr(err)
        .registerConverter(Path.class, Main::path)
        .setUsageHelpAutoWidth(true)
        .setOverwrittenOptionsAllowed(true) // so that both values can be named
        .setExecutionStrategy(Main::ranOnce)
        .setParameterExceptionHandler(Main::wrongUse)
        .setExecutionExceptionHandler((thrown, command, parsed) -> said(thrown, command.getErr()));
    CommandLine run = commands.getSubcommands().get(RunCommand.NAME);
    if (run != null) {
      run.setStopAtPositional(true); // the rest is the script's own
    }
    return commands;
  }

  private static List<Class<?>> commandsFor(String first) {
    return COMMANDS.stream()
        .filter(type -> type != HelpCommand.class)
        .filter(type -> type.getAnnotation(Command.class).name().equals(first))
        .findFirst()
        .<List<Class<?>>>map(List::of)
        .orElse(COMMANDS);
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException unwritable) {
      throw new TypeConversionException("\"%s\" is no name of a file here".formatted(typed));
    }
  }

  /** Runs a command whose options are each given once at most. */
  private static int ranOnce(ParseResult parsed) {
    for (ParseResult each = parsed; each != null; each = each.subcommand()) {
      for (OptionSpec option : each.matchedOptions()) {
        List<String> values = option.stringValues();
        if (values.contains("")) {
          throw new ParameterException(
              each.commandSpec().commandLine(),
              "%s is given with nothing behind it; name something, or leave it away"
                  .formatted(option.longestName()));
        }
        if (option.longestName().equals("-o")
            && option.paramLabel().equals("FOLDER")
            && values.contains("-")) {
          throw new ParameterException(
              each.commandSpec().commandLine(),
              "-o - is standard output, which holds one file; name a folder");
        }
        if (values.size() > 1) {
          String named = option.arity().max() == 0 ? "" : ", as " + String.join(" and ", values);
          throw new ParameterException(
              each.commandSpec().commandLine(),
              "%s is given more than once%s; give it once".formatted(option.longestName(), named));
        }
      }
    }
    return new CommandLine.RunLast().execute(parsed);
  }

  @Override
  public Integer call() throws IOException {
    if (System.console() != null) {
      Prompt.open(Path.of(System.getProperty("user.home")));
      return 0;
    }
    PrintWriter out = spec.commandLine().getOut();
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    return Script.pipe(in, out, spec.commandLine().getErr());
  }

  private static int said(Throwable thrown, PrintWriter err) {
    Failure failure = Failure.of(thrown);
    err.println(Printable.lines(failure.line()));
    return failure.status();
  }

  /** Wrong use is said in short: what is wrong, how the command is written, where to read on. */
  private static int wrongUse(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(command.getColorScheme().errorText(Printable.lines(wrong.getMessage())));
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err)) {
      err.print(USAGE + command.getHelp().synopsis(USAGE.length()));
    }
    err.println("%s --help says more".formatted(command.getCommandSpec().qualifiedName()));
    return CommandLine.ExitCode.USAGE;
  }
}
