package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import sheathwright.cli.Main;

/**
 * A command that was run on spoiled input.
 *
 * @param status its exit status
 * @param out what it printed
 * @param err what it complained of
 */
record Ran(int status, String out, String err) {

  private static final int REFUSED = 3;

  static Ran of(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new);
    int status =
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), words)
            .execute(words);
    return new Ran(status, out.toString(), err.toString());
  }

  /**
   * Runs a command that may write into a folder: where it is refused, nothing in the folder is
   * other than before; nowhere is a draft left.
   */
  static Ran in(Path folder, Object... arguments) {
    Map<String, Long> before = files(folder);
    Ran ran = of(arguments);
    Map<String, Long> after = files(folder);
    if (ran.status != 0) {
      assertThat(after).as("files after a refusal:%n%s", ran.err).isEqualTo(before);
    }
    assertThat(after.keySet()).noneMatch(name -> name.endsWith(".part"));
    ran.holds();
    return ran;
  }

  /** It was done, was wrong use or was refused; it says so, and shows no inner part of ours. */
  void holds() {
    assertThat(status).as("exit status; it said:%n%s", err).isIn(0, 2, REFUSED);
    assertThat(out + "\n" + err)
        .doesNotContain("\tat ", "Exception", "sheathwright.", "org.apache", "java.lang");
    if (status != 0) {
      assertThat(out + err).as("what it says").isNotBlank();
    }
    assertThat(err)
        .as("signs that move a terminal's cursor")
        .doesNotContain("\u0007", "\u001B[31m");
  }

  /** What stands in a folder: each file with a sign of its bytes. */
  static Map<String, Long> files(Path folder) {
    Map<String, Long> files = new TreeMap<>();
    try (Stream<Path> entries = Files.walk(folder)) {
      for (Path file : entries.filter(Files::isRegularFile).toList()) {
        byte[] bytes = Files.readAllBytes(file);
        files.put(
            folder.relativize(file).toString(), (long) Arrays.hashCode(bytes) << 20 | bytes.length);
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return files;
  }
}
