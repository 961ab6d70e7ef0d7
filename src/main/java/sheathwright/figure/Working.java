package sheathwright.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * The working of a traced value as an engineer shows it: each named step in symbols, with the
 * numbers put in, and its answer with its source.
 */
public final class Working {

  private static final int SOURCE_COLUMN = 64;

  private Working() {}

  /** The working, a step after the steps it needs, without a line break at the end. */
  public static String of(Traced result) {
    return of(List.of(result));
  }

  /** The working of several values, each step once. */
  public static String of(List<? extends Traced> results) {
    List<Traced> steps = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    results.forEach(result -> collect(result, steps, seen, true));
    List<String> lines = new ArrayList<>();
    for (Traced step : steps) {
      lines.addAll(linesOf(step));
    }
    return String.join("\n", lines);
  }

  /** The formula of one step in symbols: {@code ⌈deck area × (1 + waste) ÷ sheet area⌉}. */
  public static String symbols(Traced step) {
    return step.step() instanceof Step.Given ? "" : step.step().words(Working::symbol).text();
  }

  private static void collect(Traced node, List<Traced> steps, Set<Traced> seen, boolean root) {
    if (!seen.add(node)) {
      return;
    }
    for (Traced operand : taken(node)) {
      collect(operand, steps, seen, false);
    }
    boolean silent = node.step() instanceof Step.Given || node.step() instanceof Step.Guarded;
    if (root || node.isNamed() && !silent) {
      steps.add(node);
    }
  }

  private static List<Traced> taken(Traced node) {
    if (node.step() instanceof Step.Chosen chosen && chosen.when().refusal().isEmpty()) {
      return List.of(chosen.when(), chosen.when().holds() ? chosen.then() : chosen.otherwise());
    }
    return node.step() instanceof Step.Gathered ? List.of() : node.step().operands();
  }

  private static List<String> linesOf(Traced step) {
    List<String> lines = new ArrayList<>();
    String label = step.isNamed() ? step.symbol() : "answer";
    String indent = " ".repeat(label.length());
    if (!(step.step() instanceof Step.Given)) {
      String symbols = symbols(step);
      lines.add(label + " = " + symbols);
      if (step.refusal().filter(refusal -> !refusal.isAnswer()).isPresent()) {
        lines.add(indent + " refused: " + step.refusal().get().reason());
        return lines;
      }
      String numbers = step.step().words(Working::number).text();
      if (!numbers.equals(symbols) && !numbers.equals(step.shown())) {
        lines.add(indent + " = " + numbers);
      }
    }
    String answer = (lines.isEmpty() ? label : indent) + " = " + step;
    String source = step.source().equals(Source.ARITHMETIC) ? "" : step.source().toString();
    lines.add(
        source.isEmpty()
            ? answer
            : answer + " ".repeat(Math.max(2, SOURCE_COLUMN - answer.length())) + source);
    return lines;
  }

  /** A number under a power is bracketed if its unit or sign would seem to be raised instead. */
  private static Written value(Traced operand) {
    String shown = operand.shown();
    boolean isBare = shown.chars().allMatch(each -> Character.isDigit(each) || each == '.');
    return new Written(shown, isBare ? Written.WHOLE : Written.POWER);
  }

  static Written symbol(Traced operand) {
    boolean standsAlone = operand.isNamed() || operand.step() instanceof Step.Given;
    return standsAlone ? Written.whole(operand.symbol()) : operand.step().words(Working::symbol);
  }

  private static Written number(Traced operand) {
    boolean standsAlone = operand.isNamed() || operand.step() instanceof Step.Given;
    return standsAlone
        ? operand.refusal().isPresent() ? Written.whole(operand.symbol()) : value(operand)
        : operand.step() instanceof Step.Matched
            ? symbol(operand)
            : operand.step().words(Working::number);
  }
}
