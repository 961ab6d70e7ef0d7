package sheathwright.job.solve;

import sheathwright.figure.Traced;
import sheathwright.job.table.Field;

/**
 * One option of a solver.
 *
 * @param <T> what is read: a figure of some quantity, or a choice
 * @param field its name, and what may be typed
 * @param preset what is meant where nothing is typed; a blank where there is nothing to mean
 */
record SolverOption<T extends Traced>(Field<T> field, String preset) {

  String name() {
    return field.name();
  }
}
