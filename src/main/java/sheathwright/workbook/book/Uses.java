package sheathwright.workbook.book;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Traced;

/**
 * Whether each value is an operand of none, of one or of several others, every step being looked at
 * once.
 */
public final class Uses {

  private final Map<Traced, Integer> uses = new IdentityHashMap<>();
  private final Set<Traced> looked = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Operands operands = new Operands();

  public void count(Traced node) {
    if (looked.add(node)) {
      for (Traced operand : operands.of(node)) {
        uses.merge(operand, 1, Integer::sum);
        count(operand);
      }
    }
  }

  public int of(Traced node) {
    return uses.getOrDefault(node, 0);
  }
}
