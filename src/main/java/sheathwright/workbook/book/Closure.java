package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Roll;
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
  private final Set<Traced> placed;
  private final boolean literalsAreInputs;
  private final Map<Traced, String> argumentNames = new LinkedHashMap<>();
  private final Uses uses = new Uses();
  private final Operands operands = new Operands();
  private final Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Map<String, List<Traced>> steps = new LinkedHashMap<>();
  private final List<Traced> constants = new ArrayList<>();
  private final Set<Table> tables = new LinkedHashSet<>();
  private final Set<Roll> rolls = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<Roll> unlisted = new ArrayList<>();

  Closure(Set<Traced> placed, boolean literalsAreInputs) {
    this.placed = placed;
    this.literalsAreInputs = literalsAreInputs;
  }

  /**
   * Counts how often each value is used by those on the pages; to be done for all before any is
   * gathered.
   */
  void count(Traced root) {
    uses.count(root);
  }

  /** Gathers what one value on a page is made from, under the value's own heading. */
  void gather(String heading, Traced root) {
    for (Traced operand : operands.of(root)) {
      visit(heading, operand);
    }
    note(root);
  }

  private void visit(String heading, Traced node) {
    if (!seen.add(node)) {
      return;
    }
    nameArgument(node);
    for (Traced operand : operands.of(node)) {
      visit(heading, operand);
    }
    note(node);
    boolean isTypedWord =
        literalsAreInputs && node instanceof Choice<?> && node.isNamed() && node.step().isLiteral();
    boolean needsACell =
        isTypedWord || argumentNames.containsKey(node) || needsACell(node, uses.of(node));
    boolean isLong =
        !needsACell && literalsAreInputs && node instanceof Figure<?> && inlineLength(node) > LONG;
    lengths.put(node, needsACell || isLong ? POINTED_AT : inlineLength(node));
    if (placed.contains(node) || !(needsACell || isLong)) {
      return;
    }
    if (node.step().isGiven() && !node.step().isInput()) {
      constants.add(node);
    } else {
      steps.computeIfAbsent(heading, key -> new ArrayList<>()).add(node);
    }
  }

  /**
   * A number typed straight into a function is called after the parameter that it was typed for.
   */
  private void nameArgument(Traced node) {
    node.step()
        .guard()
        .<Traced>map(Step.Guarded::argument)
        .filter(argument -> literalsAreInputs && argument.step().isLiteral())
        .filter(argument -> !placed.contains(argument))
        .ifPresent(argument -> argumentNames.putIfAbsent(argument, node.name()));
  }

  /** About how long the formula would be that writes this step out. */
  private int inlineLength(Traced node) {
    return WRITTEN_AROUND
        + node.step().operands().stream()
            .mapToInt(
                operand -> placed.contains(operand) ? POINTED_AT : lengths.getOrDefault(operand, 0))
            .sum();
  }

  private void note(Traced node) {
    node.step().lookedUpIn().ifPresent(tables::add);
    node.step().gatheredFrom().filter(rolls::add).ifPresent(unlisted::add);
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

  List<Roll> rolls() {
    return unlisted;
  }
}
