package sheathwright.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a solver found for certain inputs: a cut list, a layout, an area inside an outline. No cell
 * formula can express it, so its figures are written into a workbook as numbers. Copies of the
 * inputs are written beside them, and a live guard compares: {@code current}, or {@code solve
 * again: eave changed}.
 */
public final class Solution {

  /** What the guard says while every input is as it was solved for. */
  public static final String CURRENT = "current";

  private static final Figure<Quantity.Ratio> SAME = Figure.of(0, Units.RATIO);
  private static final Figure<Quantity.Ratio> CHANGED = Figure.of(1, Units.RATIO);

  private final String name;
  private final List<Input> inputs;
  private final List<Traced> values;
  private final Refusal refusal;
  private final Roll roll;
  private final Choice<String> state;

  /**
   * One thing that a solution was found for.
   *
   * @param label what it is called when it has changed
   * @param value the number or word itself
   */
  public record Input(String label, Traced value) {}

  private Solution(String name, List<Input> inputs) {
    this.name = name;
    this.inputs = inputs;
    this.values = inputs.stream().map(Input::value).toList();
    this.refusal =
        values.stream().flatMap(value -> value.refusal().stream()).findFirst().orElse(null);
    this.roll =
        Roll.of(
            name,
            Shown.inWords(name),
            inputs.stream()
                .filter(input -> input.value().refusal().isEmpty())
                .map(Row::of)
                .toList(),
            Roll.<Row>column("input", Row::label),
            Roll.column("now", Row::now),
            Roll.column("solved_for", Row::solvedFor),
            Roll.column("changed", Row::changed));
    this.state = state(name, roll);
  }

  /**
   * A solution that holds for these inputs only.
   *
   * @param name what was solved, in snake case: {@code deck_layout}
   * @param inputs everything that it was solved for; one that appears twice counts once. Where one
   *     of them was itself found by solving, whether that still holds counts as well
   */
  public static Solution of(String name, List<Input> inputs) {
    List<Input> once = new ArrayList<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Input input : inputs) {
      boolean isConstant =
          input.value().step() instanceof Step.Given given
              && given.role() == Step.Given.Role.CONSTANT;
      if (!isConstant && seen.add(input.value())) {
        once.add(input);
      }
    }
    for (Solution before : before(once)) {
      once.add(new Input(Shown.inWords(before.name), before.state));
    }
    return new Solution(name, List.copyOf(once));
  }

  /** The solutions that these inputs were themselves found by, or made from. */
  private static Set<Solution> before(List<Input> inputs) {
    Set<Solution> found = new LinkedHashSet<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> next = new ArrayDeque<>();
    inputs.forEach(input -> next.add(input.value()));
    while (!next.isEmpty()) {
      Traced node = next.remove();
      if (node.step() instanceof Step.Solved solved) {
        found.add(solved.solution());
      } else if (seen.add(node)) {
        next.addAll(node.step().operands());
      }
    }
    return found;
  }

  /** What a value was found by, if it was found and not computed. */
  public static Optional<Solution> behind(Traced value) {
    return value.step() instanceof Step.Solved solved
        ? Optional.of(solved.solution())
        : Optional.empty();
  }

  /** A number that was found. */
  public <Q extends Quantity> Figure<Q> figure(
      String figureName, double number, Unit<Q> unit, Source source) {
    return Figure.solved(figureName, number, refusal, unit, new Step.Solved(this), source);
  }

  /** A word that was found. */
  public Choice<String> word(String wordName, String word, Source source) {
    return new Choice<>(wordName, word, refusal, new Step.Solved(this), source);
  }

  /** What was solved, in snake case. */
  public String name() {
    return name;
  }

  /** What it was solved for. */
  public List<Traced> inputs() {
    return values;
  }

  /** The inputs as they are now beside those that it was solved for. */
  public Roll asSolved() {
    return roll;
  }

  /** The guard: current, or which input changed first. */
  public Choice<String> state() {
    return state;
  }

  private static Choice<String> state(String name, Roll roll) {
    Figure<Quantity.Ratio> changes =
        roll.sum("changed", Units.RATIO).as(name + "_inputs_changed", Units.RATIO);
    return Choice.choose(
            changes.isAtMost(SAME),
            Choice.literal(CURRENT),
            Choice.firstMarked(roll, "changed", "input", "solve again: ", " changed"))
        .as(name + "_state", Source.ARITHMETIC);
  }

  /** One input, held against its copy. */
  private record Row(
      Choice<String> label, Traced now, Traced solvedFor, Figure<Quantity.Ratio> changed) {

    static Row of(Input input) {
      Choice<String> label = Choice.literal(input.label());
      return input.value() instanceof Figure<?> figure
          ? of(label, figure)
          : of(label, (Choice<?>) input.value());
    }

    private static <Q extends Quantity> Row of(Choice<String> label, Figure<Q> figure) {
      Figure<Q> now = figure.same();
      Figure<Q> copy = Figure.constant("", figure.value(), figure.unit(), Source.ARITHMETIC);
      return new Row(label, now, copy, Figure.choose(now.isTheSameAs(copy), SAME, CHANGED));
    }

    private static <E> Row of(Choice<String> label, Choice<E> choice) {
      Choice<String> copy = Choice.literal(choice.plain());
      Condition isSame = choice.isTheSameAs(copy);
      return new Row(
          label,
          Choice.choose(isSame, copy, Choice.literal("another")),
          copy,
          Figure.choose(isSame, SAME, CHANGED));
    }
  }
}
