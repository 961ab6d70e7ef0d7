package sheathwright.workbook.audit;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.util.CellReference;
import sheathwright.figure.Solution;

/** A workbook as it is, held against what was written, cell by cell. */
final class Comparison {

  private final Reading was;
  private final Reading now;
  private final Judgment judgment;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Finding, List<Change>> changes = new LinkedHashMap<>();
  private final Tabs tabs;
  private final Standing standing;
  private final Missing missing;
  private final List<Change> unlike = new ArrayList<>();

  private Comparison(Reading was, Reading now) {
    this.was = was;
    judgment = new Judgment(was);
    tabs = new Tabs(was, now);
    MovedBlocks blocks = new MovedBlocks(was, now, tabs.names());
    Columns columns = new Columns(was, blocks.back(), tabs.names());
    this.now = columns.back();
    standing = new Standing(was, this.now, tabs, columns);
    missing = new Missing(was, standing);
    findings.addAll(columns.findings());
    findings.addAll(blocks.findings());
  }

  /** Holds one against the other. */
  static Comparison of(Reading was, Reading now) {
    Comparison comparison = new Comparison(was, now);
    now.foreign().stream()
        .filter(each -> !was.foreign().contains(each))
        .forEach(comparison.findings::add);
    comparison.findings.addAll(comparison.tabs.findings());
    comparison.findings.addAll(
        new NamesKept(was, comparison.now, comparison.tabs, comparison.standing).findings());
    comparison.tabs.names().forEach(comparison::pane);
    return comparison;
  }

  /** Everything that differs but what formulas come to. */
  List<Finding> findings() {
    return findings;
  }

  /** The cells that a finding is about, as they were and are. */
  List<Change> changes(Finding finding) {
    return changes.getOrDefault(finding, List.of());
  }

  /** Every cell that was changed. */
  List<Change> changes() {
    return changes.values().stream().flatMap(List::stream).toList();
  }

  /** Cells whose formulas are as they were and that hold another value. */
  List<Change> unlike() {
    return unlike;
  }

  /** What is said of single cells. */
  Judgment judgment() {
    return judgment;
  }

  /** Where a cell that was written stands now; nothing, if it is gone. */
  Held stands(String sheet, int row, int column) {
    String tab = tabs.names().get(sheet);
    int line = tab == null ? -1 : standing.lines(sheet).now(row);
    return line < 0 ? Held.NOTHING : now.panes().get(tab).at(line, column);
  }

  private void pane(String tab, String other) {
    Pane written = was.panes().get(tab);
    Pane stands = now.panes().get(other);
    Alignment alignment = standing.lines(tab);
    hidden(written, stands, alignment);
    if (written.isProtected() && !stands.isProtected()) {
      findings.add(Finding.of(tab, "protection", "on", "off", "the tab's protection is off"));
    }
    moved(written, stands, alignment);
    missing.columns(written).forEach(this::found);
    Map<Integer, Finding> emptied = missing.emptied(written, stands);
    emptied.forEach((column, finding) -> found(finding, missing.emptied(written, column)));
    for (int row : written.rows().keySet()) {
      if (alignment.now(row) >= 0) {
        line(written, row, stands, alignment.now(row), emptied.keySet());
      }
    }
    if (!written.isOpen()) {
      added(written, stands, alignment);
    }
  }

  private void hidden(Pane written, Pane stands, Alignment alignment) {
    if (stands.isHidden() && !written.isHidden()) {
      findings.add(Finding.of(written.name(), "tab", "shown", "hidden", "the tab is hidden"));
    }
    TreeSet<Integer> rows = new TreeSet<>(stands.hiddenRows());
    rows.removeIf(row -> !stands.rows().containsKey(row));
    written.hiddenRows().forEach(row -> rows.remove(alignment.now(row)));
    if (!rows.isEmpty()) {
      findings.add(
          Finding.of(written.name(), "lines", "shown", "hidden", "hidden: line " + numbers(rows)));
    }
    TreeSet<Integer> columns = new TreeSet<>(stands.hiddenColumns());
    columns.removeAll(written.hiddenColumns());
    columns.removeIf(
        column -> written.rows().values().stream().noneMatch(row -> row.containsKey(column)));
    if (!columns.isEmpty()) {
      String letters =
          columns.stream().map(CellReference::convertNumToColString).collect(joining(", "));
      findings.add(
          Finding.of(written.name(), "columns", "shown", "hidden", "hidden: column " + letters));
    }
  }

  private static String numbers(Iterable<Integer> rows) {
    List<String> numbers = new ArrayList<>();
    rows.forEach(row -> numbers.add(String.valueOf(row + 1)));
    return String.join(", ", numbers);
  }

  private void moved(Pane written, Pane stands, Alignment alignment) {
    if (alignment.isSorted()) {
      findings.add(
          Finding.of(
              written.name(),
              "lines",
              numbers(alignment.moved()),
              numbers(alignment.moved().stream().map(alignment::now).toList()),
              "lines stand in another order; what points at one of them may now mean another"));
      return;
    }
    missing.lines(written).forEach(this::found);
    if (!written.isOpen()) {
      for (int row : alignment.inserted()) {
        findings.add(
            Finding.of(
                written.name(),
                "line",
                "",
                Pane.told(stands.rows().getOrDefault(row, new TreeMap<>())),
                "line %s was put in".formatted(row + 1)));
      }
    }
  }

  private void line(Pane written, int row, Pane stands, int line, Set<Integer> emptied) {
    List<Change> blank = new ArrayList<>();
    List<Change> changed = new ArrayList<>();
    int filled = 0;
    for (Map.Entry<Integer, Held> cell : written.rows().get(row).entrySet()) {
      int column = cell.getKey();
      Held held = cell.getValue();
      boolean isTold = emptied.contains(column) && !held.isOpen();
      if (isTold || standing.goneColumns(written.name()).contains(column)) {
        continue;
      }
      Held here = stands.at(line, column);
      filled += held.isEmpty() ? 0 : 1;
      Change change = new Change(written.name(), row, column, held, here);
      if (here.isOpen() && !held.isOpen()) {
        findings.add(
            judgment.finding(
                change, Verdict.STRUCTURE, "the cell was locked, and is not any more"));
      }
      if (here.isEmpty() && !held.isEmpty() && !held.isOpen()) {
        blank.add(change);
      } else if (differs(change)) {
        changed.add(change);
      }
    }
    if (blank.size() > 1 && blank.size() == filled) {
      found(
          Finding.of(
              written.name(),
              "line",
              Pane.told(written.rows().get(row)),
              "",
              "line %s was emptied".formatted(row + 1)),
          blank);
    } else {
      for (Change change : blank) {
        found(
            judgment.finding(
                change, Verdict.STRUCTURE, "the cell was emptied, and what points at it"),
            List.of(change));
      }
    }
    changed.forEach(change -> found(judgment.of(change), List.of(change)));
  }

  private void added(Pane written, Pane stands, Alignment alignment) {
    Map<Integer, Integer> before = new HashMap<>();
    for (int row : written.rows().keySet()) {
      before.put(alignment.now(row), row);
    }
    List<Integer> inserted = alignment.isSorted() ? List.of() : alignment.inserted();
    for (int line : stands.rows().keySet()) {
      if (inserted.contains(line)) {
        continue;
      }
      int row = before.getOrDefault(line, line);
      stands
          .rows()
          .get(line)
          .forEach(
              (column, held) -> {
                boolean isNew =
                    !written.rows().containsKey(row)
                        || !written.rows().get(row).containsKey(column);
                if (isNew && !held.isEmpty()) {
                  Change change = new Change(written.name(), row, column, Held.NOTHING, held);
                  found(judgment.of(change), List.of(change));
                }
              });
    }
  }

  private void found(Finding finding, List<Change> cells) {
    findings.add(finding);
    changes.put(finding, cells);
  }

  private boolean differs(Change change) {
    Held held = change.was();
    Held here = change.now();
    if (held.isFormula() && here.isFormula()) {
      if (isTheSame(change)) {
        if (!held.saysTheSameAs(here)) {
          unlike.add(change);
        }
        return false;
      }
      return true;
    }
    return held.isFormula() || here.isFormula() || !held.saysTheSameAs(here);
  }

  private boolean isTheSame(Change change) {
    String before = change.was().formula();
    String after = change.now().formula();
    if (before.equals(after) && standing.isAsWritten()) {
      return true;
    }
    String tab = change.sheet();
    return FormulaText.canonical(References.moved(before, tab, standing), tab)
        .equals(FormulaText.canonical(tabs.asWritten(after), tab));
  }

  /** Whether a formula's cell tells that something is to be solved again. */
  static boolean isToSolve(Held was, String now) {
    return was.value().equals(Solution.CURRENT) && !now.equals(Solution.CURRENT);
  }
}
