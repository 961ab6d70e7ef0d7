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
 * inputs that a {@link Reading} read for it are written beside them, and a live guard compares:
 * {@code current}, or {@code solve again: eave changed}.
 */
public final class Solution {

  /** What the guard says while every input is as it was solved for. */
  public static final String CURRENT = "current";

  private static final Figure<Quantity.Ratio> SAME = Figure.of(0, Units.RATIO);
  private static final Figure<Quantity.Ratio> CHANGED = Figure.of(1, Units.RATIO);

  private final String name;
  private final List<Input> inputs;
  private final Set<Traced> read = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Roll roll;
  private final Choice<String> state;

  /**
   * One thing that a solution was found for.
   *
   * @param label what it is called when it has changed
   * @param value the number or word itself
   */
  record Input(String label, Traced value) {}

  Solution(String name, List<Input> read) {
    this.name = name;
    this.inputs = new ArrayList<>(read);
    for (Solution before : before(read)) {
      inputs.add(new Input(Shown.inWords(before.name), before.state));
    }
    inputs.forEach(input -> this.read.add(input.value()));
    this.roll =
        Roll.of(
            name,
            Shown.inWords(name),
            inputs.stream().map(Row::of).toList(),
            Roll.<Row>column("input", Row::label),
            Roll.column("now", Row::now),
            Roll.column("solved_for", Row::solvedFor),
            Roll.column("changed", Row::changed));
    this.state = state(name, roll);
  }

  /** The solutions that these inputs were themselves found by, or made from. */
  private static Set<Solution> before(List<Input> inputs) {
    Set<Solution> found = new LinkedHashSet<>();
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> next = new ArrayDeque<>();
    inputs.forEach(input -> next.add(input.value()));
    while (!next.isEmpty()) {
      Traced node = next.remove();
      Optional<Solution> behind = behind(node);
      behind.ifPresent(found::add);
      if (behind.isEmpty() && seen.add(node)) {
        next.addAll(node.step().operands());
      }
    }
    return found;
  }

  /** What a value was found by, if it was found and not computed. */
  public static Optional<Solution> behind(Traced value) {
    return value.step().solution();
  }

  /** A number that was found. */
  public <Q extends Quantity> Figure<Q> figure(
      String figureName, double number, Unit<Q> unit, Source source) {
    return Figure.solved(figureName, number, unit, new Step.Solved(this), source);
  }

  /** A word that was found. */
  public Choice<String> word(String wordName, String word, Source source) {
    return new Choice<>(wordName, word, null, new Step.Solved(this), source);
  }

  /**
   * A word that follows live from what was found, as it is now, where more is found by it.
   *
   * @throws IllegalStateException if it also follows from an input that was not read
   */
  public <E> E following(Choice<E> word) {
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> next = new ArrayDeque<>(List.of(word));
    while (!next.isEmpty()) {
      Traced node = next.remove();
      if (read.contains(node)) {
        continue;
      }
      if (node.step().isInput()) {
        throw new IllegalStateException(node.name() + " was not read for " + name);
      }
      if (seen.add(node)) {
        next.addAll(node.step().operands());
      }
    }
    return word.value();
  }

  /** What was solved, in snake case. */
  public String name() {
    return name;
  }

  /** What it was solved for. */
  public List<Traced> inputs() {
    return inputs.stream().map(Input::value).toList();
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
