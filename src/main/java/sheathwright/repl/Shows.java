package sheathwright.repl;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toMap;

import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.catalog.Result;
import sheathwright.figure.Check;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.figure.Word;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reading;
import sheathwright.repl.show.TracedParts;

/**
 * Values as the prompt shows them: a figure in one line, a check or a record of results as a table.
 */
final class Shows {

  /** Gathered when the first length that was worked out is shown. */
  private static final class Answers {

    /** The answers that the crew marks or cuts, by the names of their figures. */
    private static final Map<String, Marked> MARKED =
        Catalog.shipped().cards().stream()
            .flatMap(card -> card.results().stream())
            .filter(result -> result.marked() != Marked.NOT)
            .collect(toMap(Result::column, Result::marked, (one, other) -> one));
  }

  private static final int WIDTH = 78; // of prose, which may stand two to the right, in 80

  private Shows() {}

  /** A variable and what it holds. */
  static String variable(String variable, Object value) {
    String name = Reader.saidName(variable);
    String text = text(value);
    return text.contains("\n") ? name + "\n" + indented(text) : name + " = " + text;
  }

  /** A value that no variable holds. */
  static String expression(Object value) {
    return value instanceof Traced traced && traced.isNamed() && !isRefused(traced)
        ? traced.symbol() + " = " + text(traced)
        : text(value);
  }

  /** A value in a few words, to be set beside a new one. */
  static String brief(Object value) {
    if (value instanceof Traced traced && isRefused(traced)) {
      return "no value";
    }
    String text = text(value);
    return text.contains("\n") ? firstOf(text) + " …" : text;
  }

  private static String firstOf(String text) {
    return text.lines().findFirst().orElse("").strip().replaceAll(" +", " ");
  }

  /** Whether a value is missing, and not merely an answer without a number. */
  static boolean isRefused(Traced traced) {
    return traced.refusal().filter(refusal -> !refusal.isAnswer()).isPresent();
  }

  static String text(Object value) {
    if (value instanceof Traced traced) {
      return Marked.isLengthWorkedOut(traced)
          ? Answers.MARKED.getOrDefault(traced.name(), Marked.NOT).shown(traced)
          : traced.toString();
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
    if (value instanceof Word word) {
      return word.word();
    }
    if (value == null) {
      return "nothing";
    }
    if (value instanceof Record bare && isWrittenAsJava(bare)) {
      return parts(bare);
    }
    if (value.getClass().isArray()) {
      return text(
          IntStream.range(0, Array.getLength(value))
              .mapToObj(place -> Array.get(value, place))
              .toList());
    }
    if (value instanceof Reading.Told told) {
      return told.toString();
    }
    boolean isNameless = value.toString().equals(nameless(value));
    return value instanceof String said
        ? "\"" + said + "\""
        : isNameless
            ? "a thing; Tab behind its dot lists what it tells"
            : value
                .toString()
                .lines()
                .flatMap(line -> Shown.wrapped(line, WIDTH, "", "  ").stream())
                .collect(joining("\n"));
  }

  /** What Java calls a thing that has no words of its own. */
  private static String nameless(Object value) {
    return value.getClass().getName() + "@" + Integer.toHexString(value.hashCode());
  }

  /** Whether its text is only the one that the language gives every record. */
  private static boolean isWrittenAsJava(Record value) {
    return value.toString().startsWith(value.getClass().getSimpleName() + "[");
  }

  /** Each part of a thing that has no text of its own, in a few words. */
  private static String parts(Record thing) {
    return aligned(
        Arrays.stream(thing.getClass().getRecordComponents())
            .map(
                component ->
                    new String[] {
                      component.getName() + "()", inFewWords(TracedParts.part(component, thing)), ""
                    })
            .toList());
  }

  private static String inFewWords(Object part) {
    if (part instanceof Collection<?> many) {
      return many.size() + (many.size() == 1 ? " line" : " lines");
    }
    return part instanceof Double number ? Shown.plain(number) : brief(part);
  }

  /** Whether it is a thing or a record of results, or is made of such. */
  private static boolean hasColumns(Record record) {
    return Arrays.stream(record.getClass().getRecordComponents())
        .anyMatch(
            component ->
                component.isAnnotationPresent(Column.class)
                    || TracedParts.part(component, record) instanceof Record inner
                        && isTabled(inner));
  }

  /** Whether some of its parts have parts, which are then said with the columns that they fill. */
  private static boolean isMadeOfThings(Record record) {
    return Arrays.stream(record.getClass().getRecordComponents())
        .map(component -> TracedParts.part(component, record))
        .anyMatch(part -> part instanceof Record inner && isTabled(inner));
  }

  /** A part that is a table of its own; a check is said in one line. */
  private static boolean isTabled(Record part) {
    return part.getClass() != Check.class && hasColumns(part);
  }

  private static String table(Record record) {
    return aligned(rows("", record, isMadeOfThings(record)));
  }

  private static String aligned(List<String[]> rows) {
    int first = rows.stream().mapToInt(row -> row[0].length()).max().orElse(0);
    int second =
        rows.stream()
            .filter(row -> !row[2].isEmpty())
            .mapToInt(row -> row[1].length())
            .max()
            .orElse(0);
    String below = " ".repeat(first + 2);
    return rows.stream()
        .map(row -> (pad(row[0], first + 2) + pad(row[1], second + 2) + row[2]).stripTrailing())
        .flatMap(row -> Shown.wrapped(row, WIDTH, "", below).stream())
        .collect(joining("\n"));
  }

  /** What each part is called by and what it is; the parts of a part follow one another. */
  private static List<String[]> rows(String before, Record record, boolean withColumns) {
    List<String[]> rows = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object part = TracedParts.part(component, record);
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
        rows.add(
            new String[] {
              called, marked(component, part), withColumns ? column(component, part) : ""
            });
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

  /** A part as the crew reads it, if its column says that it is marked or cut. */
  private static String marked(RecordComponent component, Object part) {
    Column column = component.getAnnotation(Column.class);
    return column != null && part instanceof Traced traced
        ? column.marked().shown(traced)
        : text(part);
  }

  private static String indented(String text) {
    return text.lines().map(line -> "  " + line).collect(joining("\n"));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
