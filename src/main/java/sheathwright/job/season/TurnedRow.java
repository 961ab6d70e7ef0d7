package sheathwright.job.season;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import sheathwright.job.table.Keys;
import sheathwright.job.table.RowSource;

/**
 * One line of the table of a season's jobs as the table of a job's facts: each heading a key, with
 * what stands under it as its value.
 *
 * @param file the table of the jobs
 * @param keys the two headings of a job's facts
 * @param place the number of the line
 * @param lines a fact each
 */
record TurnedRow(RowSource file, Keys keys, long place, List<Line> lines) implements RowSource {

  /** The facts of a line. */
  static TurnedRow of(RowSource file, Keys keys, Line line, Set<String> facts) {
    return new TurnedRow(
        file,
        keys,
        line.number(),
        IntStream.range(0, file.header().size())
            .filter(column -> facts.contains(file.header().get(column)))
            .filter(column -> !line.cells().get(column).isBlank())
            .mapToObj(column -> List.of(file.header().get(column), line.cells().get(column)))
            .map(cells -> new Line(line.number(), cells))
            .toList());
  }

  @Override
  public String name() {
    return file.name();
  }

  @Override
  public List<String> header() {
    return List.of(keys.key(), keys.value());
  }

  @Override
  public String heading(Line line, String column) {
    return line.cells().get(0);
  }

  @Override
  public String readable(String cell) {
    return file.readable(cell);
  }
}
