package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.TableGuide;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.RowSource;
import sheathwright.life.record.HeldTables;
import sheathwright.workbook.book.Allowed;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.book.TableTab;

/**
 * The job's tables, each on a tab of its name with the columns of its file. Every input of the job
 * stands there once, and the workbook can be read back from them.
 */
final class TablePages {

  private static final int SPARE = 8;
  private static final int NARROW = 10;
  private static final int WIDE = 26;
  private static final int AIR = 2;

  private final Book book;
  private final Job job;
  private final Map<String, Traced> unsaid;
  private final String subtitle;

  private TablePages(Book book, Estimate estimate, String subtitle) {
    this.book = book;
    this.job = estimate.job();
    this.unsaid = estimate.loadPath().unsaid();
    this.subtitle = subtitle;
  }

  /** Writes the tabs of a job's tables. */
  static void write(Book book, Estimate estimate, String subtitle) {
    TablePages pages = new TablePages(book, estimate, subtitle);
    for (JobTable table : JobTable.values()) {
      Optional.ofNullable(pages.job.source().files().get(table.word()))
          .ifPresent(file -> pages.write(table, file));
    }
  }

  private void write(JobTable table, RowSource file) {
    List<String> headings = new ArrayList<>(file.header());
    if (table == JobTable.JOB && !unsaid.isEmpty()) {
      headings.add(JobTables.UNTIL_SAID);
    }
    Tab tab = Sections.titled(book.tab(table.word(), widths(table, headings)), subtitle).keptBack();
    TableTab lines = new TableTab(book, tab, table.word(), headings);
    table
        .keys()
        .ifPresentOrElse(keys -> keyed(lines, table, file, keys), () -> listed(lines, table, file));
  }

  /** By what a column may hold and not by what it holds, so that pages stay as they are. */
  static int[] widths(JobTable table, List<String> headings) {
    Map<String, Field<?>> fields = TableGuide.fields(table);
    return headings.stream()
        .mapToInt(
            heading -> {
              Field<?> field = fields.get(heading);
              boolean isShort = field != null && (field.unit() != null || field.options() != null);
              return Math.max(isShort ? NARROW : WIDE, heading.length() + AIR);
            })
        .toArray();
  }

  private void keyed(TableTab lines, JobTable table, RowSource file, Keys keys) {
    Map<String, Field<?>> fields = TableGuide.fields(table);
    int key = file.header().indexOf(keys.key());
    int value = file.header().indexOf(keys.value());
    for (RowSource.Line given : file.lines()) {
      int line = lines.line(given.cells());
      Field<?> field = fields.get(given.cells().get(key).strip());
      for (int column = 0; column < file.header().size(); column++) {
        String text = given.cells().get(column);
        Optional<Traced> input = HeldTables.input(job, table, file, given, column);
        if (input.isPresent()) {
          lines.keyed(line, column, input.get(), field.label());
        } else if (column == key) {
          lines.fixed(line, column, text);
        } else if (column == value && field != null) {
          lines.blank(line, column, field.unit() != null);
          lines.allow(column, List.of(line), allowed(field));
        } else {
          lines.text(line, column, text);
        }
      }
    }
    if (table == JobTable.JOB) {
      unsaid
          .values()
          .forEach(input -> unsaid(lines, input, fields, key, value, file.header().size()));
    }
    for (int i = 0; i < SPARE; i++) {
      int line = lines.line(List.of());
      for (int column = 0; column < file.header().size(); column++) {
        lines.blank(line, column, false);
      }
    }
  }

  /** What nobody has said yet stands below what was said, with what it counts as until then. */
  private static void unsaid(
      TableTab lines, Traced input, Map<String, Field<?>> fields, int key, int value, int until) {
    int line = lines.line(List.of());
    lines.fixed(line, key, input.name());
    lines.keyed(line, value, input, fields.get(input.name()).label());
    lines.fixed(line, until, HeldTables.plain(input));
  }

  private void listed(TableTab lines, JobTable table, RowSource file) {
    Map<String, Field<?>> fields = TableGuide.fields(table);
    List<List<Integer>> blank = new ArrayList<>();
    file.header().forEach(heading -> blank.add(new ArrayList<>()));
    for (RowSource.Line given : file.lines()) {
      int line = lines.line(given.cells());
      for (int column = 0; column < file.header().size(); column++) {
        Field<?> field = fields.get(file.header().get(column));
        Optional<Traced> input = HeldTables.input(job, table, file, given, column);
        if (input.isPresent()) {
          lines.input(line, column, input.get(), field.label());
        } else {
          unread(lines, line, column, field, given.cells().get(column), blank);
        }
      }
    }
    lines.nameColumns();
    for (int i = 0; i < SPARE; i++) {
      int line = lines.line(List.of());
      for (int column = 0; column < file.header().size(); column++) {
        unread(lines, line, column, fields.get(file.header().get(column)), "", blank);
      }
    }
    for (int column = 0; column < file.header().size(); column++) {
      Field<?> field = fields.get(file.header().get(column));
      if (field != null) {
        lines.allow(column, blank.get(column), allowed(field));
      }
    }
  }

  private static void unread(
      TableTab lines,
      int line,
      int column,
      Field<?> field,
      String text,
      List<List<Integer>> blank) {
    if (text.isBlank()) {
      lines.blank(line, column, field != null && field.unit() != null);
      blank.get(column).add(line);
    } else {
      lines.text(line, column, text);
    }
  }

  /** What a field takes, with what it is as its help. */
  static Allowed allowed(Field<?> field) {
    List<String> words = field.options() == null ? List.of() : Choice.wordsOf(field.options());
    String unit = field.unit() == null ? "" : field.unit().symbol();
    return new Allowed(field.name(), words, field.limits(), unit, field.label());
  }
}
