package sheathwright.repl.show;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.OneOf;
import sheathwright.figure.Traced;

/**
 * The traced values that something holds: itself, a check's ratio, or the columns of a function's
 * answer.
 */
public final class TracedParts {

  private TracedParts() {}

  public static List<Traced> of(Object result) {
    return List.copyOf(named(Map.of("", result)).values());
  }

  /** Each under its variable's name; the parts of an answer under the variable's and their own. */
  public static Map<String, Traced> named(Map<String, Object> variables) {
    Map<String, Traced> named = new LinkedHashMap<>();
    variables.forEach((name, value) -> add(named, name, value));
    return named;
  }

  private static void add(Map<String, Traced> named, String name, Object value) {
    if (value instanceof Traced traced) {
      named.put(name, traced);
    } else if (value instanceof OneOf<?> word) {
      named.put(name, word.choice());
    } else if (value instanceof Check check) {
      named.put(name, check.ratio());
    } else if (value instanceof Record results) {
      for (RecordComponent component : results.getClass().getRecordComponents()) {
        Column column = component.getAnnotation(Column.class);
        if (column != null) {
          add(named, name + "_" + column.value(), part(component, results));
        }
      }
    } else if (value instanceof List<?> many) {
      List<Object> items = new ArrayList<>(many);
      for (int i = 0; i < items.size(); i++) {
        add(named, name + "_" + (i + 1), items.get(i));
      }
    }
  }

  public static Object part(RecordComponent component, Record results) {
    try {
      Method accessor = component.getAccessor();
      accessor.setAccessible(true); // the record may be one that only its own folder knows
      return accessor.invoke(results);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
