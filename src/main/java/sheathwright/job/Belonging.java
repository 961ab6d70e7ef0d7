package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/**
 * Which lines of a job's tables belong together: which mark lies on which plane, which reading on
 * which rafter. Whatever is solved for some of the lines rests on that as well as on what they say.
 */
final class Belonging {

  private final String name;
  private final List<Solution.Input> inputs;
  private final Solution solution;

  private Belonging(String name, List<Solution.Input> inputs) {
    this.name = name;
    this.inputs = inputs;
    this.solution = Solution.of(name, inputs);
  }

  /** Nothing yet. */
  static Belonging of(String name) {
    return new Belonging(name, List.of());
  }

  /**
   * The same with a table's lines.
   *
   * @param line what a line is called
   * @param fields that say where it belongs
   */
  Belonging with(String line, List<Row> rows, Field<?>... fields) {
    List<Solution.Input> all = new ArrayList<>(inputs);
    for (int i = 0; i < rows.size(); i++) {
      for (Field<?> field : fields) {
        String which = line + " " + (i + 1);
        String label = field.name().equals(line) ? which : field.name() + " of " + which;
        all.add(new Solution.Input(label, rows.get(i).of(field)));
      }
    }
    return new Belonging(name, all);
  }

  /** The lines as they were told apart. */
  Solution solution() {
    return solution;
  }

  /** What a plan that rests on it takes in. */
  Solution.Input input() {
    return new Solution.Input(Shown.inWords(name), solution.state());
  }
}
