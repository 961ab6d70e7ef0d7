package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Step;
import sheathwright.figure.Step.Given.Role;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Closure;
import sheathwright.workbook.book.Uses;

/**
 * The steps between one row's inputs and its results that need columns of their own, each after
 * those it needs.
 */
final class RowSteps {

  private final Set<Traced> known = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Uses uses = new Uses();
  private final List<Traced> steps = new ArrayList<>();

  private RowSteps(List<Traced> inputs, List<Traced> results) {
    results.forEach(uses::count);
    known.addAll(inputs);
    known.addAll(results);
    results.forEach(result -> result.step().operands().forEach(this::visit));
  }

  static List<Traced> between(List<Traced> inputs, List<Traced> results) {
    return new RowSteps(inputs, results).steps;
  }

  private void visit(Traced node) {
    if (!known.add(node)) {
      return;
    }
    node.step().operands().forEach(this::visit);
    boolean isShared = node.step() instanceof Step.Given given && given.role() != Role.INPUT;
    if (!isShared && Closure.needsACell(node, uses.of(node))) {
      steps.add(node);
    }
  }
}
