package sheathwright.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** The inputs that a value comes from. */
public final class Origins {

  private Origins() {}

  /**
   * The inputs that decided these values, the nearest first: those of a branch that was not taken
   * decided nothing; where a condition failed or a divisor is zero, that alone did; and of the
   * greatest or least of several, the one that is it.
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
      if (value.step().isInput()) {
        inputs.add(value);
      }
      next.addAll(deciding(value));
    }
    return inputs;
  }

  private static List<? extends Traced> deciding(Traced value) {
    Step step = value.step();
    if (step instanceof Step.Gathered gathered && gathered.how() != Gather.SUM) {
      return likest(value, step);
    }
    if (step instanceof Step.Provided provided) {
      return List.of(provided.condition());
    }
    if (step instanceof Step.Chosen chosen && chosen.when().refusal().isEmpty()) {
      return List.of(chosen.when().holds() ? chosen.then() : chosen.otherwise(), chosen.when());
    }
    if (step instanceof Step.Applied applied) {
      Operator operator = applied.operator();
      if (operator == Operator.DIVIDED_BY) {
        return zeroOrAll(applied);
      }
      if (operator == Operator.LESSER || operator == Operator.GREATER) {
        return likest(value, step);
      }
    }
    return step.operands();
  }

  private static List<? extends Traced> zeroOrAll(Step.Applied quotient) {
    Figure<?> divisor = quotient.arguments().get(1);
    boolean isZero = divisor.refusal().isEmpty() && divisor.number() == 0;
    return isZero ? List.of(divisor) : quotient.arguments();
  }

  /** Of several numbers of which one is taken, those that are that one; all, if one is refused. */
  private static List<Traced> likest(Traced taken, Step step) {
    return step.operands().stream()
        .filter(each -> taken.refusal().isPresent() || number(each) == number(taken))
        .toList();
  }

  private static double number(Traced value) {
    return ((Figure<?>) value).number();
  }
}
