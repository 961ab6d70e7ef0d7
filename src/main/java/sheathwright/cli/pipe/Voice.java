package sheathwright.cli.pipe;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import sheathwright.job.table.Printable;

/**
 * How much a command says. Answers go to standard output whatever is asked; so do, unless it is to
 * be quiet, the sentences of a command whose answer is files. What is wrong, stops or is asked
 * about goes to standard error and is always said.
 */
public final class Voice {

  private static final String QUIET = "--quiet";

  @Option(
      names = QUIET,
      scope = ScopeType.INHERIT,
      description = "say nothing but the answer, and what is wrong or asked about")
  private boolean isQuiet;

  /** Says a line of what was done or comes next, unless the command is to be quiet. */
  public static void say(CommandSpec command, String line) {
    if (!isQuiet(command)) {
      command.commandLine().getOut().println(Printable.line(line));
    }
  }

  /** Says a line beside an answer that has standard output for itself. */
  public static void sayBeside(CommandSpec command, String line) {
    if (!isQuiet(command)) {
      command.commandLine().getErr().println(Printable.line(line));
    }
  }

  /** Whether a command is to say nothing but its answer and what is wrong. */
  public static boolean isQuiet(CommandSpec command) {
    return Boolean.TRUE.equals(command.root().findOption(QUIET).getValue());
  }
}
