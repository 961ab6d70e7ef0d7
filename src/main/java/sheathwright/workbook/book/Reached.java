package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;

/**
 * Everything that some values are made from, each number after those that it is made from. It is
 * walked once; whatever is asked of all of them is asked of this list.
 *
 * <p>Everything that one solution found is made from all of its inputs: they are looked at for two
 * of those values, which is enough to reach them and to see that they are used more than once.
 */
public final class Reached {

  private final Map<Traced, Node> nodes = new IdentityHashMap<>();
  private final Map<Solution, Integer> asked = new IdentityHashMap<>();
  private final List<Node> inOrder = new ArrayList<>();

  /** A value, the first of the values on the pages that it was reached from, and its uses. */
  static final class Node {

    private final Traced value;
    private final Traced from;
    private int uses;

    private Node(Traced value, Traced from) {
      this.value = value;
      this.from = from;
    }

    Traced value() {
      return value;
    }

    Traced from() {
      return from;
    }

    /** How many others it is an operand of. */
    int uses() {
      return uses;
    }

    /** Whether anything else is made from it. */
    boolean isOperand() {
      return uses > 0;
    }
  }

  /** Walks what these values are made from, and has them in the list as well. */
  public void from(Iterable<? extends Traced> values) {
    values.forEach(value -> node(value, value));
  }

  private Node node(Traced value, Traced from) {
    Node known = nodes.get(value);
    if (known != null) {
      return known;
    }
    Node node = new Node(value, from);
    nodes.put(value, node);
    for (Traced operand : operands(value)) {
      node(operand, from).uses++;
    }
    inOrder.add(node);
    return node;
  }

  private List<Traced> operands(Traced value) {
    boolean isKnown =
        value.step().solution().filter(each -> asked.merge(each, 1, Integer::sum) > 2).isPresent();
    return isKnown ? List.of() : value.step().operands();
  }

  /** Each after those that it is made from. */
  List<Node> nodes() {
    return inOrder;
  }

  /** How many others a value is an operand of. */
  public int uses(Traced value) {
    Node node = nodes.get(value);
    return node == null ? 0 : node.uses();
  }

  /** Whether a value is among them. */
  boolean has(Traced value) {
    return nodes.containsKey(value);
  }

  /** Every solution that anything here depends on. */
  public Set<Solution> solutions() {
    Set<Solution> found = new LinkedHashSet<>();
    for (Node node : inOrder) {
      node.value().step().solution().ifPresent(found::add);
    }
    return found;
  }
}
