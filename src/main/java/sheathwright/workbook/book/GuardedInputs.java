package sheathwright.workbook.book;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import sheathwright.figure.Limits;
import sheathwright.figure.Traced;

/** The limits that functions set on the inputs that are handed to them unchanged. */
final class GuardedInputs {

  private final Predicate<Traced> isInput;
  private final Map<Traced, Limits> limits = new IdentityHashMap<>();
  private final Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Operands operands = new Operands();

  private GuardedInputs(Predicate<Traced> isInput) {
    this.isInput = isInput;
  }

  static Map<Traced, Limits> limits(
      List<Traced> roots, List<Listing> listings, Predicate<Traced> isInput) {
    GuardedInputs found = new GuardedInputs(isInput);
    roots.forEach(found::visit);
    listings.forEach(listing -> listing.roll().rows().forEach(row -> row.forEach(found::visit)));
    return found.limits;
  }

  private void visit(Traced node) {
    if (!seen.add(node)) {
      return;
    }
    node.step()
        .guard()
        .filter(guard -> isInput.test(guard.argument()))
        .ifPresent(guard -> limits.merge(guard.argument(), guard.limits(), Limits::and));
    operands.of(node).forEach(this::visit);
  }
}
