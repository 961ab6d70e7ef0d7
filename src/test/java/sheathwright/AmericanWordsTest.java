package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The users are American, and so is everything that they, or whoever reads the code, will read. */
class AmericanWordsTest {

  private static final Path TOP = Path.of(System.getProperty("basedir", ""));

  private static final List<String> PLACES =
      List.of(
          "README.md",
          "DEVELOPERS.md",
          "CHANGELOG.md",
          "pom.xml",
          "sheathwright",
          "sheathwright.cmd",
          "src",
          "docs",
          "demo-data",
          ".ci");

  private static final Pattern BRITISH =
      Pattern.compile(
          "(?:labour|levell|colour|neighbour|centre|programme(?![rd])|licence|\\bgrey|mould|storey"
              + "|favour|behaviour|honour|catalogue|labell|modell|cancell(?:ed|ing)|travell|signall"
              + "|fibre|(?<![a-z])metre|litre|aluminium|judgement|artefact|misspelt|learnt|burnt|whilst"
              + "|(?:organ|recogn|real|normal|optim|minim|maxim|summar|initial|capital|standard)"
              + "is(?:e|ed|es|ing|ation)\\b)",
          Pattern.CASE_INSENSITIVE);

  /** What libraries of other people are called. */
  private static final List<String> NOT_OURS = List.of("optimisation", "minimise", "METRE");

  private static Stream<Path> files(String place) throws IOException {
    return Files.walk(TOP.resolve(place))
        .filter(Files::isRegularFile)
        .filter(file -> !file.toString().matches(".*\\.(xlsx|png)"))
        .filter(file -> !file.toString().contains("published"))
        .filter(file -> !file.endsWith("AmericanWordsTest.java"));
  }

  /** The whole word of which a part was found. */
  private static String wordAround(String text, int start, int end) {
    int from = start;
    while (from > 0 && isOfAWord(text.charAt(from - 1))) {
      from--;
    }
    int to = end;
    while (to < text.length() && isOfAWord(text.charAt(to))) {
      to++;
    }
    return text.substring(from, to);
  }

  private static boolean isOfAWord(char letter) {
    return letter < 128 && (Character.isLetterOrDigit(letter) || letter == '_');
  }

  @Test
  void everyWord_isSpelledAsAnAmericanWould() throws IOException {
    List<String> british = new ArrayList<>();
    int read = 0;
    for (String place : PLACES) {
      try (Stream<Path> files = files(place)) {
        for (Path file : files.toList()) {
          read++;
          String text = Files.readString(file);
          Matcher parts = BRITISH.matcher(text);
          while (parts.find()) {
            String word = wordAround(text, parts.start(), parts.end());
            if (NOT_OURS.stream().noneMatch(word::equalsIgnoreCase)) {
              british.add(TOP.relativize(file) + ": " + word);
            }
          }
        }
      }
    }
    assertThat(read).isGreaterThan(500);
    assertThat(british).isEmpty();
  }

  @Test
  void aBritishWord_isFound() {
    assertThat(BRITISH.matcher("what labourers cost").find()).isTrue();
    assertThat(BRITISH.matcher("the colours of a programme").find()).isTrue();
    assertThat(BRITISH.matcher("programmed, realistic, a diameter, a concentrate").find())
        .isFalse();
  }
}
