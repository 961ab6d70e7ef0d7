package sheathwright.cli.pipe;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;

/**
 * How far long work is, in one line of standard error that is written over: shown where somebody
 * sits before a terminal, and nothing in a pipe, a file or a quiet command.
 */
public final class Watch {

  private static final int WIDTH = 60;

  private final PrintWriter err;
  private final boolean isWatched;
  private boolean isShown;

  /** A watch over work, shown or not. */
  public Watch(PrintWriter err, boolean isWatched) {
    this.err = err;
    this.isWatched = isWatched;
  }

  /** A watch over the work of a command whose standard output is free for others meanwhile. */
  public static Watch over(CommandSpec command) {
    return new Watch(command.commandLine().getErr(), Terminals.hasErr() && !Voice.isQuiet(command));
  }

  /** A watch over a command that writes lines to standard output all the time. */
  public static Watch besideLines(CommandSpec command) {
    return new Watch(
        command.commandLine().getErr(),
        Terminals.hasErr() && !Terminals.hasOut() && !Voice.isQuiet(command));
  }

  /** Shows how far it is. */
  public void show(String line) {
    if (isWatched) {
      String shown = line.length() > WIDTH ? line.substring(0, WIDTH) : line;
      err.print("\r" + shown + " ".repeat(WIDTH - shown.length()));
      err.flush();
      isShown = true;
    }
  }

  /** Takes the line away, before something else is said. */
  public void clear() {
    if (isShown) {
      err.print("\r" + " ".repeat(WIDTH) + "\r");
      err.flush();
      isShown = false;
    }
  }
}
