package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A switch over a closed list names every one of it, so that a new one cannot be forgotten. */
class SwitchesTest {

  private static final Path SOURCES =
      Path.of(System.getProperty("basedir", ""), "src", "main", "java");
  private static final Pattern DEFAULT = Pattern.compile("(?m)^\\s*default( ->|:)");
  private static final Pattern CASE = Pattern.compile("(?m)^\\s*case ([^\\s,:]+)");

  @Test
  void noSwitchOverAClosedList_hasADefault() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        assertThat(closed(Files.readString(file))).as(file.toString()).isEmpty();
      }
    }
  }

  /** The first case of each switch that has a default, where it is neither text nor a number. */
  private static List<String> closed(String source) {
    return DEFAULT
        .matcher(source)
        .results()
        .map(
            found -> source.substring(source.lastIndexOf("switch (", found.start()), found.start()))
        .map(CASE::matcher)
        .filter(Matcher::find)
        .map(found -> found.group(1))
        .filter(label -> !label.matches("[\"'0-9-].*|Character[.].*"))
        .toList();
  }
}
