package sheathwright.job.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The columns of a table as its headings name them: where each stands, and what is wrong with them,
 * whoever reads the table.
 */
public final class TableColumns {

  private final RowSource file;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Problem> unknown = new ArrayList<>();
  private final List<Problem> missing = new ArrayList<>();
  private final Set<String> meant = new HashSet<>();

  private boolean lacksAny;

  private TableColumns(RowSource file) {
    this.file = file;
    for (int i = 0; i < file.header().size(); i++) {
      places.putIfAbsent(file.header().get(i), i);
    }
  }

  /**
   * The columns of a table.
   *
   * @param known the columns that are read
   * @param required those of them that must be there
   * @param isLeftAlone which others may stand there
   * @param whose what has those columns: {@code the table}
   * @param others what else may stand there, in words
   */
  public static TableColumns of(
      RowSource file,
      Meant known,
      List<String> required,
      Predicate<String> isLeftAlone,
      String whose,
      String others) {
    TableColumns columns = new TableColumns(file);
    columns.hold(known, isLeftAlone, whose + " has", others);
    for (String column : required) {
      columns.lacksAny |= !columns.has(column);
      if (!columns.has(column) && !columns.meant.contains(column)) {
        String message = "this column is missing; the file has " + String.join(", ", file.header());
        columns.missing.add(file.problem(file.headingLine(), column, message));
      }
    }
    return columns;
  }

  /** A column of notes is nobody's but the user's: its heading begins with {@code note}. */
  public static boolean isNote(String heading) {
    return heading.toLowerCase(Locale.ROOT).startsWith("note");
  }

  /** A column twice, one without a heading, one that is not known. */
  private void hold(Meant known, Predicate<String> isLeftAlone, String has, String others) {
    for (int i = 0; i < file.header().size(); i++) {
      String heading = file.header().get(i);
      if (heading.isEmpty()) {
        String message = "column %s has no heading; name it, or begin its heading with note";
        unknown.add(file.problem(file.headingLine(), "", message.formatted(i + 1)));
      } else if (places.get(heading) < i) {
        unknown.add(file.problem(file.headingLine(), heading, "this column appears twice"));
      } else if (!known.names().contains(heading) && !isLeftAlone.test(heading)) {
        known.nearest(heading).ifPresent(meant::add);
        String instead = known.said(heading, file.name(), has, " and " + others);
        unknown.add(
            file.problem(file.headingLine(), heading, "this column is not known" + instead));
      }
    }
  }

  /** The columns that nobody can read: twice there, without a heading, or not known. */
  public List<Problem> unknown() {
    return List.copyOf(unknown);
  }

  /** Whether any column is not there that must be, be it said or not. */
  boolean lacksAny() {
    return lacksAny;
  }

  /**
   * The columns that must be there and are not; none of those that another was taken for, which is
   * said of that other.
   */
  public List<Problem> missing() {
    return List.copyOf(missing);
  }

  /** Whether the table has a column. */
  public boolean has(String column) {
    return places.containsKey(column);
  }

  /**
   * What stands in a line under a heading, as it was written; empty where the table has not that
   * column.
   */
  public String cell(RowSource.Line line, String column) {
    Integer place = places.get(column);
    return place == null ? "" : line.cells().get(place);
  }
}
