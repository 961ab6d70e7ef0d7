package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Reached;

/**
 * The columns that say whether what was solved in a row still holds: a copy of each argument that
 * it was solved for, and a word that compares. Rows in which nothing is solved have none.
 */
final class RowGuard {

  private static final String COPY = "solved_for_";

  private final List<Integer> guarded;

  private RowGuard(List<Integer> guarded) {
    this.guarded = guarded;
  }

  /** The guard of rows that are made as this one is. */
  static RowGuard like(List<Traced> arguments, List<Traced> results) {
    Reached reached = new Reached();
    reached.from(results);
    Set<Traced> read = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Solution solution : reached.solutions()) {
      solution.inputs().forEach(input -> collect(input, read));
    }
    return new RowGuard(
        IntStream.range(0, arguments.size())
            .filter(argument -> read.contains(arguments.get(argument)))
            .boxed()
            .toList());
  }

  private static void collect(Traced value, Set<Traced> into) {
    if (into.add(value)) {
      value.step().operands().forEach(operand -> collect(operand, into));
    }
  }

  /** What the columns are called, for arguments of these names. */
  List<String> headings(List<String> arguments) {
    List<String> headings = new ArrayList<>();
    guarded.forEach(argument -> headings.add(COPY + arguments.get(argument)));
    if (!guarded.isEmpty()) {
      headings.add("state");
    }
    return headings;
  }

  /** The cells of a row. */
  List<Traced> of(List<Traced> arguments) {
    List<Traced> cells = new ArrayList<>();
    List<Condition> same = new ArrayList<>();
    for (int argument : guarded) {
      Traced now = arguments.get(argument);
      Traced copy = copy(now);
      cells.add(copy);
      same.add(isSame(now, copy));
    }
    if (!guarded.isEmpty()) {
      cells.add(
          Choice.choose(
                  Condition.all(same.toArray(Condition[]::new)),
                  Choice.literal(Solution.CURRENT),
                  Choice.literal("solve again"))
              .as("state", Source.ARITHMETIC));
    }
    return cells;
  }

  private static Traced copy(Traced now) {
    return now instanceof Figure<?> figure ? copy(figure) : Choice.literal(now.plain());
  }

  private static <Q extends Quantity> Figure<Q> copy(Figure<Q> now) {
    return Figure.constant("", now.value(), now.unit(), Source.ARITHMETIC);
  }

  private static Condition isSame(Traced now, Traced copy) {
    return now instanceof Figure<?> figure
        ? figure.isTheSameAs((Figure<?>) copy)
        : ((Choice<?>) now).isTheSameAs((Choice<?>) copy);
  }
}
