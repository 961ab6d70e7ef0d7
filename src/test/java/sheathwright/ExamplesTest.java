package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Catalog;

/** Every stated answer in doc comments, README and docs, compared with what is printed. */
class ExamplesTest {

  private static final Path PROJECT = Path.of(System.getProperty("basedir", ""));

  private static ExampleRunner runner;

  @BeforeAll
  static void open() {
    runner = new ExampleRunner();
  }

  @AfterAll
  static void close() {
    runner.close();
  }

  static Stream<Arguments> docComments() {
    return Catalog.shipped().cards().stream()
        .map(card -> Arguments.of(card.name(), card.text().examples()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("docComments")
  void docComment_statesTheAnswerThatIsPrinted(String function, List<String> examples) {
    assertThat(examples).allMatch(ExampleRunner::statesAnAnswer);
    assertThat(runner.complaints(examples)).isEmpty();
  }

  static Stream<Path> documents() throws IOException {
    List<Path> documents = new ArrayList<>();
    documents.add(PROJECT.resolve("README.md"));
    Path docs = PROJECT.resolve("docs");
    if (Files.isDirectory(docs)) {
      try (Stream<Path> pages = Files.list(docs)) {
        pages
            .filter(page -> page.toString().endsWith(".md"))
            .filter(
                page -> !page.endsWith("functions.md")) // made of the doc comments, which say it
            .sorted()
            .forEach(documents::add);
      }
    }
    return documents.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("documents")
  void document_statesTheAnswersThatArePrinted(Path document) throws IOException {
    List<String> lines = Files.exists(document) ? Files.readAllLines(document) : List.of();
    assertThat(runner.complaints(examplesIn(lines))).isEmpty();
  }

  /** The Java blocks that state an answer; a block that states none is a sketch. */
  private static List<String> examplesIn(List<String> document) {
    List<String> examples = new ArrayList<>();
    List<String> block = null;
    for (String line : document) {
      if (block == null) {
        block = line.strip().equals("```java") ? new ArrayList<>() : null;
      } else if (!line.strip().equals("```")) {
        block.add(line);
      } else {
        examples.addAll(block.stream().anyMatch(ExampleRunner::statesAnAnswer) ? block : List.of());
        block = null;
      }
    }
    return examples;
  }

  @Test
  void examplesIn_takesTheBlocksThatStateAnAnswer() {
    List<String> document =
        """
        # Title
        ```java
        in(1) // 1 in
        ```
        in(2) // text, not code
        ```text
        in(3) // not Java
        ```
        ```java
        int sketch;
        ```
        """
            .lines()
            .toList();
    assertThat(examplesIn(document)).containsExactly("in(1) // 1 in");
  }

  @Test
  void runner_complainsOfAWrongAnswer() {
    assertThat(runner.complaints(List.of("in(1).plus(in(2)) // 4 in")))
        .containsExactly("in(1).plus(in(2)) // 4 in%n  printed: 3 in".formatted());
  }

  @Test
  void runner_complainsOfWhatDoesNotCompileOrThrows() {
    assertThat(runner.complaints(List.of("inn(1) // 1 in", "in(\"wet\") // 1 in")))
        .hasSize(2)
        .anySatisfy(complaint -> assertThat(complaint).contains("failed: ", "cannot find symbol"))
        .anySatisfy(complaint -> assertThat(complaint).contains("\"wet\" is not a length"));
  }

  @Test
  void runner_knowsWhatEarlierLinesDefined() {
    assertThat(
            runner.complaints(
                List.of(
                    "// a comment",
                    "var deck = sqft(1000)",
                    "    .plus(sqft(20));",
                    "for (int i = 0; i < 2; i++) {",
                    "  deck = deck.plus(sqft(2));",
                    "}",
                    "",
                    "deck // 1,024 sq ft")))
        .isEmpty();
  }
}
