package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The prompt as a person meets it: the program in a pseudo-terminal, keys typed, the screen read.
 */
@EnabledOnOs(value = OS.LINUX, disabledReason = "the program script differs elsewhere")
class TerminalTest {

  private static final int SECONDS_AT_MOST = 40;
  private static final char TAB = '\t';
  private static final char CONTROL_C = 3;
  private static final char UP = 'A';

  @TempDir private Path home;

  private Process terminal;
  private final StringBuilder screen = new StringBuilder();
  private int read;

  @BeforeEach
  void open() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String command =
        "stty cols 150 rows 40; exec %s -XX:TieredStopAtLevel=1 -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Duser.home=%s -cp '%s' sheathwright.cli.Main"
            .formatted(java, home, System.getProperty("java.class.path"));
    ProcessBuilder builder =
        new ProcessBuilder(
            "script", "--quiet", "--flush", "--return", "--command", command, "/dev/null");
    builder.environment().put("TERM", "xterm");
    builder.environment().put("LC_ALL", "C.UTF-8");
    terminal = builder.redirectErrorStream(true).start();
    awaits("exit leaves");
    awaits("> ");
  }

  @AfterEach
  void close() {
    terminal.destroyForcibly();
  }

  @Test
  void aMorning_goesAsTyped() throws Exception {
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
    assertThat(screen.toString()).doesNotContain("velocityPressure");

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
    assertThat(terminal.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(terminal.exitValue()).isZero();
    assertThat(screen.toString()).doesNotContain("\tat ", "Exception");
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
