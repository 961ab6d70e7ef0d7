package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Traced;

/**
 * Values as the prompt shows them: a figure in one line, a check or a record of results as a table.
 */
final class Shows {

  private Shows() {}

  /** A variable and what it holds. */
  static String variable(String name, Object value) {
    String text = text(value);
    return text.contains("\n") ? name + "\n" + indented(text) : name + " = " + text;
  }

  /** A value that no variable holds. */
  static String expression(Object value) {
    return value instanceof Traced traced && traced.isNamed() && !isRefused(traced)
        ? traced.symbol() + " = " + traced.shown()
        : text(value);
  }

  /** A value in a few words, to be set beside a new one. */
  static String brief(Object value) {
    if (value instanceof Traced traced && isRefused(traced)) {
      return "no value";
    }
    String text = text(value);
    return text.contains("\n") ? text.lines().findFirst().orElse("").strip() + " …" : text;
  }

  /** Whether a value is missing, and not merely an answer without a number. */
  static boolean isRefused(Traced traced) {
    return traced.refusal().filter(refusal -> !refusal.isAnswer()).isPresent();
  }

  static String text(Object value) {
    if (value instanceof Traced traced) {
      return traced.toString();
    }
    if (value instanceof Check check) {
      return check.toString();
    }
    if (value instanceof Record results && hasColumns(results)) {
      return table(results);
    }
    if (value instanceof Collection<?> many) {
      return many.isEmpty() ? "none" : many.stream().map(Shows::text).collect(joining("\n"));
    }
    return value instanceof String said ? "\"" + said + "\"" : String.valueOf(value);
  }

  /** Whether it is a thing or a record of results, or is made of such. */
  private static boolean hasColumns(Record record) {
    return Arrays.stream(record.getClass().getRecordComponents())
        .anyMatch(
            component ->
                component.isAnnotationPresent(Column.class)
                    || part(component, record) instanceof Record inner && isTabled(inner));
  }

  /** Whether some of its parts have parts, which are then said with the columns that they fill. */
  private static boolean isMadeOfThings(Record record) {
    return Arrays.stream(record.getClass().getRecordComponents())
        .map(component -> part(component, record))
        .anyMatch(part -> part instanceof Record inner && isTabled(inner));
  }

  /** A part that is a table of its own; a check is said in one line. */
  private static boolean isTabled(Record part) {
    return part.getClass() != Check.class && hasColumns(part);
  }

  private static String table(Record record) {
    List<String[]> rows = rows("", record, isMadeOfThings(record));
    int first = rows.stream().mapToInt(row -> row[0].length()).max().orElse(0);
    int second =
        rows.stream()
            .filter(row -> !row[2].isEmpty())
            .mapToInt(row -> row[1].length())
            .max()
            .orElse(0);
    return rows.stream()
        .map(row -> (pad(row[0], first + 2) + pad(row[1], second + 2) + row[2]).stripTrailing())
        .collect(joining("\n"));
  }

  /** What each part is called by and what it is; the parts of a part follow one another. */
  private static List<String[]> rows(String before, Record record, boolean withColumns) {
    List<String[]> rows = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object part = part(component, record);
      String called = before + component.getName() + "()";
      if (part instanceof Check check) {
        rows.add(
            new String[] {
              called,
              String.valueOf(check.ratio()),
              check.demand() + " of " + check.capacity() + ", " + check.outcome().words()
            });
      } else if (part instanceof Record inner && isTabled(inner)) {
        rows.addAll(rows(called + ".", inner, withColumns));
      } else if (component.isAnnotationPresent(Column.class) || part instanceof Traced) {
        rows.add(new String[] {called, text(part), withColumns ? column(component, part) : ""});
      }
    }
    return rows;
  }

  /** The column that a part fills; what a part lacks names it already. */
  private static String column(RecordComponent component, Object part) {
    Column column = component.getAnnotation(Column.class);
    boolean isSaid = column == null || part instanceof Traced traced && isRefused(traced);
    return isSaid ? "" : column.value();
  }

  private static Object part(RecordComponent component, Record results) {
    try {
      return component.getAccessor().invoke(results);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String indented(String text) {
    return text.lines().map(line -> "  " + line).collect(joining("\n"));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
