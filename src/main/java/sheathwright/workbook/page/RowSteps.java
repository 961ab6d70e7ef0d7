package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Closure;
import sheathwright.workbook.book.Reached;

/**
 * The steps between a row's inputs and its results that need columns of their own, each after those
 * it needs. They are found once: all rows are made alike, so that the way which leads from a result
 * to a step in one row leads to it in every other.
 */
final class RowSteps {

  private final Set<Traced> known = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Reached reached = new Reached();
  private final List<int[]> ways = new ArrayList<>();

  private RowSteps(List<Traced> inputs, List<Traced> results) {
    reached.from(results);
    known.addAll(inputs);
    known.addAll(results);
    for (int result = 0; result < results.size(); result++) {
      visitOperands(results.get(result), new int[] {result});
    }
  }

  /** The steps of rows that are made as this one is. */
  static RowSteps like(List<Traced> inputs, List<Traced> results) {
    return new RowSteps(inputs, results);
  }

  /** The steps of a row. */
  List<Traced> of(List<Traced> results) {
    List<Traced> steps = new ArrayList<>();
    for (int[] way : ways) {
      Traced step = results.get(way[0]);
      for (int i = 1; i < way.length; i++) {
        step = step.step().operands().get(way[i]);
      }
      steps.add(step);
    }
    return steps;
  }

  private void visitOperands(Traced node, int[] way) {
    List<Traced> operands = node.step().operands();
    for (int i = 0; i < operands.size(); i++) {
      int[] onward = Arrays.copyOf(way, way.length + 1);
      onward[way.length] = i;
      visit(operands.get(i), onward);
    }
  }

  private void visit(Traced node, int[] way) {
    if (!known.add(node)) {
      return;
    }
    visitOperands(node, way);
    boolean isShared = node.step().isGiven() && !node.step().isInput();
    if (!isShared && Closure.needsACell(node, reached.uses(node))) {
      ways.add(way);
    }
  }
}
