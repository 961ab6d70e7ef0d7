package sheathwright.life.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.job.JobTable;
import sheathwright.job.table.Keys;
import sheathwright.job.table.RowSource;

/**
 * What differs between a job's tables as they were and as they are: a line for each key or cell.
 */
public final class TableChanges {

  /** Two numbers closer than this are one, written by two programs. */
  private static final double SAME = 1e-9;

  /** More pairs of lines than these are not held against one another. */
  private static final long MOST_PAIRS = 4_000_000;

  private static final String BLANK = "blank";

  private final List<String> changes = new ArrayList<>();

  private TableChanges() {}

  /** What differs, table by table. */
  public static List<String> between(
      Map<String, ? extends RowSource> before, Map<String, ? extends RowSource> after) {
    TableChanges changes = new TableChanges();
    for (JobTable table : JobTable.values()) {
      RowSource was = before.get(table.word());
      RowSource is = after.get(table.word());
      if (was != null && is != null) {
        changes.compare(table, was, is);
      } else if (was != null || is != null) {
        String what = was == null ? "new, with %s lines" : "gone, with its %s lines";
        int lines = (was == null ? is : was).lines().size();
        changes.changes.add(table.word() + ": " + what.formatted(lines));
      }
    }
    return List.copyOf(changes.changes);
  }

  private void compare(JobTable table, RowSource was, RowSource is) {
    List<RowSource.Line> before = was.lines();
    List<RowSource.Line> after = is.lines();
    Set<String> columns = new LinkedHashSet<>(was.header());
    columns.addAll(is.header());
    int same = 0;
    while (same < Math.min(before.size(), after.size())
        && isSame(was, before.get(same), is, after.get(same), columns)) {
      same++;
    }
    int end = 0;
    while (end < Math.min(before.size(), after.size()) - same
        && isSame(
            was,
            before.get(before.size() - 1 - end),
            is,
            after.get(after.size() - 1 - end),
            columns)) {
      end++;
    }
    pair(
        new Part(table, was, before.subList(same, before.size() - end)),
        new Part(table, is, after.subList(same, after.size() - end)),
        columns);
  }

  /** Some lines of a table. */
  private record Part(JobTable table, RowSource file, List<RowSource.Line> lines) {

    /** What tells a line from others: its key, or what it is called. */
    String name(RowSource.Line line) {
      int place = table.keys().map(keys -> file.header().indexOf(keys.key())).orElse(0);
      return line.cells().get(Math.max(0, place)).strip();
    }

    String said(RowSource.Line line) {
      String name = name(line);
      boolean isAlone = lines.stream().filter(each -> name(each).equals(name)).count() == 1;
      return table.word() + ", " + (isAlone ? name : "line %s (%s)".formatted(line.number(), name));
    }
  }

  /** Lines of one name belong together; where names repeat, lines in their order. */
  private void pair(Part before, Part after, Set<String> columns) {
    boolean isNamed = isNamed(before) && isNamed(after);
    if (!isNamed && (long) before.lines().size() * after.lines().size() > MOST_PAIRS) {
      changes.add(
          "%s: %s lines, where %s others were"
              .formatted(before.table().word(), after.lines().size(), before.lines().size()));
      return;
    }
    List<RowSource.Line> left = new ArrayList<>(after.lines());
    boolean isInOrder = !isNamed && before.lines().size() == after.lines().size();
    for (int i = 0; i < before.lines().size(); i++) {
      RowSource.Line line = before.lines().get(i);
      RowSource.Line other =
          isInOrder ? after.lines().get(i) : matched(before, line, after, left, isNamed, columns);
      if (other == null) {
        changes.add(before.said(line) + ": gone (" + words(line) + ")");
      } else {
        left.remove(other);
        cells(before, line, after, other, columns);
      }
    }
    left.forEach(line -> changes.add(after.said(line) + ": new (" + words(line) + ")"));
  }

  private static boolean isNamed(Part part) {
    return part.lines().stream().map(part::name).distinct().count() == part.lines().size();
  }

  private static RowSource.Line matched(
      Part before,
      RowSource.Line line,
      Part after,
      List<RowSource.Line> left,
      boolean isNamed,
      Set<String> columns) {
    return left.stream()
        .filter(
            other ->
                isNamed
                    ? after.name(other).equals(before.name(line))
                    : isSame(before.file(), line, after.file(), other, columns))
        .findFirst()
        .orElse(null);
  }

  private void cells(
      Part before, RowSource.Line line, Part after, RowSource.Line other, Set<String> columns) {
    for (String column : columns) {
      String was = cell(before.file(), line, column);
      String is = cell(after.file(), other, column);
      if (!isSame(was, is)) {
        boolean isValue = before.table().keys().map(Keys::value).filter(column::equals).isPresent();
        changes.add(
            "%s%s: %s → %s"
                .formatted(after.said(other), isValue ? "" : ", " + column, said(was), said(is)));
      }
    }
  }

  private static boolean isSame(
      RowSource was, RowSource.Line line, RowSource is, RowSource.Line other, Set<String> columns) {
    return columns.stream()
        .allMatch(column -> isSame(cell(was, line, column), cell(is, other, column)));
  }

  private static String cell(RowSource file, RowSource.Line line, String column) {
    int place = file.header().indexOf(column);
    return place < 0 ? "" : line.cells().get(place).strip();
  }

  /** Whether two cells say the same. */
  public static boolean isSame(String was, String is) {
    if (was.equals(is)) {
      return true;
    }
    try {
      double one = Double.parseDouble(was);
      double other = Double.parseDouble(is);
      return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
    } catch (NumberFormatException words) {
      return false;
    }
  }

  private static String said(String cell) {
    return cell.isEmpty() ? BLANK : cell;
  }

  private static String words(RowSource.Line line) {
    return String.join(
        ", ", line.cells().stream().map(String::strip).filter(cell -> !cell.isEmpty()).toList());
  }
}
