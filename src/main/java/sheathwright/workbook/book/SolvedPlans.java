package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;

/**
 * What solvers found, with copies of everything that it was found for and a live guard that
 * compares.
 */
public final class SolvedPlans {

  private final Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Operands operands = new Operands();
  private final Set<Solution> found = new LinkedHashSet<>();

  private SolvedPlans() {}

  /** Every solution that anything on the pages depends on. */
  public static List<Solution> in(Collection<Traced> roots, List<Listing> listings) {
    SolvedPlans plans = new SolvedPlans();
    roots.forEach(plans::visit);
    listings.forEach(listing -> listing.roll().rows().forEach(row -> row.forEach(plans::visit)));
    return new ArrayList<>(plans.found);
  }

  private void visit(Traced node) {
    if (!seen.add(node)) {
      return;
    }
    operands.of(node).forEach(this::visit);
    node.step().solution().ifPresent(found::add);
  }

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
