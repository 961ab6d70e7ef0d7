package sheathwright.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import sheathwright.catalog.Catalog;

/** A function filled down a table that a test writes as text. */
record Filling(FilledTable table) {

  static Filling of(String function, String... lines) {
    return ofText(function, String.join("\n", lines) + "\n");
  }

  static Filling ofText(String function, String text) {
    return new Filling(
        FilledTable.of(Catalog.shipped().named(function), CsvFile.parse("cases.csv", text)));
  }

  /** The filled table as text. */
  String text() {
    try {
      StringBuilder out = new StringBuilder();
      table.lines().writeTo(out, row -> {});
      return out.toString();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The lines of the filled table, the heading among them. */
  List<String> lines() {
    return text().lines().toList();
  }

  /** The cells of one column of the filled table, read back. */
  List<String> column(String heading) {
    CsvFile back = CsvFile.parse("filled.csv", text());
    int column = back.header().indexOf(heading);
    return back.lines().stream().map(line -> line.cells().get(column)).toList();
  }

  /** What is wrong, a line each. */
  List<String> problems() {
    return table.problems().stream().map(Problem::toString).toList();
  }
}
