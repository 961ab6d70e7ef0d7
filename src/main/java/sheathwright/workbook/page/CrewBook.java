package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Limits;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.table.Field;
import sheathwright.life.found.SheetsSettled;
import sheathwright.life.record.CrewTabs;
import sheathwright.life.record.HeldTables;
import sheathwright.life.record.Revisions;
import sheathwright.life.supply.Supply;
import sheathwright.workbook.book.Allowed;
import sheathwright.workbook.book.Audience;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.book.TableTab;
import sheathwright.workbook.file.Particulars;

/**
 * What a crew takes onto the roof, on a phone without a signal or on paper: what is done on each
 * plane, and a row for each place to say what was found and done. No price stands in it, and
 * nothing of how a number was made; it is read back as tables.
 */
public final class CrewBook {

  private static final int WIDTH = 10;
  private static final int SPARE = 6;
  private static final int DAYS = 24;

  private final Estimate estimate;
  private final Book book;
  private final String subtitle;

  private CrewBook(Estimate estimate) {
    this.estimate = estimate;
    this.book =
        new Book(
            Audience.crew(estimate.job()),
            Particulars.of(estimate.job(), "for the crew", Optional.empty()));
    this.subtitle = estimate.job().fact(JobFields.JOB_NAME).value() + " · for the crew";
    book.tellValuesOnly();
    book.leaveOutEmptyPages();
  }

  /**
   * The file's bytes.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public static byte[] bytes(Estimate estimate) {
    CrewBook made = new CrewBook(estimate);
    return JobBooks.laidOut(made.book, made::written);
  }

  private byte[] written() {
    Tab start = Sections.titled(book.tab(CrewTabs.START, 22, 30, 50), subtitle);
    List<CrewPage> planes = CrewPage.of(book, estimate, WIDTH, subtitle);
    Tab log = Sections.titled(book.tab(CrewTabs.LOG, 14, 16, 12, 12, 12, 16, 30), subtitle);
    start(start);
    Supply supply = new Supply(estimate, SheetsSettled.of(estimate).work().quantities());
    for (CrewPage page : planes) {
      page.write(supply, page == planes.get(0));
      places(page);
    }
    log(log);
    HistoryPage.kept(book, Revisions.lines(kept()), subtitle);
    return book.told(Sections.tablesTab(book, subtitle));
  }

  /** What the rows were when this was written, so that only what changed is taken in. */
  private Map<String, sheathwright.job.table.RowSource> kept() {
    Map<String, sheathwright.job.table.RowSource> held = HeldTables.of(estimate.job());
    held.keySet().retainAll(List.of(JobTable.MARKS.word()));
    return held;
  }

  private void start(Tab tab) {
    TableTab lines = new TableTab(book, tab, CrewTabs.START, List.of("key", "value", "note"));
    asked(lines, CrewTabs.BY, "who fills this in; a row may say another");
    asked(lines, CrewTabs.ON, "the day, such as 2027-06-01; a row may say another");
  }

  private static void asked(TableTab lines, String key, String note) {
    int line = lines.line(List.of());
    lines.fixed(line, 0, key);
    lines.blank(line, 1, false);
    lines.fixed(line, 2, note);
    lines.allow(1, List.of(line), new Allowed(key, List.of(), Limits.NONE, "", note));
  }

  private void places(CrewPage page) {
    page.tab().heading("What was found and done, place by place");
    boolean isOfBoards =
        estimate.deck().ofBoards().stream()
            .anyMatch(part -> part.plane().name().equals(page.plane()));
    if (isOfBoards) {
      page.tab()
          .note(
              "This deck is boards, which have no places: draw what else you find on the map, with its measures, for marks.csv.");
    }
    page.tab()
        .note(
            "Fill in what you see. Sound is a finding too. A photograph is named as its file, such as photos/roof-1.jpg.");
    TableTab lines = new TableTab(book, page.tab(), "crew_" + page.plane(), CrewTabs.COLUMNS);
    List<List<Integer>> filled = columns(CrewTabs.COLUMNS);
    for (Map<String, String> row : CrewTabs.rows(estimate, page.plane())) {
      place(lines, row, filled);
    }
    for (int i = 0; i < (isOfBoards ? 0 : SPARE); i++) {
      place(lines, Map.of(CrewTabs.PLANE, page.plane()), filled);
    }
    allow(lines, CrewTabs.COLUMNS, CrewTabs.columns(), filled);
  }

  private static void place(TableTab lines, Map<String, String> row, List<List<Integer>> filled) {
    int line = lines.line(List.of());
    for (int column = 0; column < CrewTabs.COLUMNS.size(); column++) {
      String name = CrewTabs.COLUMNS.get(column);
      String text = row.getOrDefault(name, "");
      boolean isFixed =
          name.equals(CrewTabs.MARK)
              || name.equals(CrewTabs.PLANE)
              || name.equals(CrewTabs.SHEET) && !text.isEmpty();
      if (isFixed) {
        lines.fixed(line, column, text);
      } else {
        Field<?> field = CrewTabs.columns().get(name);
        boolean isNumber = field != null && field.unit() != null;
        if (text.isEmpty()) {
          lines.blank(line, column, isNumber);
        } else if (isNumber) {
          lines.number(line, column, Double.parseDouble(text));
        } else {
          lines.text(line, column, text);
        }
        filled.get(column).add(line);
      }
    }
  }

  private void log(Tab tab) {
    Map<String, Field<?>> fields = TableGuide.fields(JobTable.LOG);
    List<String> headings = new ArrayList<>(fields.keySet());
    headings.add("note");
    TableTab lines = new TableTab(book, tab, CrewTabs.LOG, headings);
    List<List<Integer>> filled = columns(headings);
    for (int i = 0; i < DAYS; i++) {
      int line = lines.line(List.of());
      for (int column = 0; column < headings.size(); column++) {
        Field<?> field = fields.get(headings.get(column));
        lines.blank(line, column, field != null && field.unit() != null);
        filled.get(column).add(line);
      }
    }
    allow(lines, headings, fields, filled);
  }

  private static List<List<Integer>> columns(List<String> headings) {
    List<List<Integer>> columns = new ArrayList<>();
    headings.forEach(heading -> columns.add(new ArrayList<>()));
    return columns;
  }

  private static void allow(
      TableTab lines,
      List<String> headings,
      Map<String, Field<?>> fields,
      List<List<Integer>> filled) {
    for (int column = 0; column < headings.size(); column++) {
      Field<?> field = fields.get(headings.get(column));
      if (field != null) {
        lines.allow(column, filled.get(column), TablePages.allowed(field));
      } else if (headings.get(column).equals(CrewTabs.DONE)) {
        lines.allow(
            column,
            filled.get(column),
            new Allowed("done", List.of("yes", "no"), Limits.NONE, "", "Done"));
      }
    }
  }
}
