package sheathwright.figure;

import java.util.List;
import java.util.Optional;

/** A truth that remembers what was compared. */
public final class Condition implements Traced {

  private final boolean holds;
  private final Refusal refusal;
  private final Step step;

  /** Its refusal is always that of a value which it is made from. */
  Condition(boolean holds, Refusal refusal, Step step) {
    this.holds = holds;
    this.step = step;
    this.refusal = refusal;
  }

  static Condition compared(Comparison how, Figure<?> left, Figure<?> right) {
    Refusal refusal = left.refusal().or(right::refusal).map(Refusal::passedOn).orElse(null);
    boolean holds = refusal == null && how.holds(left.number(), right.number());
    return new Condition(holds, refusal, new Step.Compared(how, left, right));
  }

  static Condition measured(Figure<?> figure) {
    Refusal refusal = figure.isAbsent() ? null : figure.refusal().orElse(null);
    return new Condition(!figure.isAbsent(), refusal, new Step.Measured(figure));
  }

  /** Whether every one of them holds. */
  public static Condition all(Condition... conditions) {
    List<Condition> list = List.of(conditions);
    return new Condition(
        list.stream().allMatch(condition -> condition.holds),
        firstRefusal(list),
        new Step.Joined(true, list));
  }

  /** Whether at least one of them holds. */
  public static Condition any(Condition... conditions) {
    List<Condition> list = List.of(conditions);
    return new Condition(
        list.stream().anyMatch(condition -> condition.holds),
        firstRefusal(list),
        new Step.Joined(false, list));
  }

  private static Refusal firstRefusal(List<Condition> conditions) {
    return conditions.stream()
        .map(condition -> condition.refusal)
        .filter(java.util.Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** As a word for a cell, under a name. */
  public Choice<YesNo> as(String newName) {
    return Choice.choose(this, YesNo.YES, YesNo.NO).as(newName);
  }

  /** Whether it holds; raises its refusal if that cannot be said. */
  public boolean holds() {
    if (refusal != null) {
      throw refusal.raised();
    }
    return holds;
  }

  @Override
  public String name() {
    return "";
  }

  @Override
  public String symbol() {
    return "";
  }

  @Override
  public Step step() {
    return step;
  }

  @Override
  public Source source() {
    return Source.ARITHMETIC;
  }

  @Override
  public Optional<Refusal> refusal() {
    return Optional.ofNullable(refusal);
  }

  @Override
  public String shown() {
    return holds() ? "yes" : "no";
  }

  @Override
  public String plain() {
    return shown();
  }

  @Override
  public String toString() {
    return refusal == null ? shown() : "refused: " + refusal.reason();
  }

  /** How two numbers are compared; each to the 15 digits that a spreadsheet holds. */
  enum Comparison {
    AT_MOST("≤", "<=") {
      @Override
      boolean holds(int order) {
        return order <= 0;
      }
    },
    LESS_THAN("<", "<") {
      @Override
      boolean holds(int order) {
        return order < 0;
      }
    },
    AT_LEAST("≥", ">=") {
      @Override
      boolean holds(int order) {
        return order >= 0;
      }
    },
    MORE_THAN(">", ">") {
      @Override
      boolean holds(int order) {
        return order > 0;
      }
    },
    EQUAL_TO("=", "=") {
      @Override
      boolean holds(int order) {
        return order == 0;
      }
    };

    private final String words;
    private final String cell;

    Comparison(String words, String cell) {
      this.words = words;
      this.cell = cell;
    }

    abstract boolean holds(int order);

    String words() {
      return words;
    }

    String cell() {
      return cell;
    }

    boolean holds(double left, double right) {
      return holds(Double.compare(Rounding.toFifteenDigits(left), Rounding.toFifteenDigits(right)));
    }
  }
}
