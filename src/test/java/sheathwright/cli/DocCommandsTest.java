package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every command of README and docs, page by page, in order and in one folder: a block of commands
 * must be done, or end with the status that its comment says; a session must print what stands
 * there.
 */
class DocCommandsTest {

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(sh|)\n(.*?)^```");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern STATUS = Pattern.compile("# exit (\\d)");

  /** Its session is about a workbook that somebody spoiled, which no command does. */
  private static final String SPOILED = "audit.md";

  private static final String PROGRAM = "./sheathwright";

  @TempDir private Path folder;

  static Stream<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.list(Path.of("docs"))) {
      List<Path> pages =
          docs.filter(page -> page.toString().endsWith(".md") && !page.endsWith(SPOILED))
              .sorted()
              .toList();
      return Stream.concat(Stream.of(Path.of("README.md")), pages.stream())
          .filter(page -> !blocks(page).isEmpty());
    }
  }

  private static List<MatchResult> blocks(Path page) {
    try {
      return BLOCK
          .matcher(Files.readString(page))
          .results()
          .filter(block -> block.group(1).equals("sh") || block.group(2).startsWith("$ "))
          .toList();
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  @Test
  void theGuides_areAmongThePages() throws IOException {
    assertThat(pages().map(Path::toString))
        .contains("README.md", "docs/office.md", "docs/scripts.md", "docs/many-jobs.md");
  }

  @Test
  void everyCommand_isNamedOnAPage() throws IOException {
    StringBuilder text = new StringBuilder();
    try (Stream<Path> docs = Files.list(Path.of("docs"))) {
      for (Path page : docs.filter(each -> each.toString().endsWith(".md")).toList()) {
        text.append(Files.readString(page));
      }
    }
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    assertThat(Main.commandLine(nowhere, nowhere).getSubcommands().keySet())
        .allSatisfy(
            command ->
                assertThat(text)
                    .containsPattern("sheathwright " + command + "\\b|`" + command + "\\b"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void aPage_isTrue(Path page) throws IOException {
    if (page.endsWith("README.md")) {
      breakADemoJob();
    }
    for (MatchResult block : blocks(page)) {
      String text = block.group(2).replace("\\\n", " ");
      if (block.group(1).equals("sh")) {
        for (String line : text.lines().filter(each -> !each.isBlank()).toList()) {
          run(line);
        }
      } else {
        session(text);
      }
    }
  }

  /** A session: files that are shown are made, and each command prints what stands below it. */
  private void session(String text) throws IOException {
    for (String part : text.split("(?m)^\\$ ")) {
      if (!part.isBlank()) {
        String[] said = part.strip().split("\n", 2);
        String answer = said.length == 1 ? "" : said[1].strip();
        if (said[0].startsWith("cat ")) {
          Files.writeString(folder.resolve(said[0].substring(4)), answer + "\n");
        } else {
          assertThat(ran(said[0], "").said()).isEqualTo(answer);
        }
      }
    }
  }

  /** A line of a shell: the few kinds that the pages have. */
  private void run(String line) throws IOException {
    Matcher status = STATUS.matcher(line);
    int expected = status.find() ? Integer.parseInt(status.group(1)) : 0;
    String command = line.replaceFirst("\\s+#.*", "");
    List<String> words = words(command);
    switch (words.get(0)) {
      case "mvn" -> assertThat(command).isEqualTo("mvn verify"); // that runs this
      case "cp" -> copy(words);
      case "echo" -> echo(words);
      case "cat" -> {
        String[] ends = command.split(" \\| ", 2);
        String fed = Files.readString(folder.resolve(words.get(1)));
        Ran ran = ran(ends[1], fed);
        assertThat(ran.status()).as(line + "\n" + ran.said()).isEqualTo(expected);
      }
      default -> {
        Ran ran = ran(command, "");
        assertThat(ran.status()).as(line + "\n" + ran.said()).isEqualTo(expected);
      }
    }
  }

  private void echo(List<String> words) throws IOException {
    int arrow = words.size() - 2;
    String text = String.join(" ", words.subList(1, arrow)) + "\n";
    Path file = folder.resolve(words.get(arrow + 1));
    if (words.get(arrow).equals(">>")) {
      Files.writeString(file, text, StandardOpenOption.APPEND);
    } else {
      assertThat(words.get(arrow)).isEqualTo(">");
      Files.writeString(file, text);
    }
  }

  private void copy(List<String> words) throws IOException {
    String from = words.get(words.size() - 2);
    Path source = from.startsWith("demo-data") ? Path.of(from) : folder.resolve(from);
    Path target = folder.resolve(words.get(words.size() - 1));
    copy(source, Files.isDirectory(target) ? target.resolve(source.getFileName()) : target);
  }

  /** A copy; of a demo job without what somebody who tried the page before has made in it. */
  private static void copy(Path source, Path target) throws IOException {
    try (Stream<Path> files = Files.walk(source)) {
      for (Path file : files.filter(each -> !isMade(each)).toList()) {
        Path copy = target.resolve(source.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy);
        }
      }
    }
  }

  private static boolean isMade(Path file) {
    return file.startsWith("demo-data")
        && file.getNameCount() == 3
        && file.toString().matches(".*\\.xlsx|.*[/\\\\]season\\.csv");
  }

  /** What a command printed, on both streams in turn. */
  private record Ran(int status, String said) {}

  private Ran ran(String command, String fed) throws IOException {
    List<String> words = words(command);
    assertThat(words.get(0)).isEqualTo(PROGRAM);
    List<String> arguments = new ArrayList<>();
    for (int i = 1; i < words.size(); i++) {
      arguments.add(inFolder(words, i));
    }
    StringWriter both = new StringWriter();
    PrintWriter writer = new PrintWriter(both, true);
    InputStream in = System.in;
    PrintStream out = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setIn(new ByteArrayInputStream(fed.getBytes(StandardCharsets.UTF_8)));
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    int status;
    try {
      status = Main.commandLine(writer, writer).execute(arguments.toArray(String[]::new));
    } finally {
      System.setIn(in);
      System.setOut(out);
    }
    String said = printed.toString(StandardCharsets.UTF_8) + both;
    assertThat(said).doesNotContain("\tat ");
    return new Ran(status, said.replace(folder + "/", "").strip());
  }

  private static List<String> words(String command) {
    return WORD.matcher(command)
        .results()
        .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
        .toList();
  }

  /** An argument, in the folder of the test if it is a file's name. */
  private String inFolder(List<String> words, int place) throws IOException {
    String word = words.get(place);
    if (place == 1) {
      return word; // the command
    }
    if (word.startsWith("demo-data/") && !Files.exists(folder.resolve(word))) {
      copy(Path.of(word), folder.resolve(word));
    }
    int equals = word.indexOf('=');
    if (equals > 0 && Files.exists(folder.resolve(word.substring(equals + 1)))) {
      return word.substring(0, equals + 1) + folder.resolve(word.substring(equals + 1));
    }
    boolean isWritten = List.of("-o", "--firm").contains(words.get(place - 1));
    boolean isNew = words.get(1).equals("new") && place > 1 && word.contains("/");
    boolean isName = !word.startsWith("-") && (isWritten || isNew);
    return isName || !word.equals("-") && Files.exists(folder.resolve(word))
        ? folder.resolve(word).toString()
        : word;
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
