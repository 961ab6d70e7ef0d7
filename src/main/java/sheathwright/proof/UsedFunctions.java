package sheathwright.proof;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;

/**
 * Which library functions some values came out of, told by what the values remember: a step that
 * bears the name of a function's result and was made by its formula. A formula that several
 * functions share tells of none of them.
 */
public final class UsedFunctions {

  private static final String FILE = "proof/formulas.csv";

  private static final Map<Formula, String> FUNCTIONS = functions();

  /** A result's name and its formula in symbols. */
  private record Formula(String result, String symbols) {}

  private UsedFunctions() {}

  /** The names of the functions behind some values, in alphabetical order. */
  public static List<String> behind(Collection<? extends Traced> values) {
    Set<String> used = new TreeSet<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> next = new ArrayDeque<>(values);
    while (!next.isEmpty()) {
      Traced node = next.pop();
      if (seen.add(node)) {
        next.addAll(node.step().operands());
        if (node.isNamed()) {
          String function = FUNCTIONS.get(new Formula(node.name(), Working.symbols(node)));
          if (function != null) {
            used.add(function);
          }
        }
      }
    }
    return List.copyOf(used);
  }

  private static Map<Formula, String> functions() {
    Map<Formula, String> functions = new HashMap<>();
    ShippedTable.lines(FILE)
        .forEach(
            line ->
                functions.put(
                    new Formula(line.get("result"), line.get("formula")), line.get("function")));
    return functions;
  }
}
