package sheathwright.workbook;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** That every rule of a workbook has a test that bears its number, or is told as not followed. */
class EveryRuleTest {

  private static final int RULES = 40;

  private static final Pattern TESTED = Pattern.compile("void rules?(\\d+(?:(?:_|To)\\d+)*)_");

  private static final Path DECISION = Path.of("docs", "decisions", "031-rules-of-a-workbook.md");

  /** A line of the decision's table that says that no workbook follows a rule. */
  private static final Pattern NOT_FOLLOWED = Pattern.compile("(?m)^\\| (\\d+) [^|]*\\| all \\|");

  @Test
  void everyRule_hasATestThatBearsItsNumber_orIsToldAsNotFollowed() throws IOException {
    Set<Integer> held = tested();
    held.addAll(notFollowed());

    assertThat(held).containsExactlyElementsOf(IntStream.rangeClosed(1, RULES).boxed().toList());
  }

  /** The test of the test: what nobody tested would be missed. */
  @Test
  void aRangeOfNumbers_isAllOfThem() {
    assertThat(numbers("6To12")).containsExactly(6, 7, 8, 9, 10, 11, 12);
    assertThat(numbers("13_15_31")).containsExactly(13, 15, 31);
    assertThat(tested()).doesNotContain(0, RULES + 1);
  }

  private static Set<Integer> notFollowed() throws IOException {
    return NOT_FOLLOWED
        .matcher(Files.readString(DECISION))
        .results()
        .map(line -> Integer.valueOf(line.group(1)))
        .collect(toCollection(TreeSet::new));
  }

  private static Set<Integer> tested() {
    try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
      return files
          .filter(file -> file.toString().endsWith("Test.java"))
          .flatMap(file -> TESTED.matcher(text(file)).results())
          .map(MatchResult::group)
          .map(name -> name.replaceAll("void rules?|_$", ""))
          .flatMap(name -> numbers(name).stream())
          .collect(toCollection(TreeSet::new));
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  private static List<Integer> numbers(String name) {
    if (name.contains("To")) {
      String[] ends = name.split("To");
      return IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[1]))
          .boxed()
          .toList();
    }
    return Stream.of(name.split("_")).map(Integer::valueOf).toList();
  }
}
