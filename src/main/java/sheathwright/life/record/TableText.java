package sheathwright.life.record;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.CsvLines;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * A table's file as text, written on: a row behind its last one, or a key set in its line. Every
 * other line, its ends, the columns and what separates them stay as they stand.
 */
public final class TableText {

  private static final Pattern DECIMAL = Pattern.compile("-?\\d*\\.\\d+(E-?\\d+)?");
  private static final String ORDER_MARK = "\uFEFF";

  private final String name;
  private final Set<String> numbers;
  private final char separator;
  private final String text;

  private TableText(String name, Set<String> numbers, char separator, String text) {
    this.name = name;
    this.numbers = numbers;
    this.separator = separator;
    this.text = text;
  }

  private TableText(String name, List<Field<?>> columns, char separator, String text) {
    this(
        name,
        columns.stream()
            .filter(column -> column.unit() != null)
            .map(Field::name)
            .collect(toUnmodifiableSet()),
        separator,
        text);
  }

  /**
   * The text of a file that was read as a table before.
   *
   * @param columns what its rows may hold
   */
  public static TableText of(Path file, List<Field<?>> columns) {
    String name = String.valueOf(file.getFileName());
    try {
      String text = Files.readString(file);
      return new TableText(name, columns, CsvFile.parse(name, text).separator(), text);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * A table that is not there yet.
   *
   * @param columns what its rows will hold
   * @param separator what stands between its cells
   */
  public static TableText empty(String name, List<Field<?>> columns, char separator) {
    String head =
        columns.stream().map(Field::name).collect(joining(String.valueOf(separator))) + "\n";
    return new TableText(name, columns, separator, head);
  }

  /** The name of its file. */
  String name() {
    return name;
  }

  /** What stands between its cells. */
  public char separator() {
    return separator;
  }

  byte[] bytes() {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The table that it is. */
  public CsvFile parsed() {
    return CsvFile.parse(name, text);
  }

  /**
   * The same with a row more.
   *
   * @param cells what stands in it by column, numbers with a decimal point; what is not named stays
   *     blank
   * @throws ProblemsException if the table has not the column of something that is to be written
   */
  public TableText withRow(Map<String, String> cells) {
    List<String> header = parsed().header();
    List<String> row = new ArrayList<>(header.stream().map(heading -> "").toList());
    cells.forEach(
        (column, value) -> {
          if (!value.isEmpty() || header.contains(column)) {
            row.set(place(header, column), numbers.contains(column) ? number(value) : value);
          }
        });
    return written(ended() + line(row) + lineEnd());
  }

  /**
   * The same with a key set: in its own line, or in a new one behind the last.
   *
   * @param keys the headings of the table
   */
  TableText with(Keys keys, Field<?> field, String value) {
    List<String> header = parsed().header();
    int keyPlace = place(header, keys.key());
    int valuePlace = place(header, keys.value());
    List<CSVRecord> records = records();
    for (int i = 1; i < records.size(); i++) {
      List<String> cells = new ArrayList<>(records.get(i).toList());
      if (keyPlace < cells.size() && cells.get(keyPlace).strip().equals(field.name())) {
        filledTo(cells, valuePlace + 1);
        if (cells.get(valuePlace).strip().equals(value)) {
          return this;
        }
        cells.set(valuePlace, value);
        return withLine(records, i, cells);
      }
    }
    List<String> row = new ArrayList<>();
    filledTo(row, Math.max(keyPlace, valuePlace) + 1);
    row.set(keyPlace, field.name());
    row.set(valuePlace, value);
    filledTo(row, header.size());
    return written(ended() + line(row) + lineEnd());
  }

  /**
   * The same with another cell in one of its lines.
   *
   * @param line of those that hold anything, counted from 0 below the headings
   */
  public TableText withCell(int line, String column, String value) {
    List<CSVRecord> records = records();
    int[] told =
        IntStream.range(0, records.size())
            .filter(i -> records.get(i).stream().anyMatch(cell -> !cell.isBlank()))
            .toArray();
    int place = place(parsed().header(), column);
    List<String> cells = new ArrayList<>(records.get(told[line + 1]).toList());
    filledTo(cells, place + 1);
    cells.set(place, numbers.contains(column) ? number(value) : value);
    return withLine(records, told[line + 1], cells);
  }

  /** The same with a column behind the last, blank in every row, unless it is there. */
  public TableText withColumn(String column) {
    List<String> header = parsed().header();
    if (header.contains(column)) {
      return this;
    }
    TableText wider = this;
    List<CSVRecord> records = records();
    for (int i = records.size() - 1; i >= 0; i--) { // what stands before keeps its place
      List<String> cells = new ArrayList<>(records.get(i).toList());
      filledTo(cells, header.size());
      cells.add(i == 0 ? column : "");
      wider = wider.withLine(records, i, cells);
    }
    return wider;
  }

  private static void filledTo(List<String> cells, int count) {
    while (cells.size() < count) {
      cells.add("");
    }
  }

  private int place(List<String> header, String column) {
    int place = header.indexOf(column);
    if (place < 0) {
      String message = "this column is missing and something is to be written under it; add it";
      throw new ProblemsException(List.of(new Problem(name, 1, column, message)));
    }
    return place;
  }

  private List<CSVRecord> records() {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(separator).setIgnoreEmptyLines(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(body()), format)) {
      return parser.getRecords();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The text without the byte-order mark that a spreadsheet program may have put before it. */
  private String body() {
    return text.substring(text.startsWith(ORDER_MARK) ? ORDER_MARK.length() : 0);
  }

  /** One line printed anew; the ends of lines before and behind it stay. */
  private TableText withLine(List<CSVRecord> records, int changed, List<String> cells) {
    int mark = text.length() - body().length();
    int from = mark + (int) records.get(changed).getCharacterPosition();
    boolean isLast = changed + 1 == records.size();
    int to = isLast ? text.length() : mark + (int) records.get(changed + 1).getCharacterPosition();
    while (isLineEnd(text.charAt(from))) {
      from++;
    }
    while (isLineEnd(text.charAt(to - 1))) {
      to--;
    }
    return written(text.substring(0, from) + line(cells) + text.substring(to));
  }

  private static boolean isLineEnd(char character) {
    return character == '\n' || character == '\r';
  }

  private String line(List<String> cells) {
    return CsvLines.line(cells, separator);
  }

  private String ended() {
    return isLineEnd(text.charAt(text.length() - 1)) ? text : text + lineEnd();
  }

  private String lineEnd() {
    return Stream.of("\r\n", "\n", "\r").filter(text::contains).findFirst().orElse("\n");
  }

  private TableText written(String other) {
    return new TableText(name, numbers, separator, other);
  }

  /**
   * Where semicolons stand between cells a number has a decimal comma, and never three places
   * behind it, which could be thousands. A fraction stays as it was typed.
   */
  private String number(String value) {
    if (separator != ';' || !DECIMAL.matcher(value).matches()) {
      return value;
    }
    BigDecimal number = new BigDecimal(value);
    boolean couldBeThousands = number.scale() == 3;
    return (couldBeThousands ? number.setScale(4) : number).toPlainString().replace('.', ',');
  }
}
