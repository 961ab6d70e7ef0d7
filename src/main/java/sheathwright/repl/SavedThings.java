package sheathwright.repl;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.Word;
import sheathwright.repl.show.TracedParts;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.workbook.page.SessionPart;

/**
 * What a session holds as a workbook can show it: figures and words as cells of their own, lists as
 * tables, what lies on a plane as a map. What none of these can show is named, not dropped.
 */
final class SavedThings {

  /** Things in things: a job holds planes, these hold patches, these hold figures. */
  private static final int DEEPEST = 4;

  /** A list of more numbers is a table. */
  private static final int MOST_CELLS = 9;

  private final Map<String, Traced> cells = new LinkedHashMap<>();
  private final Map<String, List<SessionPart>> parts = new LinkedHashMap<>();
  private final List<String> shown = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();
  private final Set<Object> written = Collections.newSetFromMap(new IdentityHashMap<>());

  SavedThings(Map<String, Object> variables) {
    variables.forEach(
        (name, value) -> {
          List<SessionPart> own = new ArrayList<>();
          (add(name, value, own, 0) ? shown : leftOut).add(name);
          if (!own.isEmpty()) {
            parts.put(name, own);
          }
        });
  }

  /** Figures and words, each under its variable's name and its own. */
  Map<String, Traced> cells() {
    return cells;
  }

  /** Tables and maps, by the variable that holds them. */
  Map<String, List<SessionPart>> parts() {
    return parts;
  }

  /** The variables that are shown, all or in part. */
  List<String> shown() {
    return shown;
  }

  /** The variables of which nothing can be shown. */
  List<String> leftOut() {
    return leftOut;
  }

  /** Takes what can be shown of a value; whether anything can. */
  private boolean add(String name, Object value, List<SessionPart> own, int depth) {
    Optional<Traced> cell = cellOf(value);
    if (cell.isPresent()) {
      cells.put(name, cell.get());
      return true;
    }
    if (value instanceof Roll roll) {
      return own.add(new SessionPart.Listed(name, roll));
    }
    if (value instanceof Varied varied) {
      return own.add(new SessionPart.Listed(name, varied.roll()));
    }
    if (value instanceof Iterable<?> many) {
      return addMany(name, many, own, depth);
    }
    if (value == null || depth > DEEPEST || !isOurs(value)) {
      return false;
    }
    if (!written.add(value) && depth > 0) {
      return true; // it stands under a name of its own
    }
    if (value instanceof CourseLayout courses) {
      own.add(new SessionPart.Drawn(name, courses, List.of(), List.of()));
    }
    if (value instanceof PatchPlan plan) {
      own.add(new SessionPart.Drawn(name, plan.old(), plan.marks(), plan.list()));
    }
    boolean isAdded = false;
    Object told = value instanceof CourseLayout courses ? courses.laid(Reading.aside()) : value;
    for (Map.Entry<String, Object> member : membersOf(told).entrySet()) {
      isAdded |= add(name + "_" + member.getKey(), member.getValue(), own, depth + 1);
    }
    return isAdded;
  }

  /**
   * What stands in a cell for a value, if one cell can hold it: a part of a thing as it was given.
   */
  private static Optional<Traced> cellOf(Object value) {
    if (value instanceof Traced traced) {
      return Optional.of(traced.step().guard().<Traced>map(Step.Guarded::argument).orElse(traced));
    }
    if (value instanceof Check check) {
      return Optional.of(check.ratio());
    }
    if (value instanceof Number number) {
      return Optional.of(Figure.of(number.doubleValue(), Units.RATIO));
    }
    boolean isWord =
        value instanceof CharSequence || value instanceof Boolean || value instanceof Enum<?>;
    return isWord ? Optional.of(Choice.literal(wordOf(value))) : Optional.empty();
  }

  private static String wordOf(Object value) {
    return value instanceof Word word ? word.word() : String.valueOf(value);
  }

  private static boolean isOurs(Object value) {
    return value.getClass().getPackageName().startsWith("sheathwright.");
  }

  private boolean addMany(String name, Iterable<?> many, List<SessionPart> own, int depth) {
    List<Object> items = new ArrayList<>();
    many.forEach(items::add);
    List<Map<String, Object>> rows = items.stream().map(SavedThings::rowOf).toList();
    boolean isTable =
        !rows.isEmpty()
            && rows.stream()
                .allMatch(row -> !row.isEmpty() && row.keySet().equals(rows.get(0).keySet()));
    if (isTable) {
      return own.add(new SessionPart.Printed(name, rows));
    }
    if (items.size() > MOST_CELLS && items.stream().allMatch(Traced.class::isInstance)) {
      List<Traced> values = items.stream().map(Traced.class::cast).toList();
      Roll.Column<Traced> column = Roll.column("value", value -> value);
      return own.add(new SessionPart.Listed(name, Roll.of(name, name, values, column)));
    }
    boolean isAdded = false;
    for (int i = 0; i < items.size(); i++) {
      isAdded |= add(name + "_" + (i + 1), items.get(i), own, depth + 1);
    }
    return isAdded;
  }

  /** An item of a list as a row; empty if it is none, or is drawn. */
  private static Map<String, Object> rowOf(Object item) {
    Map<String, Object> row = new LinkedHashMap<>();
    if (item instanceof CharSequence || item instanceof Number) {
      row.put("", item);
    } else if (item instanceof Record record && !(item instanceof CourseLayout)) {
      addRow(row, "", record);
    }
    return row;
  }

  private static void addRow(Map<String, Object> row, String before, Record record) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object part = TracedParts.part(component, record);
      String name = before + nameOf(component);
      if (part instanceof Traced traced) {
        row.put(name, traced.refusal().isEmpty() ? traced.shown() : "no value");
      } else if (cellOf(part).isPresent()) {
        row.put(name, part instanceof Number ? part : wordOf(part));
      } else if (part instanceof Iterable<?> || part instanceof Optional<?> || part == null) {
        row.put(name, String.valueOf(part).replaceAll("^(?:\\[|Optional\\[?)|\\]$|^null$", ""));
      } else if (part instanceof Record inner && before.isEmpty()) {
        addRow(row, name + "_", inner);
      } else {
        row.put(name, String.valueOf(part));
      }
    }
  }

  private static String nameOf(RecordComponent component) {
    Column column = component.getAnnotation(Column.class);
    return column == null ? component.getName() : column.value();
  }

  /** The parts of a record; what any other thing of ours tells of itself. */
  private static Map<String, Object> membersOf(Object value) {
    Map<String, Object> members = new LinkedHashMap<>();
    if (value instanceof Record record) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        members.put(nameOf(component), TracedParts.part(component, record));
      }
      return members;
    }
    Arrays.stream(value.getClass().getDeclaredMethods())
        .filter(SavedThings::isTold)
        .sorted(Comparator.comparing(Method::getName))
        .forEach(method -> addTold(members, method.getName(), told(method, value)));
    return members;
  }

  /** What is told by names of its own needs no other. */
  private static void addTold(Map<String, Object> members, String name, Object told) {
    if (told instanceof Map<?, ?> named) {
      named.forEach((own, part) -> members.put(String.valueOf(own), part));
    } else {
      members.put(name, told);
    }
  }

  private static boolean isTold(Method method) {
    Class<?> type = method.getReturnType();
    boolean isShowable =
        Traced.class.isAssignableFrom(type)
            || type == Check.class
            || type == Roll.class
            || type.isRecord()
            || type == List.class
            || type == Map.class;
    return isShowable
        && method.getParameterCount() == 0
        && Modifier.isPublic(method.getModifiers())
        && !Modifier.isStatic(method.getModifiers());
  }

  private static Object told(Method method, Object value) {
    try {
      return method.invoke(value);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
