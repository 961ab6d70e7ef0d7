package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The README's sessions: each command is run, and what it prints is compared with what the README
 * says.
 */
class ReadmeSessionTest {

  private static final Pattern BLOCK = Pattern.compile("(?s)```\n(\\$ .*?)```");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir private Path folder;

  /** A command and what the README says that it prints. */
  private record Said(String command, String answer) {}

  static Stream<String> blocks() throws IOException {
    Matcher blocks = BLOCK.matcher(Files.readString(Path.of("README.md")));
    List<String> found = new ArrayList<>();
    while (blocks.find()) {
      found.add(blocks.group(1).replace("\\\n", " "));
    }
    assertThat(found).hasSizeGreaterThanOrEqualTo(3);
    return found.stream();
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void aSession_printsWhatTheReadmeSays(String block) throws IOException {
    breakADemoJob();
    for (Said said : said(block)) {
      String[] words = said.command().split(" ", 3);
      if (words[0].equals("cat")) {
        Files.writeString(folder.resolve(words[1]), said.answer() + "\n");
      } else {
        assertThat(printed(said.command())).isEqualTo(said.answer());
      }
    }
  }

  private static List<Said> said(String block) {
    List<Said> sessions = new ArrayList<>();
    for (String part : block.split("(?m)^\\$ ")) {
      if (!part.isBlank()) {
        String[] lines = part.strip().split("\n", 2);
        sessions.add(new Said(lines[0], lines.length == 1 ? "" : lines[1].strip()));
      }
    }
    return sessions;
  }

  private String printed(String command) {
    StringWriter both = new StringWriter();
    PrintWriter writer = new PrintWriter(both);
    List<String> arguments = new ArrayList<>();
    Matcher words = WORD.matcher(command);
    while (words.find()) {
      String word = words.group(1) == null ? words.group(2) : words.group(1);
      boolean isFile = Files.exists(folder.resolve(word));
      arguments.add(isFile ? folder.resolve(word).toString() : word);
    }
    assertThat(arguments.remove(0)).isEqualTo("./sheathwright");
    Main.commandLine(writer, writer).execute(arguments.toArray(String[]::new));
    writer.flush();
    return both.toString().strip();
  }

  /** The job of the README's example of bad input: a demo job with two cells spoiled. */
  private void breakADemoJob() throws IOException {
    Path job = Files.createDirectories(folder.resolve("my-job"));
    for (String table : List.of("job", "planes", "prices", "rates")) {
      String text = Files.readString(Path.of("demo-data", "quince-hollow", table + ".csv"));
      Files.writeString(job.resolve(table + ".csv"), spoiled(table, text));
    }
  }

  private static String spoiled(String table, String text) {
    return switch (table) {
      case "planes" -> text.replaceFirst("(?m)(?<=^B,42-0,)[^,\n]*", "1-3/8");
      case "rates" -> text.replaceFirst("(?m)^margin_pct,[^,\n]*", "margin_pct,120");
      default -> text;
    };
  }
}
