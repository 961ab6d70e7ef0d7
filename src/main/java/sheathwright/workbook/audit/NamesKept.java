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
  private final Standing standing;

  NamesKept(Reading was, Reading now, Tabs tabs, Standing standing) {
    this.was = was;
    this.now = now;
    this.tabs = tabs;
    this.standing = standing;
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
              if (isGone(formula)) {
                return;
              }
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
        .flatMap(spot -> Spot.of(other).map(stands -> pointsAs(spot, stands)))
        .orElse(FormulaText.canonical(formula, "").equals(FormulaText.canonical(other, "")));
  }

  private boolean pointsAs(Spot spot, Spot stands) {
    return stands.sheet().equals(tabs.names().get(spot.sheet()))
        && standing
            .of(spot)
            .filter(
                now ->
                    new Spot(
                            stands.sheet(),
                            now.row(),
                            now.column(),
                            now.lastRow(),
                            now.lastColumn())
                        .equals(stands))
            .isPresent();
  }

  /** What stood for cells that are gone is told with them. */
  private boolean isGone(String formula) {
    return Spot.of(formula)
        .filter(spot -> tabs.names().containsKey(spot.sheet()) && standing.of(spot).isEmpty())
        .isPresent();
  }
}
