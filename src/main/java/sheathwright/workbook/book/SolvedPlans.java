package sheathwright.workbook.book;

import java.util.Arrays;
import java.util.List;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;

/**
 * What solvers found, with copies of everything that it was found for and a live guard that
 * compares.
 */
final class SolvedPlans {

  private SolvedPlans() {}

  /** Writes a solution's inputs, as they are and as it was solved for, and its guard. */
  static void write(Book book, Tab tab, Solution solution) {
    String what = Shown.inWords(solution.name());
    tab.heading("solved: " + what);
    tab.list(
        solution.asSolved(),
        List.of("What it was solved for", "Now", "Solved for", "Changed"),
        Arrays.asList(null, Units.RATIO, Units.RATIO, Units.RATIO));
    if (!book.hasPlace(solution.state())) {
      tab.entry(what + " is", solution.state(), "");
    }
    tab.skip(1);
  }
}
