package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

/** One command, run as from a shell. No command may show a stack trace, whatever it is given. */
record CommandRun(int status, String out, String err) {

  static CommandRun of(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
            .execute(Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new));
    assertThat(out + "\n" + err).doesNotContain("\tat ");
    return new CommandRun(status, out.toString(), err.toString());
  }
}
