package sheathwright.workbook.book;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;

/**
 * What values are made from, as a walk over all of them needs it. Everything that one solution
 * found is made from all of its inputs: they are given for two of those values, which is enough to
 * reach them and to see that they are used more than once.
 */
final class Operands {

  private final Map<Solution, Integer> asked = new IdentityHashMap<>();

  List<Traced> of(Traced node) {
    boolean isKnown =
        node.step().solution().filter(each -> asked.merge(each, 1, Integer::sum) > 2).isPresent();
    return isKnown ? List.of() : node.step().operands();
  }
}
