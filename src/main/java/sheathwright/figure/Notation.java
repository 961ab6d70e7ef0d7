package sheathwright.figure;

/**
 * One way of writing the operands of a step: as symbols, as numbers put in, or as cell references.
 */
public interface Notation {

  /** One operand. */
  Written of(Traced operand);

  /** A quantity put into another unit: silent where every number shows its unit. */
  default Written converted(Step.Converted step) {
    return of(step.from());
  }

  /** The cells of one column of a list. */
  default String range(Roll roll, String column) {
    return roll.range(column);
  }

  /** The cell that holds the least value that a guard lets through. */
  default String least(Step.Guarded guard) {
    return Shown.plain(guard.limits().least());
  }

  /** The cell that holds the greatest value that a guard lets through. */
  default String most(Step.Guarded guard) {
    return Shown.plain(guard.limits().most());
  }
}
