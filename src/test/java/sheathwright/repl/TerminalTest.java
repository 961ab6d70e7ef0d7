package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The prompt as a person meets it: the program in a pseudo-terminal, keys typed, the screen read.
 */
@EnabledOnOs(value = OS.LINUX, disabledReason = "the program script differs elsewhere")
class TerminalTest {

  private static final int SECONDS_AT_MOST = 40;
  private static final char TAB = '\t';
  private static final char CONTROL_C = 3;
  private static final char UP = 'A';
  private static final String PASTE = "\u001b[200~";
  private static final String PASTED = "\u001b[201~";

  @TempDir private Path home;

  private Process terminal;
  private final StringBuilder screen = new StringBuilder();
  private int read;

  private void open(int columns) throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String command =
        "stty cols %d rows 40; exec %s -XX:TieredStopAtLevel=1 -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Duser.home=%s -cp '%s' sheathwright.cli.Main"
            .formatted(columns, java, home, System.getProperty("java.class.path"));
    ProcessBuilder builder =
        new ProcessBuilder(
            "script", "--quiet", "--flush", "--return", "--command", command, "/dev/null");
    builder.environment().put("TERM", "xterm");
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().put("XDG_STATE_HOME", home.resolve("state").toString());
    terminal = builder.redirectErrorStream(true).start();
  }

  @AfterEach
  void close() {
    terminal.destroyForcibly();
  }

  private void leaves() throws Exception {
    assertThat(terminal.waitFor(20, TimeUnit.SECONDS)).as(screen.toString()).isTrue();
    assertThat(terminal.exitValue()).isZero();
    assertThat(screen.toString()).doesNotContain("\tat ", "Exception", "$1", "REPL");
  }

  /** The rows of a table of what was tried in an hour at the prompt and went wrong. */
  @ParameterizedTest(name = "in {0} columns")
  @ValueSource(ints = {80, 120})
  void whatANewUserTries_losesNothing(int columns) throws Exception {
    open(columns);
    type("area = sqft(64)\r"); // before the program is there
    awaits("exit leaves");
    awaits("area = 64 sq ft");
    type("order = sheetsByArea(area, pct(0))\r");
    awaits("order = 2 sheets");
    type("show order\r");
    awaits("no picture");
    type("order\r");
    awaits("2 sheets");
    type("explain order\r");
    awaits("deck area");

    type("area = 96\r");
    awaits("order stays 2 sheets, stale: area is 96, a number without a unit");
    type("save \"" + home.resolve("roof") + "\"\r");
    awaits("roof.xlsx with order, area");
    awaits("stale, and written with the value it has: order");
    type("save \"" + home.resolve("roof.pdf") + "\"\r");
    awaits("and no .pdf");
    type("undo\r");
    awaits("undone: area = 96");

    type(PASTE + "> a = in(1)\r> b = a.plus(in(1))\rb.plus(b)" + PASTED + "\r");
    awaits("a = 1 in");
    awaits("b = 2 in");
    awaits("4 in");
    type("list\r");
    awaits("b = 2 in   from a");

    type(
        "int slow(int n) { int i = 0; if (n > 8) { System.out.println(\"coun\" + \"ting\"); } while (i < n) { i = i + 1 - i / 5; } return n; }\r");
    type("n = 1\rc = slow(n)\r");
    awaits("c = 1");
    type("n = 9\r"); // never comes to an end
    awaits("counting");
    type(String.valueOf(CONTROL_C));
    awaits("c stays 1, stale: stopped; Enter alone goes on");
    type("undo\r");
    awaits("undone: n = 9");

    type("while (true) { System.out.println(123456 * 8); }\r");
    awaits("987648");
    TimeUnit.MILLISECONDS.sleep(500);
    type(String.valueOf(CONTROL_C));
    awaits("(cut: it printed ");
    awaits("(stopped)");
    type("System.exit(7)\r");
    awaits("the session goes on");
    type("exit\r");
    awaits("Leave? y/n");
    type("n\r");
    awaits("> ");
    type("b\r");
    awaits("2 in");
    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();

    screen.setLength(0);
    read = 0;
    open(columns);
    awaits("exit leaves");
    type("resume\r");
    awaits("order = 2 sheets   from area");
    type("area = sqft(96)\r");
    awaits("order = 3 sheets (was 2 sheets)");
    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();
  }

  @Test
  void aMorning_goesAsTyped() throws Exception {
    open(150);
    awaits("exit leaves");
    awaits("> ");
    type("area = sqft(64)\r");
    awaits("area = 64 sq ft");
    type("order = sheetsByArea(area, pct(0))\r");
    awaits("order = 2 sheets");
    type("area = sqft(96)\r");
    awaits("order = 3 sheets (was 2 sheets)");

    type("sheetsByA" + TAB + "area, pct(0))\r");
    awaits("sheets = 3 sheets");

    type("help(\"nail\")\r");
    awaits("Enter goes on");
    type("\r");
    awaits("weakestLink");
    awaits("Enter goes on");
    type("q");
    awaits("> ");
    assertThat(screen.toString()).doesNotContain("meanRoofHeight");

    type("nailsPerSheet(in(16), " + TAB);
    awaits("nailing: how far apart its nails stand");
    type("Nailing.edge(in(6)).field(in(12)),\r");
    awaits(". ");
    type("FOUR_BY_EIGHT)\r");
    awaits("nails = 43 nails/sheet");

    type("foo(" + TAB + "12)\r"); // the key behind Tab is not eaten
    awaits("there is no unit or function \"foo\"");
    assertThat(screen.toString()).doesNotContain("possibilities");

    type("for (int i = 0; true; i = 1) { if (i == 0) { System.out.println(123456 * 8); } }\r");
    awaits("987648"); // the loop is running, and can be stopped
    type(String.valueOf(CONTROL_C));
    awaits("(stopped)");
    awaits("> ");
    type("order\r");
    awaits("3 sheets");

    type("System.exit(7)\r");
    awaits("the session goes on");
    type("\u001bO" + UP + "\u001bO" + UP + "\r"); // two lines up in the history
    awaits("3 sheets");

    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();
  }

  private void type(String keys) throws IOException {
    OutputStream in = terminal.getOutputStream();
    in.write(keys.getBytes(StandardCharsets.UTF_8));
    in.flush();
  }

  /** Reads the screen until the text stands on it, after what was awaited before. */
  private void awaits(String text) throws IOException, InterruptedException {
    InputStream out = terminal.getInputStream();
    byte[] some = new byte[4096];
    long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS_AT_MOST);
    int at;
    while ((at = screen.indexOf(text, read)) < 0) {
      assertThat(System.nanoTime() < patience)
          .as("the terminal says \"" + text + "\"; it said:\n" + screen)
          .isTrue();
      if (out.available() > 0) {
        screen.append(new String(some, 0, out.read(some), StandardCharsets.UTF_8));
      } else {
        TimeUnit.MILLISECONDS.sleep(20);
      }
    }
    read = at + text.length();
  }
}
