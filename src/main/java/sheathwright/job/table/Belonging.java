package sheathwright.job.table;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;

/**
 * Which lines of a job's tables belong to which plane. Whatever is solved for some of the lines
 * rests on that as well as on what they say.
 */
public final class Belonging {

  private static final String PLANE = "plane";

  private final List<Placed> placed = new ArrayList<>();
  private final Solution solution;

  /** A line of a table, and the plane that it names. */
  private record Placed(String line, String plane, Row row) {}

  /**
   * A table whose lines name the plane that they belong to.
   *
   * @param line what a line is called
   * @param fields that tell its lines apart, beside the plane
   */
  public record Lines(String line, List<Row> rows, List<Field<Choice<String>>> fields) {

    public Lines(String line, List<Row> rows) {
      this(line, rows, List.of());
    }
  }

  /**
   * Tables told apart.
   *
   * @param name of that, in snake case
   * @param plane the field in which a line names its plane
   */
  public Belonging(String name, Field<Choice<String>> plane, Lines... tables) {
    Reading reading = new Reading();
    for (Lines table : tables) {
      for (int i = 0; i < table.rows().size(); i++) {
        Row row = table.rows().get(i);
        String which = table.line() + " " + (i + 1);
        for (Field<Choice<String>> field : table.fields()) {
          row.read(field).ifPresent(cell -> word(reading, which, cell));
        }
        String label = table.line().equals(PLANE) ? which : "plane of " + which;
        placed.add(new Placed(table.line(), word(reading, label, row.of(plane)), row));
      }
    }
    this.solution = reading.solution(name);
  }

  private static String word(Reading reading, String label, Choice<?> cell) {
    return String.valueOf(reading.word(label, cell));
  }

  /** The lines of a table that belong to a plane. */
  public List<Row> on(String plane, String line) {
    return placed.stream()
        .filter(each -> each.line().equals(line) && each.plane().equals(plane))
        .map(Placed::row)
        .toList();
  }

  /** The lines as they were told apart. */
  public Solution solution() {
    return solution;
  }
}
