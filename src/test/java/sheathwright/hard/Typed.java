package sheathwright.hard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What the pages of the guide have a user type. */
final class Typed {

  private static final List<String> PAGES = List.of("tasks.md", "estimator.md");

  private Typed() {}

  /** The lines that write no file and end nothing. */
  static List<String> lines() {
    return PAGES.stream()
        .flatMap(Typed::typed)
        .filter(line -> !line.contains(".xlsx") && !line.contains(".session"))
        .toList();
  }

  private static Stream<String> typed(String page) {
    try {
      return Files.readString(Path.of("docs", page))
          .lines()
          .filter(line -> line.startsWith("> "))
          .map(line -> line.substring(2));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
