package sheathwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One cell of a job's tables set to another value.
 *
 * @param job the job's folder
 * @param table the file's name
 * @param line counted from 0, the heading included
 * @param column counted from 0
 * @param value what the cell is set to
 */
record TableChange(Path job, String table, int line, int column, String value) {

  private static final Pattern CELL = Pattern.compile("\"(?:[^\"]|\"\")*\"|[^,]*");

  /** A value that no number and no word of any table is. */
  static final String UNLIKELY = "unlikely";

  static final String HUGE = "1000000000";

  /** Every cell of a job, but its keys and notes, each to be changed. */
  static List<TableChange> of(Path job) {
    List<TableChange> cells = new ArrayList<>();
    for (Path table : tables(job)) {
      List<String> lines = lines(table);
      List<String> head = cells(lines.get(0));
      boolean isKeyed = List.of("key", "item", "rate").contains(head.get(0));
      for (int line = 1; line < lines.size(); line++) {
        for (int column = isKeyed ? 1 : 0; column < head.size(); column++) {
          if (!head.get(column).equals("note")) {
            cells.add(new TableChange(job, table.getFileName().toString(), line, column, ""));
          }
        }
      }
    }
    return cells;
  }

  /** The same cell set to another value. */
  TableChange to(String other) {
    return new TableChange(job, table, line, column, other);
  }

  /** The job with the change made, as files in another folder. */
  void write(Path folder) {
    try {
      for (Path original : tables(job)) {
        List<String> lines = new ArrayList<>(lines(original));
        if (original.endsWith(table)) {
          List<String> cells = cells(lines.get(line));
          cells.set(column, value);
          lines.set(line, String.join(",", cells));
        }
        Files.write(folder.resolve(original.getFileName()), lines);
      }
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static List<Path> tables(Path job) {
    try (Stream<Path> files = Files.list(job)) {
      return files.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<String> lines(Path table) {
    try {
      return Files.readAllLines(table);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    Matcher matcher = CELL.matcher(line);
    int at = 0;
    while (at <= line.length() && matcher.find(at)) {
      cells.add(matcher.group());
      at = matcher.end() + 1;
    }
    return cells;
  }

  @Override
  public String toString() {
    return "%s: %s, line %d, column %d set to \"%s\""
        .formatted(job.getFileName(), table, line + 1, column + 1, value);
  }
}
