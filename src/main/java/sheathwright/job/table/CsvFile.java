package sheathwright.job.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/**
 * A CSV file as spreadsheet programs save it: with or without a byte-order mark, separated by
 * commas or semicolons.
 *
 * @param name for messages
 * @param separator as the file was found to be separated
 * @param header the headings, stripped
 * @param lines the lines that hold anything
 */
public record CsvFile(String name, char separator, List<String> header, List<Line> lines)
    implements RowSource {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d*,\\d+");

  /** A number that is thousands to one reader and a decimal to another. */
  private static final Pattern THOUSANDS_OR_DECIMALS =
      Pattern.compile("([+-]?(?:\\$\\s*)?)([1-9]\\d{0,2})[.,](\\d{3})(\\s*%)?");

  /**
   * What a table may hold: more than anybody fills in, and no more than memory and a sheet take.
   */
  private static final int MOST_BYTES = 32_000_000;

  private static final int MOST_LINES = 200_000;
  private static final int MOST_COLUMNS = 200;
  private static final int LONGEST_HEADING = 100;
  private static final int LONGEST_CELL = 32_767;

  /**
   * Reads a file.
   *
   * @throws ProblemsException if there is no such file, it is not UTF-8 text, or it cannot be told
   *     apart into cells
   */
  public static CsvFile read(Path file) {
    return read(file, String.valueOf(file.getFileName()));
  }

  /**
   * Reads a file that messages call otherwise.
   *
   * @throws ProblemsException if there is no such file, it is not UTF-8 text, or it cannot be told
   *     apart into cells
   */
  public static CsvFile read(Path file, String name) {
    return read(() -> bytes(file, name), name);
  }

  /**
   * Reads what comes from elsewhere than a file.
   *
   * @throws ProblemsException if it is not UTF-8 text, or it cannot be told apart into cells
   */
  public static CsvFile read(InputStream stream, String name) {
    return read(() -> bytes(stream, name), name);
  }

  /** Where the bytes of a table come from. */
  private interface Bytes {
    byte[] read() throws IOException;
  }

  private static CsvFile read(Bytes bytes, String name) {
    try {
      return parse(name, decoded(bytes.read()));
    } catch (NoSuchFileException missing) {
      throw broken(name, 0, "there is no such file");
    } catch (AccessDeniedException denied) {
      throw broken(name, 0, "it cannot be read: permission is denied");
    } catch (CharacterCodingException foreign) {
      throw broken(name, 0, "it is not UTF-8 text; save it as CSV UTF-8");
    } catch (IOException unreadable) {
      throw broken(name, 0, "it cannot be read: " + unreadable.getMessage());
    }
  }

  private static byte[] bytes(Path file, String name) throws IOException {
    if (Files.isDirectory(file)) {
      throw broken(name, 0, "it cannot be read: it is a folder; name a CSV file");
    }
    if (isDevice(file)) {
      throw broken(name, 0, "it cannot be read: it is a device; name a CSV file");
    }
    try (InputStream stream = Files.newInputStream(file)) {
      return bytes(stream, name);
    }
  }

  private static byte[] bytes(InputStream stream, String name) throws IOException {
    byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      String most = Shown.with(Units.RATIO, MOST_BYTES);
      throw broken(
          name,
          0,
          "it is longer than " + most + " bytes, the most that is read of a table; split it");
    }
    return bytes;
  }

  /** What is neither a file nor a pipe never ends, or waits. */
  private static boolean isDevice(Path file) throws IOException {
    if (!file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
      return false;
    }
    int kind = (int) Files.getAttribute(file, "unix:mode") & 0xF000;
    return kind == 0x2000 || kind == 0x6000;
  }

  @Override
  public CsvFile withoutNoteLines() {
    List<Line> filled =
        lines.stream()
            .filter(
                line ->
                    IntStream.range(0, header.size())
                        .anyMatch(
                            place ->
                                !TableColumns.isNote(header.get(place))
                                    && !line.cells().get(place).isBlank()))
            .toList();
    return filled.size() == lines.size() ? this : new CsvFile(name, separator, header, filled);
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
        List<String> cells = withoutBlankEnd(record.stream().map(CsvLines::meant).toList());
        if (header.isEmpty()) {
          header = cells.stream().map(String::strip).toList();
          if (header.stream().anyMatch(heading -> heading.indexOf('\t') >= 0)) {
            throw broken(
                name,
                number,
                "its cells are separated by tabs; save it as CSV, with commas or semicolons");
          }
          wrongWithHeadings(name, number, header).ifPresent(problems::add);
        } else if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
          if (lines.size() == MOST_LINES) {
            throw broken(
                name,
                number,
                "a table takes at most %s lines; split it"
                    .formatted(Shown.with(Units.RATIO, MOST_LINES)));
          }
          wrongWithLine(name, number, header, cells, separator).ifPresent(problems::add);
          while (cells.size() < header.size()) {
            cells.add("");
          }
          lines.add(new Line(number, List.copyOf(cells.subList(0, header.size()))));
        }
      }
    } catch (IOException | java.io.UncheckedIOException | IllegalStateException garbled) {
      throw broken(name, 0, "it cannot be parsed: unmatched double quote");
    }
    if (header.isEmpty()) {
      throw broken(name, 0, "it is empty; its first line names the columns");
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return new CsvFile(name, separator, header, List.copyOf(lines));
  }

  private static Optional<Problem> wrongWithHeadings(
      String name, long number, List<String> header) {
    if (header.size() > MOST_COLUMNS) {
      String message =
          "%s columns; a table takes at most %s".formatted(header.size(), MOST_COLUMNS);
      return Optional.of(new Problem(name, number, "", message));
    }
    return header.stream()
        .flatMap(heading -> CellRules.wrongWith(heading, LONGEST_HEADING).stream())
        .map(message -> new Problem(name, number, "", "a heading: " + message))
        .findFirst();
  }

  private static Optional<Problem> wrongWithLine(
      String name, long number, List<String> header, List<String> cells, char separator) {
    for (int i = 0; i < Math.min(header.size(), cells.size()); i++) {
      Optional<String> message = CellRules.wrongWith(cells.get(i), LONGEST_CELL);
      if (message.isPresent()) {
        return Optional.of(new Problem(name, number, header.get(i), message.get()));
      }
    }
    return cells.size() <= header.size()
        ? Optional.empty()
        : Optional.of(
            new Problem(
                name,
                number,
                "",
                "%s cells under %s headings; put cells with a %s in them in double quotes"
                    .formatted(
                        cells.size(), header.size(), separator == ',' ? "comma" : "semicolon")));
  }

  /** Spreadsheet programs write empty cells where something once stood. */
  private static List<String> withoutBlankEnd(List<String> cells) {
    int end = cells.size();
    while (end > 1 && cells.get(end - 1).isBlank()) {
      end--;
    }
    return new ArrayList<>(cells.subList(0, end));
  }

  /**
   * A cell as it is to be read: a semicolon-separated file writes its decimals with a comma.
   *
   * @throws RefusedException if it is too long for a number or a word, or is one number to those
   *     who write decimals with a comma and another to those who write thousands with it
   */
  @Override
  public String readable(String cell) {
    String given = CellRules.readable(cell).strip();
    if (separator != ';') {
      return cell;
    }
    Matcher either = THOUSANDS_OR_DECIMALS.matcher(given);
    if (either.matches()) {
      String thousands = either.group(1) + either.group(2) + either.group(3);
      String decimals = either.group(1) + decimals(either.group(2), either.group(3));
      throw new RefusedException(
          "\"%s\" could be %s or %s in a file with semicolons between its cells; write %2$s or %3$s"
              .formatted(given, thousands, decimals));
    }
    return DECIMAL_COMMA.matcher(given).matches() ? given.replace(',', '.') : cell;
  }

  /** The same decimals, but not three of them, which would be read as thousands again. */
  private static String decimals(String whole, String three) {
    String fewer = three.replaceAll("0+$", "");
    return fewer.isEmpty() ? whole : whole + "." + (fewer.length() == 3 ? three + "0" : fewer);
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
