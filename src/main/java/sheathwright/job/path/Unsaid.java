package sheathwright.job.path;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.wood.Knowledge;

/**
 * Facts that a job may leave out. Whatever is left out becomes an input all the same, with a value
 * that passes nothing, so that whoever holds the workbook can say it later.
 */
public final class Unsaid {

  private static final Source NOT_SAID = Source.given("not said in job.csv");

  private final Facts said;
  private final Map<String, Traced> inputs = new LinkedHashMap<>();

  /** What a job leaves out of what is asked of it. */
  public Unsaid(Facts said) {
    this.said = said;
  }

  /** Whether the job says it. */
  boolean knows(Field<?> field) {
    return said.knows(field);
  }

  /** A fact that the job says. */
  <T extends Traced> T fact(Field<T> field) {
    return said.fact(field);
  }

  /** A number, or until it is said this one. */
  @SuppressWarnings("unchecked") // a field of figures has a unit of their quantity
  <Q extends Quantity> Figure<Q> number(Field<Figure<Q>> field, double until) {
    return knows(field)
        ? fact(field)
        : later(
            field,
            Figure.input(field.name(), until, (Unit<Q>) field.unit(), field.limits(), NOT_SAID));
  }

  /** A word, or until it is said this one. */
  public <E extends Enum<E>> Choice<E> word(Field<Choice<E>> field, E until) {
    return knows(field) ? fact(field) : later(field, Choice.input(field.name(), until, NOT_SAID));
  }

  /** Whether somebody has looked, and did not only take it to be so. */
  Condition isLookedAt(Field<Choice<Knowledge>> field) {
    Choice<Knowledge> known = word(field, Knowledge.IS_UNKNOWN);
    return Condition.any(
        known.is(Knowledge.IS_MEASURED),
        known.is(Knowledge.IS_STAMPED),
        known.is(Knowledge.IS_TOLD));
  }

  private <T extends Traced> T later(Field<T> field, T input) {
    return field.as(inputs.computeIfAbsent(field.label(), label -> input));
  }

  /** What nobody has said yet, labeled. */
  Map<String, Traced> inputs() {
    return Collections.unmodifiableMap(inputs);
  }
}
