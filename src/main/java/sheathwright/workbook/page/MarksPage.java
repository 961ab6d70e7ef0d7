package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.util.CellReference;
import sheathwright.figure.Choice;
import sheathwright.figure.Limits;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.triage.MarkDecision;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.CellNotation;
import sheathwright.workbook.book.Tab;

/**
 * The office's page on which each mark is decided live: what was measured of it, every test, the
 * action and its reason, a row a mark and a column a step.
 */
final class MarksPage {

  private static final int NARROW = 12;
  private static final int MOST_COLUMNS = 220;

  private final Book book;
  private final Tab tab;
  private final List<Deck.Marked> marks;
  private final RowSteps steps;

  private MarksPage(Book book, Tab tab, List<Deck.Marked> marks) {
    this.book = book;
    this.tab = tab;
    this.marks = marks;
    MarkDecision.Live first = marks.get(0).decision().live();
    List<Traced> known = new ArrayList<>(first.evidence().values());
    known.addAll(first.shared());
    this.steps = RowSteps.like(known, first.byRules());
  }

  static Tab tab(Book book, String subtitle) {
    int[] widths = new int[MOST_COLUMNS];
    java.util.Arrays.fill(widths, NARROW);
    return Sections.titled(book.tab("Marks decided", widths), subtitle).keptBack();
  }

  static void write(Book book, Tab tab, Estimate estimate) {
    new MarksPage(book, tab, estimate.deck().marked()).write();
  }

  private void write() {
    List<Map.Entry<String, Traced>> model = cells(marks.get(0));
    int limits = tab.next();
    for (int column = 0; column < model.size(); column++) {
      Limits range = model.get(column).getValue().step().limits();
      if (range.exist()) {
        tab.number(limits, column, range.least());
        tab.number(limits + 1, column, range.most());
      }
    }
    tab.skip(2);
    List<Roll.Column<List<Map.Entry<String, Traced>>>> columns = new ArrayList<>();
    List<String> headings = new ArrayList<>();
    List<Unit<?>> units = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (int column = 0; column < model.size(); column++) {
      int index = column;
      String name = name(model.get(column).getKey(), taken);
      columns.add(Roll.column(name, row -> row.get(index).getValue()));
      headings.add(name.replace('_', ' '));
      units.add(Tab.unitOf(model.get(column).getValue()));
    }
    List<List<Map.Entry<String, Traced>>> rows = marks.stream().map(this::cells).toList();
    rows.forEach(row -> guard(row, limits));
    tab.list(Roll.of("mark_steps", "the marks, step by step", rows, columns), headings, units);
  }

  private static String name(String wanted, Set<String> taken) {
    String name = wanted;
    for (int i = 2; !taken.add(name); i++) {
      name = wanted + "_" + i;
    }
    return name;
  }

  /** A mark's evidence, every step, and what follows. */
  private List<Map.Entry<String, Traced>> cells(Deck.Marked marked) {
    MarkDecision.Live live = marked.decision().live();
    List<Map.Entry<String, Traced>> cells = new ArrayList<>();
    cells.add(Map.entry("mark", Choice.literal(marked.mark().key())));
    live.evidence().forEach((column, value) -> cells.add(Map.entry(column, value)));
    for (Traced step : steps.of(live.byRules())) {
      cells.add(Map.entry(step.isNamed() ? step.name() : "step", step));
    }
    cells.add(Map.entry("action_by_the_rules", live.byRules().get(0)));
    cells.add(Map.entry("reason_by_the_rules", live.byRules().get(1)));
    return cells;
  }

  /** What a row's numbers may be stands above their columns. */
  private void guard(List<Map.Entry<String, Traced>> row, int limits) {
    for (int column = 0; column < row.size(); column++) {
      CellNotation.Guard range =
          new CellNotation.Guard(
              new CellReference(limits, column, true, true).formatAsString(),
              new CellReference(limits + 1, column, true, true).formatAsString());
      row.get(column).getValue().step().guard().ifPresent(guard -> book.guarded(guard, range));
    }
  }
}
