package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The README's picture of the prompt: drawn from a session that is held here, so that it cannot
 * show anything else. Where it differs, the new one lies in {@code target}.
 */
class PromptPictureTest {

  private static final List<String> TYPED =
      List.of(
          "slope = 16-9 1/4 ft",
          "deck = 42 ft * slope * 2",
          "order = sheetsByArea(deck, waste = 10 %)",
          "slope = 17-6 ft",
          "explain order",
          "save \"roof.xlsx\"");

  /** Words with single spaces between them; each run has a place of its own. */
  private static final Pattern WORDS = Pattern.compile("\\S+(?: \\S+)*");

  private static final double WIDTH = 8.4;
  private static final int HEIGHT = 20;
  private static final int MARGIN = 16;

  @Test
  void thePicture_showsASessionAsItIs() throws IOException {
    String drawn = drawn(session());
    Path made = Path.of("target", "prompt.svg");
    Files.createDirectories(made.getParent());
    Files.writeString(made, drawn);
    assertThat(Path.of("docs", "pictures", "prompt.svg"))
        .as("copy target/prompt.svg to docs/pictures")
        .hasContent(drawn);
  }

  /** What stands in the window: lines that were typed, each with its answer below. */
  private static List<String> session() throws IOException {
    List<String> lines = new ArrayList<>();
    Path folder = Files.createTempDirectory("prompt");
    try (Session session = new Session()) {
      for (String typed : TYPED) {
        lines.add("> " + typed);
        String run = typed.replace("roof.xlsx", folder.resolve("roof.xlsx").toString());
        EstimatorGuideTest.answer(session, run)
            .replace(folder + "/", "")
            .lines()
            .forEach(lines::add);
      }
    }
    Files.deleteIfExists(folder.resolve("roof.xlsx"));
    Files.delete(folder);
    return lines;
  }

  private static String drawn(List<String> lines) {
    int columns = lines.stream().mapToInt(String::length).max().orElse(0);
    double width = columns * WIDTH + 2 * MARGIN;
    int height = lines.size() * HEIGHT + 2 * MARGIN;
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%d\" font-family=\"monospace\" font-size=\"14\">%n",
            width,
            height));
    svg.append("<title>A session at the prompt</title>\n");
    svg.append(
        "<rect width=\"100%\" height=\"100%\" rx=\"6\" fill=\"#fbf8f1\" stroke=\"#8a7f6a\"/>\n");
    int y = MARGIN + HEIGHT - 6;
    for (String line : lines) {
      String weight = line.startsWith("> ") ? " font-weight=\"bold\"" : "";
      for (MatchResult words : WORDS.matcher(line).results().toList()) {
        svg.append(
            String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%d\" fill=\"#2b2b2b\"%s textLength=\"%.1f\">%s</text>%n",
                MARGIN + words.start() * WIDTH,
                y,
                weight,
                words.group().length() * WIDTH,
                words.group().replace("&", "&amp;").replace("<", "&lt;")));
      }
      y += HEIGHT;
    }
    return svg.append("</svg>\n").toString();
  }
}
