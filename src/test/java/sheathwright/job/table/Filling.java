package sheathwright.job.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import sheathwright.catalog.Catalog;
import sheathwright.job.fill.FilledTable;

/** A function filled down a table that a test writes as text. */
public record Filling(FilledTable table) {

  public static Filling of(String function, String... lines) {
    return ofText(function, String.join("\n", lines) + "\n");
  }

  public static Filling ofText(String function, String text) {
    return new Filling(
        FilledTable.of(Catalog.shipped().named(function), CsvFile.parse("cases.csv", text)));
  }

  /** The filled table as text. */
  public String text() {
    try {
      StringBuilder out = new StringBuilder();
      table.lines().writeTo(out, row -> {});
      return out.toString();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The lines of the filled table, the heading among them. */
  public List<String> lines() {
    return text().lines().toList();
  }

  /** The cells of one column of the filled table, read back. */
  public List<String> column(String heading) {
    CsvFile back = CsvFile.parse("filled.csv", text());
    int column = back.header().indexOf(heading);
    return back.lines().stream().map(line -> line.cells().get(column)).toList();
  }

  /** What is wrong, a line each. */
  public List<String> problems() {
    return table.problems().stream().map(Problem::toString).toList();
  }
}
