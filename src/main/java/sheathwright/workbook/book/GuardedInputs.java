package sheathwright.workbook.book;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Predicate;
import sheathwright.figure.Limits;
import sheathwright.figure.Traced;

/** The limits that functions set on the inputs that are handed to them unchanged. */
final class GuardedInputs {

  private GuardedInputs() {}

  static Map<Traced, Limits> limits(Reached reached, Predicate<Traced> isInput) {
    Map<Traced, Limits> limits = new IdentityHashMap<>();
    for (Reached.Node node : reached.nodes()) {
      node.value()
          .step()
          .guard()
          .filter(guard -> isInput.test(guard.argument()))
          .ifPresent(guard -> limits.merge(guard.argument(), guard.limits(), Limits::and));
    }
    return limits;
  }
}
