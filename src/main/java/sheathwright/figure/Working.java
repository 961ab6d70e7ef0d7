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
  private static final int ANY_WIDTH = Integer.MAX_VALUE;

  private Working() {}

  /** The working, a step after the steps it needs, without a line break at the end. */
  public static String of(Traced result) {
    return of(List.of(result));
  }

  /** The working of several values, each step once. */
  public static String of(List<? extends Traced> results) {
    return of(results, ANY_WIDTH);
  }

  /** The working of several values, each step once, in lines of a width. */
  public static String of(List<? extends Traced> results, int width) {
    List<String> lines = new ArrayList<>();
    for (Traced step : steps(results)) {
      lines.addAll(linesOf(step, width));
    }
    return String.join("\n", lines);
  }

  /** How many named steps there are behind these values, their own included. */
  public static int count(List<? extends Traced> results) {
    return steps(results).size();
  }

  private static List<Traced> steps(List<? extends Traced> results) {
    List<Traced> steps = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    results.forEach(result -> collect(result, steps, seen, true));
    return steps;
  }

  /** The last step alone: symbols, numbers, answer and source, in lines of a width. */
  public static List<String> last(Traced result, int width) {
    return linesOf(result, width);
  }

  /** What the last step is made from: the named values that its formula mentions, each once. */
  public static List<Traced> inputs(Traced result) {
    List<Traced> inputs = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    taken(result).forEach(operand -> mentioned(operand, inputs, seen));
    return inputs;
  }

  private static void mentioned(Traced node, List<Traced> inputs, Set<Traced> seen) {
    if (!seen.add(node)) {
      return;
    }
    if (node.isNamed()) {
      inputs.add(node);
    } else {
      taken(node).forEach(operand -> mentioned(operand, inputs, seen));
    }
  }

  /** The formula of one step in symbols: {@code ⌈deck area × (1 + waste) ÷ sheet area⌉}. */
  public static String symbols(Traced step) {
    return step.step() instanceof Step.Given ? "" : step.step().words(Working::symbol).text();
  }

  /** The formula of one step as it was taken, without the branches that were not. */
  public static String folded(Traced step) {
    return folded(step, Working::foldedSymbol).text();
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
      return List.of(chosen.when(), branch(chosen));
    }
    return node.step() instanceof Step.Gathered ? List.of() : node.step().operands();
  }

  private static List<String> linesOf(Traced step, int width) {
    List<String> lines = new ArrayList<>();
    String label = step.isNamed() ? step.symbol() : "answer";
    String indent = " ".repeat(label.length());
    if (!(step.step() instanceof Step.Given)) {
      String symbols = folded(step);
      if (step.refusal().isPresent() || !symbols.equals(step.shown())) {
        lines.addAll(wrapped(symbols, label + " = ", width));
      }
      if (step.refusal().filter(refusal -> !refusal.isAnswer()).isPresent()) {
        lines.addAll(wrapped(step.refusal().get().reason(), indent + " refused: ", width));
        return lines;
      }
      String numbers = folded(step, Working::foldedNumber).text();
      if (!numbers.equals(symbols) && !numbers.equals(step.shown())) {
        lines.addAll(wrapped(numbers, indent + " = ", width));
      }
    }
    String answer = (lines.isEmpty() ? label : indent) + " = " + step;
    lines.addAll(sourced(answer, step.source(), indent + "   ", width));
    for (Condition condition : decided(step)) {
      lines.addAll(wrapped(because(condition), indent + "   ", width));
    }
    return lines;
  }

  /** An answer with its source behind it, or below it where there is no room. */
  private static List<String> sourced(String answer, Source from, String indent, int width) {
    String source = from.equals(Source.ARITHMETIC) ? "" : from.toString();
    if (source.isEmpty()) {
      return List.of(answer);
    }
    int free = Math.min(SOURCE_COLUMN, width - source.length()) - answer.length();
    if (free >= 2 || width == ANY_WIDTH) {
      return List.of(answer + " ".repeat(Math.max(2, free)) + source);
    }
    List<String> lines = new ArrayList<>(List.of(answer));
    lines.addAll(wrapped(source, indent, width));
    return lines;
  }

  private static List<String> wrapped(String text, String head, int width) {
    return Shown.wrapped(text, width, head, " ".repeat(head.length() + 2));
  }

  /** The step as it was taken: of a choice that is decided only the one branch. */
  private static Written folded(Traced node, Notation notation) {
    return node.step() instanceof Step.Chosen chosen && chosen.when().refusal().isEmpty()
        ? notation.of(branch(chosen))
        : node.step().words(notation);
  }

  private static Traced branch(Step.Chosen chosen) {
    return chosen.when().holds() ? chosen.then() : chosen.otherwise();
  }

  private static Written foldedSymbol(Traced operand) {
    return standsAlone(operand)
        ? Written.whole(operand.symbol())
        : folded(operand, Working::foldedSymbol);
  }

  private static Written foldedNumber(Traced operand) {
    return standsAlone(operand) || operand.step() instanceof Step.Matched
        ? number(operand)
        : folded(operand, Working::foldedNumber);
  }

  /** What decided the choices inside a step, each once. */
  private static List<Condition> decided(Traced step) {
    List<Condition> conditions = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    decided(step, conditions, seen);
    return conditions;
  }

  private static void decided(Traced node, List<Condition> conditions, Set<Traced> seen) {
    if (!seen.add(node)) {
      return;
    }
    if (node.step() instanceof Step.Chosen chosen && chosen.when().refusal().isEmpty()) {
      conditions.add(chosen.when());
    }
    taken(node).stream()
        .filter(operand -> !standsAlone(operand))
        .forEach(operand -> decided(operand, conditions, seen));
  }

  private static String because(Condition condition) {
    String symbols = foldedSymbol(condition).text();
    String numbers = foldedNumber(condition).text();
    return "%s%s%s: the other branch is not taken"
        .formatted(
            condition.holds() ? "since " : "since it is not so that ",
            symbols,
            numbers.equals(symbols) ? "" : " (" + numbers + ")");
  }

  /** A number under a power is bracketed if its unit or sign would seem to be raised instead. */
  private static Written value(Traced operand) {
    String shown = operand.shown();
    boolean isBare = shown.chars().allMatch(each -> Character.isDigit(each) || each == '.');
    return new Written(shown, isBare ? Written.WHOLE : Written.POWER);
  }

  private static boolean standsAlone(Traced operand) {
    return operand.isNamed() || operand.step() instanceof Step.Given;
  }

  static Written symbol(Traced operand) {
    return standsAlone(operand)
        ? Written.whole(operand.symbol())
        : operand.step().words(Working::symbol);
  }

  private static Written number(Traced operand) {
    return standsAlone(operand)
        ? operand.refusal().isPresent() ? Written.whole(operand.symbol()) : value(operand)
        : operand.step() instanceof Step.Matched
            ? symbol(operand)
            : operand.step().words(Working::number);
  }
}
