package sheathwright.workbook.proof;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.StartingValues;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.proof.CheckedLines;
import sheathwright.proof.Tested;

/**
 * The files that are written from the certified cases and from the functions themselves: the page,
 * each function's line, and the formulas by which a value's function is told. A test holds them
 * current; run, it writes them.
 */
final class WrittenEvidence {

  static final Path PAGE = Path.of("docs", "verification.md");

  private static final Path FOLDER = Path.of("src", "main", "resources", "sheathwright", "proof");

  private WrittenEvidence() {}

  /** Each file with what is to stand in it. */
  static Map<Path, String> all(List<Tested> tested) {
    Map<Path, String> files = new LinkedHashMap<>();
    files.put(FOLDER.resolve("held.csv"), HoldingTests.table(tested));
    files.put(FOLDER.resolve("formulas.csv"), formulas());
    files.put(FOLDER.resolve("checked.csv"), CheckedLines.table(tested));
    files.put(PAGE, VerificationPage.text(tested));
    return files;
  }

  /** A result's name and formula, of which no two functions have the same. */
  private static String formulas() {
    Map<List<String>, TreeSet<String>> functions = new LinkedHashMap<>();
    for (Card card : Catalog.shipped().cards()) {
      for (Traced result : card.answer(StartingValues.of(card))) {
        functions
            .computeIfAbsent(
                List.of(result.name(), Working.symbols(result)), none -> new TreeSet<>())
            .add(card.name());
      }
    }
    List<String> lines = new ArrayList<>();
    functions.forEach(
        (formula, of) -> {
          if (of.size() == 1) {
            lines.add(
                of.first()
                    + ","
                    + formula.stream().map(WrittenEvidence::quoted).collect(joining(",")));
          }
        });
    return "function,result,formula\n" + String.join("\n", lines) + "\n";
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }

  public static void main(String... none) throws IOException {
    for (Map.Entry<Path, String> file : all(Tested.all()).entrySet()) {
      Files.writeString(file.getKey(), file.getValue());
    }
  }
}
