package sheathwright.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Step.Given.Role;

/** The inputs that a value comes from. */
public final class Origins {

  private Origins() {}

  /**
   * The inputs that decided these values, the nearest first: those of a branch that was not taken
   * decided nothing, and where a condition failed or a divisor is zero, that alone did.
   */
  public static List<Traced> of(List<? extends Traced> values) {
    List<Traced> inputs = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> next = new ArrayDeque<>(values);
    while (!next.isEmpty()) {
      Traced value = next.remove();
      if (!seen.add(value)) {
        continue;
      }
      if (value.step() instanceof Step.Given given && given.role() == Role.INPUT) {
        inputs.add(value);
      }
      next.addAll(deciding(value.step()));
    }
    return inputs;
  }

  private static List<? extends Traced> deciding(Step step) {
    if (step instanceof Step.Provided provided) {
      return List.of(provided.condition());
    }
    if (step instanceof Step.Chosen chosen && chosen.when().refusal().isEmpty()) {
      return List.of(chosen.when().holds() ? chosen.then() : chosen.otherwise(), chosen.when());
    }
    if (step instanceof Step.Applied applied && applied.operator() == Operator.DIVIDED_BY) {
      Figure<?> divisor = applied.arguments().get(1);
      return divisor.refusal().isEmpty() && divisor.number() == 0
          ? List.of(divisor)
          : step.operands();
    }
    return step.operands();
  }
}
