package sheathwright.year;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table as somebody at a desk reads and types it: without the program's own reader.
 *
 * @param separator what stands between cells
 */
record Typed(char separator, List<String> header, List<List<String>> rows) {

  private static final String ORDER_MARK = "\uFEFF";

  static Typed of(String text) {
    String body = text.startsWith(ORDER_MARK) ? text.substring(1) : text;
    char separator = body.lines().findFirst().orElse("").contains(";") ? ';' : ',';
    CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(separator).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(body), format)) {
      List<List<String>> all = new ArrayList<>();
      for (CSVRecord record : parser) {
        if (!String.join("", record.toList()).isBlank()) {
          all.add(new ArrayList<>(record.toList()));
        }
      }
      return new Typed(separator, all.remove(0), all);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static Typed with(String... columns) {
    return new Typed(',', new ArrayList<>(List.of(columns)), new ArrayList<>());
  }

  /** The rows, each by column; cells that its row does not have are blank. */
  List<Map<String, String>> named() {
    return rows.stream()
        .map(
            row -> {
              Map<String, String> cells = new LinkedHashMap<>();
              for (int i = 0; i < header.size(); i++) {
                cells.put(header.get(i), i < row.size() ? row.get(i).strip() : "");
              }
              return cells;
            })
        .toList();
  }

  /** What stands behind a key; empty if nothing does. */
  String behind(String key) {
    return rows.stream()
        .filter(row -> row.get(0).equals(key))
        .map(row -> row.get(1))
        .findFirst()
        .orElse("");
  }

  /** Types a row below the last, and columns that are not there yet. */
  Typed row(Map<String, String> cells) {
    for (String column : cells.keySet()) {
      if (!header.contains(column)) {
        header.add(column);
      }
    }
    rows.add(
        new ArrayList<>(header.stream().map(column -> cells.getOrDefault(column, "")).toList()));
    return this;
  }

  /** Types into one cell. */
  void set(int row, String column, String value) {
    if (!header.contains(column)) {
      header.add(column);
    }
    List<String> cells = rows.get(row);
    while (cells.size() < header.size()) {
      cells.add("");
    }
    cells.set(header.indexOf(column), value);
  }

  /** Types what stands behind a key. */
  Typed fact(String key, String value) {
    rows.removeIf(row -> row.get(0).equals(key));
    List<String> row = new ArrayList<>(List.of(key, value));
    while (row.size() < header.size()) {
      row.add("");
    }
    rows.add(row);
    return this;
  }

  /** The same with another sign between cells, and a comma in its numbers where that is a point. */
  Typed separatedBy(char other) {
    List<List<String>> all = new ArrayList<>();
    for (List<String> row : rows) {
      all.add(
          new ArrayList<>(
              row.stream()
                  .map(
                      cell ->
                          cell.matches("-?\\d+\\.\\d+")
                              ? (cell + (cell.matches(".*\\.\\d{3}") ? "0" : "")).replace('.', ',')
                              : cell)
                  .toList()));
    }
    return new Typed(other, header, all);
  }

  /** A number of a cell; nothing if it is blank. */
  static BigDecimal number(String cell) {
    return cell.isBlank() ? BigDecimal.ZERO : new BigDecimal(cell.replace(',', '.'));
  }

  /** Its file. */
  String text() {
    CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(separator).get();
    return format.format(header.toArray())
        + "\n"
        + rows.stream().map(row -> format.format(whole(row).toArray()) + "\n").collect(joining());
  }

  private List<String> whole(List<String> row) {
    List<String> whole = new ArrayList<>(row);
    while (whole.size() < header.size()) {
      whole.add("");
    }
    return whole;
  }
}
