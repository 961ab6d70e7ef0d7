package sheathwright.life.back;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.RowSource;
import sheathwright.job.zone.ZoneFields;
import sheathwright.life.record.HeldTables;

/** The tabs of a crew's workbook that are read back, and what stands on them. */
public final class CrewTabs {

  /** Begins the name of each plane's tab. */
  public static final String OF_A_PLANE = "Crew ";

  /** The tab that says who filled it in, and when, where a row does not. */
  public static final String START = "start";

  /** The tables to which a crew adds lines: what it did, and what screws held that it pulled. */
  public static final List<JobTable> ADDED = List.of(JobTable.PULL_TESTS, JobTable.LOG);

  /** The tab of how far the feet of rafters lie below the string. */
  public static final String READINGS = JobTable.READINGS.word();

  public static final String SHEET = OrderFields.OF_SHEET.name();
  public static final String MARK = OrderFields.OF_MARK.name();
  public static final String PLANE = ZoneFields.ITS_PLANE.name();
  public static final String FINDING = "finding";
  public static final String PHOTO = OrderFields.PHOTO.name();
  public static final String DONE = "note_done";
  public static final String BY = MarkFields.BY.name();
  public static final String ON = MarkFields.ON.name();

  /** What a crew finds out of a place, and who says so when: all of it stands in the marks. */
  public static final List<String> FOUND =
      List.of(
          FINDING,
          MarkFields.PROBE.name(),
          MarkFields.MOISTURE.name(),
          MarkFields.SOUND_NAILS.name(),
          MarkFields.JOINT_GAP.name(),
          DONE,
          BY,
          ON,
          "note");

  /** The columns of a place's row. */
  public static final List<String> COLUMNS =
      Stream.concat(Stream.of(SHEET, MARK, PLANE, PHOTO), FOUND.stream()).toList();

  /** What a column of a place's row may hold, where that is a column of the tables. */
  private static final Map<String, Field<?>> FIELDS = fields();

  /** What the office decides about a reading, and the crew leaves alone. */
  private static final List<String> OF_THE_OFFICE = List.of("least_in", "most_in");

  private CrewTabs() {}

  private static Map<String, Field<?>> fields() {
    Map<String, Field<?>> fields = new LinkedHashMap<>(TableGuide.fields(JobTable.MARKS));
    fields.put(PHOTO, OrderFields.PHOTO);
    fields.keySet().retainAll(COLUMNS);
    return Collections.unmodifiableMap(fields);
  }

  /** What a column of a place's row may hold; nothing where it is a note. */
  public static Map<String, Field<?>> columns() {
    return FIELDS;
  }

  /** The rows of a plane: a line for each mark, and one for each place that has none. */
  public static List<Map<String, String>> rows(Estimate estimate, String plane) {
    List<Map<String, String>> rows = new ArrayList<>();
    List<String> marked = new ArrayList<>();
    for (Map<String, String> mark : marks(estimate.job())) {
      if (mark.get(PLANE).equals(plane)) {
        rows.add(mark);
        marked.add(mark.getOrDefault(SHEET, ""));
      }
    }
    for (Map<String, String> place : estimate.deck().mapRecord().rows()) {
      String key = place.get(ZoneFields.KEY.name());
      if (place.get(ZoneFields.ITS_PLANE.name()).equals(plane) && !marked.contains(key)) {
        rows.add(Map.of(SHEET, key, PLANE, plane));
      }
    }
    return rows;
  }

  /**
   * The columns of a reading: those that the job's table has, but for the office's, and what is
   * read when the work is done; none where it has no readings.
   */
  public static Map<String, Field<?>> readingColumns(Job job) {
    Map<String, Field<?>> columns = new LinkedHashMap<>();
    RowSource readings = job.source().files().get(READINGS);
    if (readings != null) {
      TableGuide.parts(JobTable.READINGS).stream()
          .map(TableGuide.Part::fields)
          .filter(fields -> fields.stream().allMatch(field -> isIn(readings, field)))
          .reduce((first, fuller) -> fuller)
          .orElse(List.of())
          .stream()
          .filter(field -> readings.header().contains(field.name()) || isAsked(field))
          .filter(field -> !OF_THE_OFFICE.contains(field.name()))
          .forEach(field -> columns.put(field.name(), field));
    }
    return columns;
  }

  /** What a crew reads once its work is done, be there a column for it yet or not. */
  private static boolean isAsked(Field<?> field) {
    return LifeFields.DONE.contains(field);
  }

  private static boolean isIn(RowSource table, Field<?> field) {
    return !field.isRequired() || table.header().contains(field.name());
  }

  /** The columns that tell one reading from another. */
  public static List<String> readingKeys(Job job) {
    return SurveyTabs.keys(JobTable.READINGS, List.copyOf(readingColumns(job).keySet()));
  }

  /** The readings of a job as its table holds them, each by column. */
  public static List<Map<String, String>> readings(Job job) {
    RowSource held = HeldTables.of(job).get(READINGS);
    return held == null ? List.of() : rows(held);
  }

  /** The marks of a job as the tables hold them, each by column. */
  static List<Map<String, String>> marks(Job job) {
    RowSource held = HeldTables.of(job).get(JobTable.MARKS.word());
    return held == null ? List.of() : rows(held);
  }

  /** The lines of a table, each by column, blank cells left out. */
  static List<Map<String, String>> rows(RowSource table) {
    return table.lines().stream().map(line -> row(table, line)).toList();
  }

  static Map<String, String> row(RowSource table, RowSource.Line line) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int column = 0; column < table.header().size(); column++) {
      String text = line.cells().get(column).strip();
      if (!text.isEmpty()) {
        row.put(table.header().get(column), text);
      }
    }
    return row;
  }
}
