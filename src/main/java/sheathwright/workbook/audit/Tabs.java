package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which tab is which: those that were written, each under the name that it has now. */
final class Tabs {

  private final Map<String, String> names = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  Tabs(Reading was, Reading now) {
    match(was, now);
  }

  /** The tabs that are still there, by their names as they were. */
  Map<String, String> names() {
    return names;
  }

  /** Tabs that are gone, new, called something else or put elsewhere. */
  List<Finding> findings() {
    return findings;
  }

  private void match(Reading was, Reading now) {
    List<String> left = new ArrayList<>(now.panes().keySet());
    left.removeAll(was.panes().keySet());
    for (Pane pane : was.panes().values()) {
      if (now.panes().containsKey(pane.name())) {
        names.put(pane.name(), pane.name());
        continue;
      }
      String renamed =
          left.stream().filter(name -> isLike(pane, now.panes().get(name))).findFirst().orElse("");
      if (renamed.isEmpty()) {
        findings.add(
            Finding.of(
                pane.name(), "tab", pane.name(), "", "the tab is gone" + untied(was, pane.name())));
      } else {
        left.remove(renamed);
        names.put(pane.name(), renamed);
        findings.add(
            Finding.of(pane.name(), "tab", pane.name(), renamed, "the tab has another name"));
      }
    }
    left.forEach(
        name -> findings.add(Finding.of(name, "tab", "", name, "no tab of ours has this name")));
    List<String> order = new ArrayList<>(now.panes().keySet());
    order.retainAll(names.values());
    if (!order.equals(List.copyOf(names.values()))) {
      findings.add(
          Finding.of(
              "",
              "tab",
              String.join(", ", names.values()),
              String.join(", ", order),
              "the tabs stand in another order"));
    }
  }

  private static String untied(Reading was, String tab) {
    long untied =
        was.names().values().stream()
            .flatMap(formula -> Spot.of(formula).stream())
            .filter(spot -> spot.sheet().equals(tab))
            .count();
    return untied == 0 ? "" : "; nothing ties any more that uses its %s names".formatted(untied);
  }

  /** Whether most of one tab's cells stand in another. */
  private static boolean isLike(Pane pane, Pane other) {
    int all = 0;
    int same = 0;
    for (var row : pane.rows().entrySet()) {
      for (var cell : row.getValue().entrySet()) {
        all++;
        same += cell.getValue().saysTheSameAs(other.at(row.getKey(), cell.getKey())) ? 1 : 0;
      }
    }
    return 2 * same > all;
  }

  /** A tab as it was written, in whatever capitals. */
  String written(String tab) {
    return names.keySet().stream().filter(tab::equalsIgnoreCase).findFirst().orElse(tab);
  }

  /** A formula with the tabs' names as they were. */
  String asWritten(String formula) {
    String text = formula;
    for (Map.Entry<String, String> tab : names.entrySet()) {
      if (!tab.getKey().equals(tab.getValue())) {
        text =
            text.replace("'" + tab.getValue() + "'!", "'" + tab.getKey() + "'!")
                .replace(tab.getValue() + "!", "'" + tab.getKey() + "'!");
      }
    }
    return text;
  }
}
