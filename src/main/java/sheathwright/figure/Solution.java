package sheathwright.figure;

import java.util.List;
import java.util.Optional;

/**
 * What a solver found for certain inputs: a cut list, a layout, an area inside an outline. No cell
 * formula can express it, so its figures are written into a workbook as numbers, and a live guard
 * compares the inputs with those that it was solved for.
 */
public final class Solution {

  private final String name;
  private final List<Traced> inputs;

  private Solution(String name, List<Traced> inputs) {
    this.name = name;
    this.inputs = inputs;
  }

  /**
   * A solution that holds for these inputs only.
   *
   * @param name what was solved, in snake case: {@code deck_layout}
   * @param inputs everything that it was solved for, each once
   */
  public static Solution of(String name, List<? extends Traced> inputs) {
    return new Solution(name, inputs.stream().<Traced>map(input -> input).distinct().toList());
  }

  /** A number that was found. */
  public <Q extends Quantity> Figure<Q> figure(
      String figureName, double number, Unit<Q> unit, Source source) {
    return Figure.solved(
        figureName, number, refusal().orElse(null), unit, new Step.Solved(this), source);
  }

  /** A word that was found. */
  public Choice<String> word(String wordName, String word, Source source) {
    return new Choice<>(wordName, word, refusal().orElse(null), new Step.Solved(this), source);
  }

  /** What was solved, in snake case. */
  public String name() {
    return name;
  }

  /** What it was solved for. */
  public List<Traced> inputs() {
    return inputs;
  }

  private Optional<Refusal> refusal() {
    return inputs.stream().flatMap(input -> input.refusal().stream()).findFirst();
  }
}
