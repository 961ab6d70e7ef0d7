package sheathwright.repl;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of the guide with the sessions on it: a line that begins with {@code >} is typed, one that
 * begins with {@code .} goes on with it, the others are the answer.
 *
 * @param text of the page
 */
record SessionPage(String text) {

  /** The width of a window, which nothing on a page is wider than. */
  static final int COLUMNS = 80;

  private static final Pattern BLOCK = Pattern.compile("(?s)```session\n(.*?)```");
  private static final Pattern FILE = Pattern.compile("\"([\\w-]+\\.(?:xlsx|session))\"");

  /**
   * What is typed and what is answered.
   *
   * @param shown as it stands on the page
   * @param typed without the prompt's signs
   */
  record Exchange(String shown, String typed) {

    private static Exchange of(String shown) {
      List<String> typed =
          shown.lines().takeWhile(line -> line.startsWith("> ") || line.startsWith(". ")).toList();
      return new Exchange(
          shown.strip(), String.join("\n", typed.stream().map(line -> line.substring(2)).toList()));
    }

    /** The same with what a session answers; files stand in a folder. */
    String answered(Session session, Path folder) {
      String said = shown.lines().limit(typed.lines().count()).reduce((a, b) -> a + "\n" + b).get();
      String inFolder = FILE.matcher(typed).replaceAll("\"" + folder + "/$1\"");
      PrintStream before = System.out;
      ByteArrayOutputStream printed = new ByteArrayOutputStream();
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      String answer;
      try {
        answer = EstimatorGuideTest.answer(session, inFolder);
      } finally {
        System.setOut(before);
      }
      String all = printed.toString(StandardCharsets.UTF_8) + answer;
      return (said + "\n" + all.replace(folder + "/", "")).strip();
    }
  }

  static SessionPage of(String name) throws IOException {
    return new SessionPage(Files.readString(Path.of("docs", name)));
  }

  /** The parts under each heading of the second order. */
  List<SessionPage> sections() {
    return List.of(text.split("(?m)^## ")).stream().skip(1).map(SessionPage::new).toList();
  }

  /** Everything that is typed, in order. */
  List<Exchange> exchanges() {
    List<Exchange> exchanges = new ArrayList<>();
    Matcher blocks = BLOCK.matcher(text);
    while (blocks.find()) {
      for (String exchange : blocks.group(1).split("(?m)^(?=> )")) {
        if (!exchange.isBlank()) {
          exchanges.add(Exchange.of(exchange));
        }
      }
    }
    return exchanges;
  }

  /** What stands in a block of another kind. */
  String block(String kind) {
    Matcher block = Pattern.compile("(?s)```" + kind + "\n(.*?)```").matcher(text);
    if (!block.find()) {
      throw new IllegalStateException("no block " + kind);
    }
    return block.group(1);
  }

  /** The lines in blocks that are wider than a window. */
  List<String> tooWide() {
    List<String> lines = new ArrayList<>();
    boolean isInside = false;
    for (String line : text.lines().toList()) {
      isInside ^= line.startsWith("```");
      if (isInside && line.length() > COLUMNS) {
        lines.add(line);
      }
    }
    return lines;
  }
}
