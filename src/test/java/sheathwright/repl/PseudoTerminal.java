package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The program in a pseudo-terminal: keys are typed, the screen is read. */
final class PseudoTerminal implements AutoCloseable {

  private static final int SECONDS_AT_MOST = 40;
  private static final Pattern CONTROL =
      Pattern.compile("\u001b(?:\\[[0-9;?]*[ -/]*[@-~]|[()].|[=>78])");
  private static final Pattern TYPED = Pattern.compile("(?:> |\\. ).*");

  private final int columns;
  private final Process process;
  private final StringBuilder screen = new StringBuilder();
  private final StringBuilder typed = new StringBuilder();
  private int read;

  /** Opens the prompt in a window of some width, for a user whose home is a folder. */
  PseudoTerminal(int columns, Path home) throws IOException {
    this.columns = columns;
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String command =
        "stty cols %d rows 40; exec %s -XX:TieredStopAtLevel=1 -Dlog4j.provider=org.apache.logging.log4j.simple.internal.SimpleProvider -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Duser.home=%s -cp '%s' sheathwright.cli.Main"
            .formatted(columns, java, home, System.getProperty("java.class.path"));
    ProcessBuilder builder =
        new ProcessBuilder(
            "script", "--quiet", "--flush", "--return", "--command", command, "/dev/null");
    builder.environment().put("TERM", "xterm");
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().put("XDG_STATE_HOME", home.resolve("state").toString());
    process = builder.redirectErrorStream(true).start();
  }

  void type(String keys) throws IOException {
    OutputStream in = process.getOutputStream();
    typed.append(keys);
    in.write(keys.getBytes(StandardCharsets.UTF_8));
    in.flush();
  }

  /** Reads the screen until the text stands on it, after what was awaited before. */
  void awaits(String text) throws IOException, InterruptedException {
    assertThat(shows(text, SECONDS_AT_MOST))
        .as("the terminal says \"" + text + "\"; it said:\n" + screen)
        .isTrue();
    read = screen.indexOf(text, read) + text.length();
  }

  /** Whether the text stands on the screen within some seconds, after what was awaited before. */
  boolean shows(String text, int seconds) throws IOException, InterruptedException {
    InputStream out = process.getInputStream();
    byte[] some = new byte[4096];
    long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    while (screen.indexOf(text, read) < 0) {
      if (out.available() > 0) {
        screen.append(new String(some, 0, out.read(some), StandardCharsets.UTF_8));
      } else if (System.nanoTime() >= patience) {
        return false;
      } else {
        TimeUnit.MILLISECONDS.sleep(20);
      }
    }
    return true;
  }

  /** Everything that was on the screen. */
  String said() {
    return screen.toString();
  }

  /** Everything that was said, line by line, without what was typed. */
  List<String> lines() {
    return CONTROL
        .matcher(screen)
        .replaceAll("")
        .lines()
        .flatMap(line -> Stream.of(line.split("\r")))
        .map(String::stripTrailing)
        .filter(line -> !TYPED.matcher(line).matches())
        .filter(line -> typed.indexOf(line) < 0 || line.isEmpty()) // echoed before the prompt stood
        .toList();
  }

  /** The program ends as it should, and has shown nothing of what it is made with. */
  void leaves() throws InterruptedException {
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).as(said()).isTrue();
    assertThat(process.exitValue()).isZero();
    assertThat(said()).doesNotContain("\tat ", "Exception", "$1", "REPL");
    assertThat(lines().stream().filter(line -> line.length() > columns)).isEmpty();
  }

  @Override
  public void close() {
    process.descendants().forEach(ProcessHandle::destroyForcibly); // a stuck line would run on
    process.destroyForcibly();
  }
}
