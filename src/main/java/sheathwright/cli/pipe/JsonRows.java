package sheathwright.cli.pipe;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * An answer as JSON: one array of objects, a line each. Numbers are numbers, all else is text as
 * the tables have it; what is blank there is null.
 */
public final class JsonRows {

  private final Writer out;
  private boolean isBegun;

  /** Rows that go to a writer as they come. */
  public JsonRows(Writer out) {
    this.out = out;
  }

  /** All rows of an answer at once. */
  public static void write(Writer out, Iterable<Map<String, Object>> rows) throws IOException {
    JsonRows json = new JsonRows(out);
    for (Map<String, Object> row : rows) {
      json.add(row);
    }
    json.end();
  }

  /** Writes a row: texts, numbers, and nothing for what is blank, each by its name. */
  public void add(Map<String, Object> row) throws IOException {
    out.write(isBegun ? ",\n" : "[\n");
    isBegun = true;
    out.write(object(row));
  }

  /** Ends the array. */
  public void end() throws IOException {
    out.write(isBegun ? "\n]\n" : "[]\n");
    out.flush();
  }

  private static String object(Map<?, ?> row) {
    return row.entrySet().stream()
        .map(entry -> quoted(String.valueOf(entry.getKey())) + ": " + value(entry.getValue()))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String value(Object value) {
    if (value instanceof BigDecimal number) {
      return number.toPlainString();
    }
    if (value instanceof Map<?, ?> row) {
      return object(row);
    }
    if (value instanceof Iterable<?> many) {
      StringBuilder list = new StringBuilder();
      many.forEach(each -> list.append(list.isEmpty() ? "" : ", ").append(value(each)));
      return "[" + list + "]";
    }
    return value == null || value instanceof Integer || value instanceof Boolean
        ? String.valueOf(value)
        : quoted(String.valueOf(value));
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (char each : text.toCharArray()) {
      switch (each) {
        case '"' -> quoted.append("\\\"");
        case '\\' -> quoted.append("\\\\");
        case '\n' -> quoted.append("\\n");
        case '\r' -> quoted.append("\\r");
        case '\t' -> quoted.append("\\t");
        default -> quoted.append(each < ' ' ? "\\u%04x".formatted((int) each) : each);
      }
    }
    return quoted.append('"').toString();
  }
}
