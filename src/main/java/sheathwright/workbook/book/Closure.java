package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Step;
import sheathwright.figure.Table;
import sheathwright.figure.Traced;

/**
 * Everything that the values on the pages are made from and that needs a cell of its own: named
 * steps, guarded arguments, steps used more than once, and every number that is not plain enough to
 * be written into a formula.
 */
public final class Closure {

  /**
   * A user's own expression may be of any length; a formula that is longer than this is cut into
   * steps.
   */
  private static final int LONG = 70;

  private static final int POINTED_AT = 24;
  private static final int WRITTEN_AROUND = 8;

  private final Map<Traced, Integer> lengths = new IdentityHashMap<>();
  private final Predicate<Traced> isPlaced;
  private final boolean literalsAreInputs;
  private final Map<Traced, String> argumentNames = new LinkedHashMap<>();
  private final Map<String, List<Traced>> steps = new LinkedHashMap<>();
  private final List<Traced> constants = new ArrayList<>();
  private final Set<Table> tables = new LinkedHashSet<>();

  private Closure(Predicate<Traced> isPlaced, boolean literalsAreInputs) {
    this.isPlaced = isPlaced;
    this.literalsAreInputs = literalsAreInputs;
  }

  /**
   * What needs a cell of everything that the values on the pages are made from.
   *
   * @param isPlaced whether a value has its place on a page
   */
  static Closure of(Reached reached, Predicate<Traced> isPlaced, boolean literalsAreInputs) {
    Closure closure = new Closure(isPlaced, literalsAreInputs);
    List<Reached.Node> nodes = reached.nodes();
    if (literalsAreInputs) {
      nodes.stream().filter(Reached.Node::isOperand).forEach(closure::nameArgument);
    }
    nodes.forEach(closure::look);
    return closure;
  }

  private void look(Reached.Node node) {
    node.value().step().lookedUpIn().ifPresent(tables::add);
    if (node.isOperand()) {
      gather(node);
    }
  }

  private static String heading(Traced root) {
    return root.isNamed() ? Shown.inWords(root.name()) : "lists";
  }

  /**
   * Gathers a value that others are made from, under the heading of what it is first needed for.
   */
  private void gather(Reached.Node node) {
    Traced value = node.value();
    boolean needsACell = needsACell(value, node.uses());
    if (literalsAreInputs) {
      boolean isTypedWord =
          value instanceof Choice<?> && value.isNamed() && value.step().isLiteral();
      needsACell |= isTypedWord || argumentNames.containsKey(value);
      int length = inlineLength(value);
      needsACell |= value instanceof Figure<?> && length > LONG;
      lengths.put(value, needsACell ? POINTED_AT : length);
    }
    if (!needsACell || isPlaced.test(value)) {
      return;
    }
    if (value.step().isGiven() && !value.step().isInput()) {
      constants.add(value);
    } else {
      steps.computeIfAbsent(heading(node.from()), key -> new ArrayList<>()).add(value);
    }
  }

  /**
   * A number typed straight into a function is called after the parameter that it was typed for.
   */
  private void nameArgument(Reached.Node node) {
    node.value()
        .step()
        .guard()
        .<Traced>map(Step.Guarded::argument)
        .filter(argument -> argument.step().isLiteral() && !isPlaced.test(argument))
        .ifPresent(argument -> argumentNames.putIfAbsent(argument, node.value().name()));
  }

  /** About how long the formula would be that writes this step out. */
  private int inlineLength(Traced node) {
    return WRITTEN_AROUND
        + node.step().operands().stream()
            .mapToInt(
                operand -> isPlaced.test(operand) ? POINTED_AT : lengths.getOrDefault(operand, 0))
            .sum();
  }

  /** Whether a value is pointed at, and not written into the formulas that use it. */
  public static boolean needsACell(Traced node, int uses) {
    if (CellNotation.isWrittenOut(node)) {
      return false;
    }
    boolean isGiven = node.step().isValueOnly();
    boolean isGuarded = node.step().guard().isPresent();
    boolean isReused = uses > 1 && node instanceof Figure<?> && !node.step().isConversion();
    return isGiven || isGuarded || isReused || node.isNamed();
  }

  /** Steps under the heading of the value that first needs them. */
  Map<String, List<Traced>> steps() {
    return steps;
  }

  Map<Traced, String> argumentNames() {
    return argumentNames;
  }

  List<Traced> constants() {
    return constants;
  }

  Set<Table> tables() {
    return tables;
  }
}
