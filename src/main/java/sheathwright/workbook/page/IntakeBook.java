package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Limits;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.life.back.SurveyTabs;
import sheathwright.workbook.book.Allowed;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.book.TableTab;
import sheathwright.workbook.file.Particulars;

/**
 * An empty survey for a phone or a tablet: the tables that an estimator fills in on the roof and in
 * the attic, and what is asked on the first call. Filled in, it is quoted like an estimate.
 */
public final class IntakeBook {

  private static final String SUBTITLE = "survey of a roof deck";
  private static final int LINES = 40;

  /** What is asked on the first call and read back. */
  private static final List<Field<?>> FIRST =
      List.of(
          LifeFields.ASKED_ON,
          LifeFields.BUILT_YEAR,
          LifeFields.LAYERS_ON,
          LifeFields.OLD_COVERING,
          LifeFields.KNOWN_LEAK,
          LifeFields.FAN_INTO_ATTIC);

  /** What is asked besides, and decides whether and how somebody goes there. */
  private static final List<String> BESIDES =
      List.of(
          "Who owns the house, and who asked for the visit?",
          "How many stories has it?",
          "Where are leaks or stains, and since when?",
          "Does the ridge or the eave sag, as seen from the street?",
          "Has it burned, or do walls lean? Then an engineer comes first.",
          "Is it an insurer's matter, or the owner's own?",
          "Does somebody live there, and who is at home?",
          "Where can a container stand, and a truck unload?",
          "Are there solar panels, a dish or skylights?");

  private final Book book = new Book(Particulars.of("A survey", "Repair of a wood roof deck"));

  private IntakeBook() {
    book.leaveOutEmptyPages();
  }

  /** The file's bytes; the same each time. */
  public static byte[] bytes() {
    return new IntakeBook().written();
  }

  private byte[] written() {
    asked();
    keyed();
    SurveyTabs.ON_THE_ROOF.forEach(this::listed);
    return book.told(Sections.tablesTab(book, SUBTITLE));
  }

  private void asked() {
    Tab tab = Sections.titled(book.tab(SurveyTabs.CALL, 62, 58), SUBTITLE);
    tab.note(
        "Ask these before anybody goes there. What is asked first on the tab job belongs to them.");
    TableTab lines =
        new TableTab(
            book,
            tab,
            SurveyTabs.CALL,
            List.copyOf(TableGuide.columns(JobTable.FIRST_CALL).keySet()));
    List<Integer> all = new ArrayList<>();
    for (String question : BESIDES) {
      int line = lines.line(List.of(question, ""));
      lines.fixed(line, 0, question);
      lines.blank(line, 1, false);
      all.add(line);
    }
    lines.allow(1, all, TablePages.allowed(LifeFields.ANSWER));
  }

  private void keyed() {
    Keys keys = JobTable.JOB.keys().orElseThrow();
    Tab tab = Sections.titled(book.tab(JobTable.JOB.word(), 26, 30, 62), SUBTITLE);
    TableTab lines =
        new TableTab(book, tab, JobTable.JOB.word(), List.of(keys.key(), keys.value(), "note"));
    Set<Field<?>> fields = new LinkedHashSet<>(FIRST);
    fields.addAll(TableGuide.fields(JobTable.JOB).values());
    for (Field<?> field : fields) {
      String note = field.label() + (field.isRequired() ? "" : ", if known");
      int line = lines.line(List.of(field.name(), "", note));
      lines.fixed(line, 0, field.name());
      lines.blank(line, 1, field.unit() != null);
      lines.fixed(line, 2, note);
      lines.allow(1, List.of(line), TablePages.allowed(field));
    }
  }

  private void listed(JobTable table) {
    Map<String, Field<?>> fields = TableGuide.columns(table);
    fields.values().removeAll(LifeFields.DONE);
    List<String> headings = new ArrayList<>(fields.keySet());
    headings.add("note");
    int[] widths = TablePages.widths(table, headings);
    Tab tab = Sections.titled(book.tab(table.word(), widths), SUBTITLE);
    TableTab lines = new TableTab(book, tab, table.word(), headings);
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < LINES; i++) {
      int line = lines.line(List.of());
      all.add(line);
      for (int column = 0; column < headings.size(); column++) {
        Field<?> field = fields.get(headings.get(column));
        lines.blank(line, column, field != null && field.unit() != null);
      }
    }
    for (int column = 0; column < headings.size(); column++) {
      Field<?> field = fields.get(headings.get(column));
      lines.allow(
          column,
          all,
          field == null
              ? new Allowed("note", List.of(), Limits.NONE, "", "Yours alone")
              : TablePages.allowed(field));
    }
  }
}
