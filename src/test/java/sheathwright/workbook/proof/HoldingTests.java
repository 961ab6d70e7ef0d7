package sheathwright.workbook.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.proof.CertifiedCases;

/** For each function without a certified case the test of its room that calls it most often. */
final class HoldingTests {

  private static final Path TESTS = Path.of("src", "test", "java", "sheathwright");

  private HoldingTests() {}

  /** The file as it is to be: a line for each such function that any test calls. */
  static String table() {
    StringBuilder lines = new StringBuilder("function,test\n");
    Catalog.shipped().cards().stream()
        .filter(card -> CertifiedCases.of(card).isEmpty())
        .forEach(
            card ->
                most(card)
                    .ifPresent(
                        test -> lines.append(card.name()).append(',').append(test).append('\n')));
    return lines.toString();
  }

  private static Optional<String> most(Card card) {
    Pattern call = Pattern.compile("\\b" + card.call() + "\\(");
    Map<String, Long> calls = new TreeMap<>();
    tests(card.room())
        .forEach((name, text) -> calls.put(name, call.matcher(text).results().count()));
    return calls.entrySet().stream()
        .filter(each -> each.getValue() > 0)
        .max(Map.Entry.comparingByValue(Comparator.naturalOrder()))
        .map(Map.Entry::getKey);
  }

  private static Map<String, String> tests(String room) {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(TESTS.resolve(room))) {
      for (Path file : files.filter(each -> each.toString().endsWith("Test.java")).toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        texts.put(name, Files.readString(file));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return texts;
  }
}
