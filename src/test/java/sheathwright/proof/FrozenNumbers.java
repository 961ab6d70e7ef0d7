package sheathwright.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Result;
import sheathwright.job.fill.FilledLines;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.fill.FilledTable;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;

/**
 * What a release gave for the arguments of every certified case, a table for each function as
 * {@code fill} writes it; run, it freezes what is given now.
 */
final class FrozenNumbers {

  private static final Path FOLDER =
      Path.of("src", "test", "resources", "sheathwright", "proof", "frozen");

  private static final String ENDING = ".csv";

  /** Machines differ in the last digits of a power. */
  private static final double SAME = 1e-11;

  /** A result that is not what it was. */
  record Change(String function, String line, String column, String was, String now) {}

  private FrozenNumbers() {}

  /** The release that they are of. */
  static String version() throws IOException {
    return Files.readString(FOLDER.resolve("version")).strip();
  }

  static List<Path> tables() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(ENDING)).sorted().toList();
    }
  }

  /** What one table's arguments give now that they did not give then. */
  static List<Change> changes(CsvFile table) {
    Card card = Catalog.shipped().named(table.name().replace(ENDING, ""));
    CaseColumns columns = new CaseColumns(card, table);
    List<FilledRow> rows = FilledTable.of(card, columns.arguments()).rows();
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      RowSource.Line line = table.lines().get(i);
      for (CertifiedCase.Expected was : columns.expected(line)) {
        String now = now(card, rows.get(i), was.result());
        if (!isSame(was.text(), now)) {
          changes.add(
              new Change(
                  card.name(),
                  String.valueOf(line.number()),
                  was.result().column(),
                  was.text(),
                  now));
        }
      }
    }
    return changes;
  }

  private static String now(Card card, FilledRow row, Result result) {
    return row.isRefused()
        ? "refused"
        : Optional.of(row.results().get(card.results().indexOf(result)))
            .filter(value -> value.refusal().filter(refusal -> !refusal.isAnswer()).isEmpty())
            .map(value -> value.plain())
            .orElse("refused");
  }

  private static boolean isSame(String was, String now) {
    if (was.equals(now)) {
      return true;
    }
    try {
      double before = Double.parseDouble(was);
      return Math.abs(Double.parseDouble(now) - before) <= SAME * Math.abs(before);
    } catch (NumberFormatException words) {
      return false;
    }
  }

  public static void main(String... version) throws IOException {
    Files.createDirectories(FOLDER);
    for (Path old : tables()) {
      Files.delete(old);
    }
    Files.writeString(FOLDER.resolve("version"), version[0] + "\n");
    Catalog.shipped()
        .cards()
        .forEach(card -> CertifiedCases.of(card).ifPresent(FrozenNumbers::freeze));
  }

  private static void freeze(CaseTable cases) {
    FilledLines lines = cases.filled().lines();
    Path file = FOLDER.resolve(cases.card().name() + ENDING);
    try (Writer out = Files.newBufferedWriter(file)) {
      lines.writeTo(out, row -> {});
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
