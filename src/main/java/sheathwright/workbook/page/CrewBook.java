package sheathwright.workbook.page;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Limits;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.table.Field;
import sheathwright.life.back.CrewTabs;
import sheathwright.life.found.SheetsSettled;
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
  private static final int ADDED = 24;
  private static final int FEET = 12;
  private static final List<String> NEVER_FILLED = List.of(CrewTabs.MARK);
  private static final List<String> FIXED = List.of(CrewTabs.SHEET, CrewTabs.PLANE);

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
    start(start, planes);
    Supply supply = new Supply(estimate, SheetsSettled.of(estimate).work().quantities());
    for (CrewPage page : planes) {
      page.write(supply, page == planes.get(0));
      places(page);
    }
    readings();
    CrewTabs.ADDED.stream().filter(this::isAsked).forEach(this::added);
    HistoryPage.kept(book, Revisions.lines(kept()), subtitle);
    return book.told(Sections.tablesTab(book, subtitle));
  }

  /** What the rows were when this was written, so that only what changed is taken in. */
  private Map<String, sheathwright.job.table.RowSource> kept() {
    Map<String, sheathwright.job.table.RowSource> held = HeldTables.of(estimate.job());
    held.keySet().retainAll(List.of(JobTable.MARKS.word(), CrewTabs.READINGS));
    return held;
  }

  /** What this is, whose roof, whether anything stops, how it is filled in and given back. */
  private void start(Tab tab, List<CrewPage> planes) {
    tab.heading("The job");
    for (Field<Choice<String>> fact :
        List.of(JobFields.JOB_NAME, JobFields.SITE, JobFields.PREPARED_BY)) {
      tab.fact(fact.label(), estimate.job().fact(fact).value());
    }
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    tab.heading("How this is filled in");
    tab.paragraph(
        "Read what stops on the tab of your plane before you go up: %s."
            .formatted(planes.stream().map(page -> page.tab().name()).collect(joining(", "))));
    tab.paragraph(
        "Below the map of a plane stands a row for each place: say what you found there, and yes or no whether it is done. Leave empty what you did not look at.");
    tab.paragraph(
        "Straw-colored cells are yours. Say who you are and what day it is here, once; a row may say another.");
    tab.paragraph(
        "Give the file back to the office as it is, or the sheets of paper. What two people found differently is asked about, and nothing is lost.");
    tab.heading("Who and when");
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
      row(lines, CrewTabs.COLUMNS, row, CrewTabs.columns(), FIXED, filled);
    }
    for (int i = 0; i < (isOfBoards ? 0 : SPARE); i++) {
      Map<String, String> row = Map.of(CrewTabs.PLANE, page.plane());
      row(lines, CrewTabs.COLUMNS, row, CrewTabs.columns(), FIXED, filled);
    }
    allow(lines, CrewTabs.COLUMNS, CrewTabs.columns(), filled);
  }

  /**
   * A row to be filled in.
   *
   * @param fixed the columns that stay as they are where something stands in them
   * @param filled takes the line for each column that is filled in
   */
  private static void row(
      TableTab lines,
      List<String> headings,
      Map<String, String> row,
      Map<String, Field<?>> fields,
      List<String> fixed,
      List<List<Integer>> filled) {
    int line = lines.line(List.of());
    for (int column = 0; column < headings.size(); column++) {
      String name = headings.get(column);
      String text = row.getOrDefault(name, "");
      Field<?> field = fields.get(name);
      boolean isNumber = field != null && field.unit() != null;
      if (fixed.contains(name) && !text.isEmpty() || NEVER_FILLED.contains(name)) {
        if (isNumber) {
          lines.fixed(line, column, Double.parseDouble(text));
        } else {
          lines.fixed(line, column, text);
        }
        continue;
      }
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

  /** A row for each foot of a rafter that is to be read against the string. */
  private void readings() {
    Map<String, Field<?>> fields = CrewTabs.readingColumns(estimate.job());
    if (fields.isEmpty()) {
      return;
    }
    List<String> headings = new ArrayList<>(fields.keySet());
    headings.add("note");
    Tab tab =
        Sections.titled(
            book.tab(CrewTabs.READINGS, TablePages.widths(JobTable.READINGS, headings)), subtitle);
    tab.note(
        "How far each foot of a rafter lies below the string. Read again what has moved, add below what nobody has read. When the rafters are done, stretch the same string and say beside each how far it lies below it now, the blocks taken off.");
    List<String> keys = CrewTabs.readingKeys(estimate.job());
    TableTab lines = new TableTab(book, tab, CrewTabs.READINGS, headings);
    List<List<Integer>> filled = columns(headings);
    List<Map<String, String>> rows = new ArrayList<>(CrewTabs.readings(estimate.job()));
    for (int i = 0; i < FEET; i++) {
      rows.add(Map.of());
    }
    rows.forEach(row -> row(lines, headings, row, fields, keys, filled));
    allow(lines, headings, fields, filled);
  }

  /** Screws are pulled where a covering of somebody else's hangs on them. */
  private boolean isAsked(JobTable table) {
    return table != JobTable.PULL_TESTS
        || estimate.maker().isPresent()
        || estimate.site().covering().isKnown();
  }

  /** A tab to which the crew adds lines. */
  private void added(JobTable table) {
    Map<String, Field<?>> fields = TableGuide.fields(table);
    List<String> headings = new ArrayList<>(fields.keySet());
    headings.add("note");
    Tab tab = Sections.titled(book.tab(table.word(), TablePages.widths(table, headings)), subtitle);
    TableTab lines = new TableTab(book, tab, table.word(), headings);
    List<List<Integer>> filled = columns(headings);
    for (int i = 0; i < ADDED; i++) {
      row(lines, headings, Map.of(), fields, List.of(), filled);
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
