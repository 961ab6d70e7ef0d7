package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** What points at cells that are gone: formulas, which come to nothing any more, and names. */
final class Untied {

  private record Pointing(String sheet, int row, int column, Held held, List<Spot> spots) {}

  private final Reading was;
  private final List<Pointing> pointing = new ArrayList<>();

  Untied(Reading was) {
    this.was = was;
  }

  /** Every formula that was written, read when it is first asked for: mostly nothing is gone. */
  private List<Pointing> pointing() {
    if (pointing.isEmpty()) {
      read();
    }
    return pointing;
  }

  private void read() {
    was.panes()
        .forEach(
            (tab, pane) ->
                pane.rows()
                    .forEach(
                        (row, cells) ->
                            cells.forEach(
                                (column, held) -> {
                                  if (held.isFormula()) {
                                    List<Spot> spots = References.in(held.formula(), tab);
                                    pointing.add(new Pointing(tab, row, column, held, spots));
                                  }
                                })));
  }

  /** The names that stand for nothing but gone cells. */
  Set<String> names(Predicate<Spot> isGone) {
    Set<String> names = new TreeSet<>();
    was.names()
        .forEach(
            (name, formula) -> Spot.of(formula).filter(isGone).ifPresent(gone -> names.add(name)));
    return names;
  }

  /** The formulas that stand elsewhere and point at gone cells, as programs leave them. */
  List<Change> formulas(Predicate<Spot> isGone) {
    Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    names.addAll(names(isGone));
    References.Places places =
        new References.Places() {
          @Override
          public Optional<Spot> of(Spot spot) {
            return isGone.test(spot) ? Optional.empty() : Optional.of(spot);
          }

          @Override
          public boolean isGone(String name) {
            return names.contains(name.toLowerCase(Locale.ROOT));
          }
        };
    List<Change> changes = new ArrayList<>();
    for (Pointing each : pointing()) {
      Spot own = new Spot(each.sheet(), each.row(), each.column(), each.row(), each.column());
      boolean mayPoint = !names.isEmpty() || each.spots().stream().anyMatch(isGone);
      if (mayPoint && !isGone.test(own)) {
        String now = References.moved(each.held().formula(), each.sheet(), places);
        if (!now.equals(each.held().formula())) {
          changes.add(
              new Change(
                  each.sheet(),
                  each.row(),
                  each.column(),
                  each.held(),
                  each.held().with(formula -> now)));
        }
      }
    }
    return changes;
  }
}
