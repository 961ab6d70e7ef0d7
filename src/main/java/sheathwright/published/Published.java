package sheathwright.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import sheathwright.figure.Source;
import sheathwright.figure.Table;

/**
 * Reads a published table from its file: lines that begin with # carry caption, source, mark, units
 * and notes.
 */
public final class Published {

  private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder().setCommentMarker('#').get();

  private Published() {}

  /**
   * One table.
   *
   * @param file below this package's resources: {@code nds/2018/table-4a.csv}
   * @param name begins its ranges in a workbook
   * @param title as it is spoken of
   * @param keys how many leading columns find a row
   */
  public static Table table(String file, String name, String title, int keys) {
    try (InputStream stream = Published.class.getResourceAsStream(file);
        CSVParser parser =
            CSVParser.parse(new InputStreamReader(stream, StandardCharsets.UTF_8), FORMAT)) {
      List<String> notes = new ArrayList<>();
      List<List<String>> lines = new ArrayList<>();
      for (CSVRecord line : parser) {
        if (line.hasComment()) {
          notes.addAll(List.of(line.getComment().split("\n")));
        }
        if (!lines.isEmpty() && line.size() != lines.get(0).size()) {
          throw new IllegalStateException(
              "%s, line %s has %s columns"
                  .formatted(file, parser.getCurrentLineNumber(), line.size()));
        }
        lines.add(line.toList());
      }
      List<String> head = lines.get(0);
      return new Table(
          name,
          title,
          head.subList(0, keys),
          head.subList(keys, head.size()),
          List.copyOf(lines.subList(1, lines.size())),
          source(file, notes),
          List.copyOf(notes));
    } catch (IOException broken) {
      throw new UncheckedIOException(file + " cannot be read", broken);
    }
  }

  private static Source source(String file, List<String> notes) {
    String text = after("source: ", file, notes);
    return switch (after("mark: ", file, notes)) {
      case "read" -> Source.read(text);
      case "secondary source" -> Source.secondHand(text);
      case "from memory" -> Source.fromMemory(text);
      default -> throw new IllegalStateException(file + " has a mark that nobody knows");
    };
  }

  private static String after(String label, String file, List<String> notes) {
    return notes.stream()
        .filter(note -> note.startsWith(label))
        .map(note -> note.substring(label.length()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(file + " has no line \"" + label + "\""));
  }
}
