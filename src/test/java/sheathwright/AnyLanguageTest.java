package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What is written does not depend on the language that the machine speaks: Thai and Arabic have
 * digits of their own, Turkish another capital i, German another comma. Found by year 10 of the
 * simulated years, in which a change order was numbered in Thai.
 */
class AnyLanguageTest {

  private static final Pattern TEXT = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");
  private static final Pattern DIGITS = Pattern.compile("%[-+#,0-9.(]*[dfegEG]");
  private static final Pattern LANGUAGE =
      Pattern.compile(
          "toLowerCase\\(\\)|toUpperCase\\(\\)|Locale\\.getDefault|new DecimalFormat\\(\"[^,]*\\)"
              + "|NumberFormat\\.get|SimpleDateFormat");

  @Test
  void noPatternAsksForDigits_butThroughShown() {
    assertThat(sources().flatMap(AnyLanguageTest::patterns)).isEmpty();
  }

  @Test
  void nothingAsksForTheLanguageOfTheMachine() {
    assertThat(sources().filter(file -> LANGUAGE.matcher(text(file)).find())).isEmpty();
  }

  private static Stream<String> patterns(Path file) {
    String source = text(file);
    List<String> found = new ArrayList<>();
    Matcher text = TEXT.matcher(source);
    while (text.find()) {
      boolean asks = DIGITS.matcher(text.group().replace("%%", "")).find();
      String before = source.substring(0, text.start()).stripTrailing();
      if (asks && !before.endsWith("Shown.text(")) {
        found.add(file.getFileName() + ": " + text.group());
      }
    }
    return found.stream();
  }

  private static Stream<Path> sources() {
    try {
      return Files.walk(Path.of("src", "main", "java"))
          .filter(file -> file.toString().endsWith(".java"));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
