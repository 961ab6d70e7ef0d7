package sheathwright.life.record;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.RowSource;

/**
 * A job's tables as the tabs of its workbook hold them: each value as it was read, however it was
 * written, and everything else as it stands.
 */
public final class HeldTables {

  private HeldTables() {}

  /** The tables of a job, by the word of each. */
  public static Map<String, RowSource> of(Job job) {
    Map<String, RowSource> held = new LinkedHashMap<>();
    for (JobTable table : JobTable.values()) {
      Optional.ofNullable(job.source().files().get(table.word()))
          .ifPresent(file -> held.put(table.word(), held(job, table, file)));
    }
    return held;
  }

  private static RowSource held(Job job, JobTable table, RowSource file) {
    List<RowSource.Line> lines = new ArrayList<>();
    for (RowSource.Line line : file.lines()) {
      List<String> cells = new ArrayList<>();
      for (int column = 0; column < file.header().size(); column++) {
        String text = line.cells().get(column);
        cells.add(input(job, table, file, line, column).map(HeldTables::plain).orElse(text));
      }
      lines.add(new RowSource.Line(line.number(), cells));
    }
    return new CsvFile(file.name(), ',', file.header(), lines);
  }

  /** The input that was read from a cell of a table; none where no key or column was read there. */
  public static Optional<Traced> input(
      Job job, JobTable table, RowSource file, RowSource.Line line, int column) {
    String heading = file.header().get(column);
    return field(table, file, line, column)
        .map(field -> new Source.Cell(file.name(), line.number(), heading, field.name()))
        .map(job.inputs()::get);
  }

  /** What a cell of a table may hold, where that is known. */
  public static Optional<Field<?>> field(
      JobTable table, RowSource file, RowSource.Line line, int column) {
    String heading = file.header().get(column);
    Optional<Keys> keys = table.keys();
    if (keys.isEmpty()) {
      return Optional.ofNullable(TableGuide.fields(table).get(heading));
    }
    int key = file.header().indexOf(keys.get().key());
    return heading.equals(keys.get().value())
        ? Optional.ofNullable(TableGuide.fields(table).get(line.cells().get(key).strip()))
        : Optional.empty();
  }

  /** An input as its cell is read back. */
  public static String plain(Traced input) {
    return input instanceof Figure<?> figure && !figure.isAbsent()
        ? BigDecimal.valueOf(figure.value()).stripTrailingZeros().toPlainString()
        : input.plain();
  }
}
