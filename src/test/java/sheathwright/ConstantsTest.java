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

/** A number that a search is tuned by, or holds two things alike by, says where it comes from. */
class ConstantsTest {

  private static final Path SOURCES =
      Path.of(System.getProperty("basedir", ""), "src", "main", "java", "sheathwright");

  /** The rooms that search, measure and compare. */
  private static final List<String> ROOMS =
      List.of("cutting", "leveling", "sheathing/patch", "repl");

  private static final Pattern NUMBER =
      Pattern.compile("^ *(?:(?:private|public) )?static final (?:int|long|double) (\\w+) =.*");

  @Test
  void everyNumber_saysWhereItComesFrom() throws IOException {
    List<String> silent = new ArrayList<>();
    for (String room : ROOMS) {
      try (Stream<Path> files = Files.walk(SOURCES.resolve(room))) {
        for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
          silent(Files.readAllLines(file)).forEach(name -> silent.add(file + ": " + name));
        }
      }
    }
    assertThat(silent).isEmpty();
  }

  @Test
  void aNumberIsSilent_withoutACommentOfItsOwn() {
    assertThat(
            silent(
                List.of(
                    "  /** Half: 3 plans dearer; double: the same, 1.8 times the work. */",
                    "  private static final int ROUNDS = 10;",
                    "  private static final int MOST = 20;",
                    "  // Rounding of a sum of so many.",
                    "  static final double ERROR =",
                    "      1e-9;",
                    "  private static final int SIDE = 2; // a stick has two ends",
                    "  private static final long serialVersionUID = 1;")))
        .containsExactly("MOST");
  }

  private static List<String> silent(List<String> lines) {
    List<String> silent = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      Matcher number = NUMBER.matcher(lines.get(at));
      if (number.matches() && !number.group(1).equals("serialVersionUID")) {
        String before = at == 0 ? "" : lines.get(at - 1).strip();
        boolean speaks =
            before.endsWith("*/") || before.startsWith("//") || lines.get(at).contains("//");
        if (!speaks) {
          silent.add(number.group(1));
        }
      }
    }
    return silent;
  }
}
