package sheathwright.life.back;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.JobTable;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;

/** The tabs of a survey that are read back, and what tells a row of each from others. */
public final class SurveyTabs {

  /** The tab of what is asked before anybody goes there; it makes a workbook a survey. */
  public static final String CALL = JobTable.FIRST_CALL.word();

  /** The tables that are filled in where the roof is. */
  public static final List<JobTable> ON_THE_ROOF =
      List.of(
          JobTable.PLANES,
          JobTable.OPENINGS,
          JobTable.RAFTERS,
          JobTable.MARKS,
          JobTable.ZONES,
          JobTable.READINGS,
          JobTable.REPORTS,
          JobTable.LAYERS,
          JobTable.MAKER,
          JobTable.PULL_TESTS,
          JobTable.PHOTOS);

  private static final String ALONG_A_RAFTER = "up_in";

  /** Rows of tables that are not here are told apart by all that stands in them. */
  private static final Map<JobTable, List<String>> KEYS =
      Map.of(
          JobTable.JOB, List.of("key"),
          JobTable.FIRST_CALL, List.of(LifeFields.QUESTION.name()),
          JobTable.PLANES, List.of("plane"),
          JobTable.OPENINGS, List.of("plane", "along_ft", "up_ft"),
          JobTable.MARKS, List.of("mark"),
          JobTable.ZONES, List.of("zone"),
          JobTable.READINGS, List.of("plane", "rafter", ALONG_A_RAFTER),
          JobTable.REPORTS, List.of("report"),
          JobTable.MAKER, List.of("requirement"));

  private SurveyTabs() {}

  /**
   * The columns that tell a row of a table from others; none where only all of them do.
   *
   * @param header the columns that the table has
   */
  static List<String> keys(JobTable table, List<String> header) {
    return KEYS.getOrDefault(table, List.of()).stream().filter(header::contains).toList();
  }

  /** The column beside what the survey itself says: a line without it says nothing. */
  static Optional<String> answer(JobTable table) {
    return table == JobTable.FIRST_CALL
        ? Optional.of(LifeFields.ANSWER.name())
        : table.keys().map(Keys::value);
  }

  /** Whether a column holds what a column of the tables holds. */
  static boolean isColumn(Map<String, Field<?>> fields, String column) {
    return fields.containsKey(column) || column.startsWith("note");
  }
}
