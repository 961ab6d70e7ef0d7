package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Whether every name still stands for the cells that it was written for. */
final class NamesKept {

  private final Reading was;
  private final Reading now;
  private final Tabs tabs;
  private final Map<String, Alignment> lines;

  NamesKept(Reading was, Reading now, Tabs tabs, Map<String, Alignment> lines) {
    this.was = was;
    this.now = now;
    this.tabs = tabs;
    this.lines = lines;
  }

  /** What is not as it was. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    Map<String, String> there = new HashMap<>();
    now.names().forEach((name, formula) -> there.put(name.toLowerCase(Locale.ROOT), name));
    was.names()
        .forEach(
            (name, formula) -> {
              String stands = there.remove(name);
              if (stands == null) {
                findings.add(
                    Finding.of("", "name", name, "", "the name is gone, and what uses it"));
              } else if (!pointsAs(formula, now.names().get(stands))) {
                findings.add(
                    Finding.of(
                        "",
                        "name",
                        name + " for " + formula,
                        now.names().get(stands),
                        "the name stands for other cells"));
              }
            });
    there
        .values()
        .forEach(
            name ->
                findings.add(
                    Finding.of(
                        Verdict.NOT_OPENED,
                        "name",
                        name,
                        "no file of ours has this name; nothing is taken by it")));
    return findings;
  }

  private boolean pointsAs(String formula, String other) {
    return Spot.of(formula)
        .flatMap(
            spot ->
                Spot.of(other)
                    .map(
                        stands ->
                            stands.sheet().equals(tabs.names().get(spot.sheet()))
                                && stands.column() == spot.column()
                                && stands.lastColumn() == spot.lastColumn()
                                && pointsAs(spot, stands)))
        .orElse(FormulaText.canonical(formula, "").equals(FormulaText.canonical(other, "")));
  }

  /** Lines that are put into a list, or taken from it, move its ends; sorting does not. */
  private boolean pointsAs(Spot spot, Spot stands) {
    if (lines.get(spot.sheet()).isSorted()) {
      return stands.row() == spot.row() && stands.lastRow() == spot.lastRow();
    }
    int first = lines.get(spot.sheet()).now(spot.row());
    int last = lines.get(spot.sheet()).now(spot.lastRow());
    boolean isFirst = first < 0 || stands.row() == first;
    return isFirst && (last < 0 || stands.lastRow() == last);
  }
}
