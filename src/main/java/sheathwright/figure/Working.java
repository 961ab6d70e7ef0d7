package sheathwright.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The working of a traced value as an engineer shows it: each named step in symbols, with the
 * numbers put in, and its answer with its source.
 */
public final class Working {

  private static final int SOURCE_COLUMN = 64;
  private static final int ANY_WIDTH = Integer.MAX_VALUE;

  /** As the estimator asked for nothing more. */
  public static final Manner USUAL = new Manner(false, false);

  private Working() {}

  /**
   * How steps are written.
   *
   * @param isPlain whether the numbers put in stand without units, to be checked by hand
   * @param isUntaken whether what a choice did not take is told as well
   */
  public record Manner(boolean isPlain, boolean isUntaken) {

    private Notation numbers() {
      return isPlain ? new Plain() : Working::foldedNumber;
    }
  }

  /** Numbers without units; where a unit changes, by what it does. */
  private record Plain() implements Notation {

    private static final MathContext DIGITS = new MathContext(7);

    @Override
    public Written of(Traced operand) {
      boolean isSame = operand.step() instanceof Step.Converted made && standsAlone(made.from());
      boolean isNumber = operand instanceof Figure<?> figure && figure.refusal().isEmpty();
      return isNumber && (standsAlone(operand) || isSame)
          ? number(((Figure<?>) operand).number())
          : standsAlone(operand) || operand.step() instanceof Step.Matched
              ? Working.number(operand)
              : folded(operand, this);
    }

    @Override
    public Written converted(Step.Converted step) {
      Written from = of(step.from());
      if (step.factor().equals(Factor.ONE)) {
        return from;
      }
      String times = step.factor().over() == 1 ? "" : " × " + step.factor().over();
      String by = step.factor().under() == 1 ? "" : " ÷ " + step.factor().under();
      return new Written(from.atLeast(Written.PRODUCT) + times + by, Written.PRODUCT);
    }

    private static Written number(double number) {
      String digits = Shown.plain(BigDecimal.valueOf(number).round(DIGITS).doubleValue());
      return new Written(digits, number < 0 ? Written.SUM : Written.WHOLE);
    }
  }

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
    return of(results, "", USUAL, width);
  }

  /**
   * The same in a manner.
   *
   * @param called what a result without a name is called; empty if nothing
   */
  public static String of(List<? extends Traced> results, String called, Manner manner, int width) {
    List<String> lines = new ArrayList<>();
    for (Traced step : steps(results)) {
      lines.addAll(last(step, called, manner, width));
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

  /**
   * The last step alone: symbols, numbers, answer and source, in lines of a width.
   *
   * @param called what it is called if it has no name; empty if nothing
   */
  public static List<String> last(Traced step, String called, Manner manner, int width) {
    List<String> lines = new ArrayList<>();
    String label = step.isNamed() ? step.symbol() : called.isEmpty() ? "answer" : called;
    String indent = " ".repeat(label.length());
    if (!(step.step() instanceof Step.Given)) {
      String symbols = folded(step);
      if (!symbols.equals(step.toString())) {
        lines.addAll(wrapped(symbols, label + " = ", width));
      }
      if (step.refusal().filter(refusal -> !refusal.isAnswer()).isPresent()) {
        lines.addAll(wrapped(step.refusal().get().reason(), indent + " refused: ", width));
        return lines;
      }
      String numbers = folded(step, manner.numbers()).text();
      boolean isAnswer = folded(step, Working::foldedNumber).text().equals(step.shown());
      if (!numbers.equals(symbols) && !isAnswer) {
        lines.addAll(wrapped(numbers, indent + " = ", width));
      }
    }
    String answer = (lines.isEmpty() ? label : indent) + " = " + step;
    lines.addAll(sourced(answer, step.source(), indent + "   ", width));
    for (Step.Chosen chosen : decided(step)) {
      lines.addAll(wrapped(because(chosen.when()), indent + "   ", width));
      if (manner.isUntaken()) {
        lines.addAll(wrapped("not taken: " + untaken(chosen, manner), indent + "   ", width));
      }
    }
    return lines;
  }

  /** The branch that a choice did not take: symbols, numbers and answer, each if it says more. */
  private static String untaken(Step.Chosen chosen, Manner manner) {
    Traced other = chosen.when().holds() ? chosen.otherwise() : chosen.then();
    Set<String> said = new LinkedHashSet<>(List.of(foldedSymbol(other).text()));
    if (other.refusal().isEmpty() && !foldedNumber(other).text().equals(other.shown())) {
      said.add(manner.numbers().of(other).text());
    }
    said.add(other.toString());
    return String.join(" = ", said);
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

  /** The decided choices inside a step, each once. */
  private static List<Step.Chosen> decided(Traced step) {
    List<Step.Chosen> choices = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    decided(step, choices, seen);
    return choices;
  }

  /** Whether something was chosen in the last step of a value. */
  public static boolean isDecided(Traced step) {
    return !decided(step).isEmpty();
  }

  private static void decided(Traced node, List<Step.Chosen> choices, Set<Traced> seen) {
    if (!seen.add(node)) {
      return;
    }
    if (node.step() instanceof Step.Chosen chosen && chosen.when().refusal().isEmpty()) {
      choices.add(chosen);
    }
    taken(node).stream()
        .filter(operand -> !standsAlone(operand))
        .forEach(operand -> decided(operand, choices, seen));
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
        : symbol(operand);
  }
}
