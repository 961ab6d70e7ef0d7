package sheathwright.job;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file as spreadsheet programs save it: with or without a byte-order mark, separated by
 * commas or semicolons.
 *
 * @param name for messages
 * @param separator as the file was found to be separated
 * @param header the headings, stripped
 * @param lines the lines that hold anything
 */
public record CsvFile(String name, char separator, List<String> header, List<Line> lines) {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d*,\\d+");

  /** One line: its number in the file, and as many cells as the header, each as written. */
  public record Line(long number, List<String> cells) {}

  /**
   * Reads a file.
   *
   * @throws ProblemsException if there is no such file, it is not UTF-8 text, or it cannot be told
   *     apart into cells
   */
  public static CsvFile read(Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      return parse(name, decoded(Files.readAllBytes(file)));
    } catch (NoSuchFileException missing) {
      throw broken(name, 0, "there is no such file");
    } catch (CharacterCodingException foreign) {
      throw broken(name, 0, "it is not UTF-8 text; save it as CSV UTF-8");
    } catch (IOException unreadable) {
      throw broken(name, 0, "it cannot be read: " + unreadable.getMessage());
    }
  }

  /** Reads text that stands for a file. */
  public static CsvFile parse(String name, String text) {
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    char separator = separatorOf(plain);
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(separator).setIgnoreEmptyLines(true).get();
    List<Problem> problems = new ArrayList<>();
    List<String> header = List.of();
    List<Line> lines = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(plain), format)) {
      for (CSVRecord record : parser) {
        long number = parser.getCurrentLineNumber();
        List<String> cells = withoutBlankEnd(record.toList());
        if (header.isEmpty()) {
          header = cells.stream().map(String::strip).toList();
        } else if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
          if (cells.size() > header.size()) {
            problems.add(
                new Problem(
                    name,
                    number,
                    "",
                    "%d cells under %d headings; put cells with a %s in them in double quotes"
                        .formatted(
                            cells.size(),
                            header.size(),
                            separator == ',' ? "comma" : "semicolon")));
          }
          while (cells.size() < header.size()) {
            cells.add("");
          }
          lines.add(new Line(number, List.copyOf(cells.subList(0, header.size()))));
        }
      }
    } catch (IOException | java.io.UncheckedIOException | IllegalStateException garbled) {
      throw broken(name, 0, "it cannot be told apart into cells: a double quote has no partner");
    }
    if (header.isEmpty()) {
      throw broken(name, 0, "it is empty; its first line names the columns");
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return new CsvFile(name, separator, header, List.copyOf(lines));
  }

  /** Spreadsheet programs write empty cells where something once stood. */
  private static List<String> withoutBlankEnd(List<String> cells) {
    int end = cells.size();
    while (end > 1 && cells.get(end - 1).isBlank()) {
      end--;
    }
    return new ArrayList<>(cells.subList(0, end));
  }

  /** A cell as it is to be read: a semicolon-separated file writes its decimals with a comma. */
  String readable(String cell) {
    return separator == ';' && DECIMAL_COMMA.matcher(cell.strip()).matches()
        ? cell.replace(',', '.')
        : cell;
  }

  private static char separatorOf(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    return first.chars().filter(c -> c == ';').count() > first.chars().filter(c -> c == ',').count()
        ? ';'
        : ',';
  }

  private static String decoded(byte[] bytes) throws CharacterCodingException {
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  private static ProblemsException broken(String name, long line, String message) {
    return new ProblemsException(List.of(new Problem(name, line, "", message)));
  }
}
