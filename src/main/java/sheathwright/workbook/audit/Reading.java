package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sheathwright.job.file.Manifest;

/**
 * A workbook as it was read, from its cells or from its manifest.
 *
 * @param panes its tabs by name, in their order
 * @param names what each name of a cell or a range stands for
 * @param foreign what no file of ours holds
 * @param isForOffice whether it is the office's own, where that is known
 */
record Reading(
    Map<String, Pane> panes,
    Map<String, String> names,
    List<Finding> foreign,
    Optional<Boolean> isForOffice) {

  Reading(Optional<Boolean> isForOffice) {
    this(new LinkedHashMap<>(), new LinkedHashMap<>(), new ArrayList<>(), isForOffice);
  }

  /** What this tells, and of what it is silent about, such as an office's letterhead, the whole. */
  Reading within(Reading whole) {
    Reading all = new Reading(isForOffice);
    whole.panes().forEach((tab, pane) -> all.panes().put(tab, panes.getOrDefault(tab, pane)));
    all.names().putAll(whole.names());
    all.names().putAll(names);
    all.foreign().addAll(whole.foreign());
    return all;
  }

  /** The same with its cells elsewhere, and what points at them. */
  Reading moved(UnaryOperator<Pane> cells, References.Places places) {
    Reading moved = new Reading(isForOffice);
    panes.forEach(
        (tab, pane) ->
            moved
                .panes()
                .put(
                    tab,
                    cells.apply(pane).with(formula -> References.moved(formula, tab, places))));
    names.forEach(
        (name, formula) -> moved.names().put(name, References.moved(formula, "", places)));
    moved.foreign().addAll(foreign);
    return moved;
  }

  /** The cell that a name stands for, if it stands for one and that is there. */
  Optional<Held> named(String name) {
    return Optional.ofNullable(names.get(name))
        .flatMap(Spot::of)
        .filter(spot -> panes.containsKey(spot.sheet()))
        .map(spot -> panes.get(spot.sheet()).at(spot.row(), spot.column()));
  }

  /** Which document it is; empty for one that never went out. */
  String document() {
    return named(Manifest.DOCUMENT).map(Held::value).orElse("");
  }
}
