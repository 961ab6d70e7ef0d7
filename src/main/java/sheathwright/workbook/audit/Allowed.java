package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import sheathwright.figure.Shown;

/** What each input takes, as it was written beside the cells. */
final class Allowed {

  private final Reading was;

  Allowed(Reading was) {
    this.was = was;
  }

  private Optional<Pane.Rule> rule(Change change) {
    Pane pane = was.panes().get(change.sheet());
    return pane.rules().stream()
        .filter(
            rule ->
                Arrays.stream(rule.cells().split(" "))
                    .map(CellRangeAddress::valueOf)
                    .anyMatch(cells -> cells.isInRange(change.row(), change.column())))
        .findFirst();
  }

  /** Whether an input takes one of some words. */
  boolean isChoice(Change change) {
    return rule(change).filter(rule -> rule.type().equals("list")).isPresent();
  }

  /** What an input takes, if it was given something else; empty if all is well. */
  String broken(Change change) {
    Held now = change.now();
    Optional<Pane.Rule> rule = rule(change);
    if (now.isEmpty()) {
      return "";
    }
    if (rule.isEmpty() || rule.get().isHelpAlone()) {
      boolean wasNumber = change.was().isNumber();
      return wasNumber && !now.isNumber() ? "a number" : "";
    }
    if (rule.get().type().equals("list")) {
      List<String> words = words(rule.get().first());
      return words.isEmpty() || words.contains(now.said())
          ? ""
          : "one of " + String.join(", ", words);
    }
    double least = Double.parseDouble(rule.get().first());
    double most = Double.parseDouble(rule.get().second());
    boolean isWhole = rule.get().type().equals("whole");
    boolean isIn =
        now.isNumber()
            && now.number() >= least
            && now.number() <= most
            && (!isWhole || now.number() == Math.rint(now.number()));
    String range = "%s to %s".formatted(Shown.plain(least), Shown.plain(most));
    return isIn ? "" : (isWhole ? "a whole number from " : "a number from ") + range;
  }

  private List<String> words(String list) {
    if (list.startsWith("\"")) {
      return List.of(list.substring(1, list.length() - 1).split(","));
    }
    List<String> words = new ArrayList<>();
    Optional.ofNullable(was.names().getOrDefault(list, list))
        .flatMap(Spot::of)
        .ifPresent(
            spot -> {
              Pane pane = was.panes().get(spot.sheet());
              for (int row = spot.row(); row <= spot.lastRow(); row++) {
                words.add(pane.at(row, spot.column()).said());
              }
            });
    return words;
  }
}
