package sheathwright.life.start;

import static java.util.stream.Collectors.joining;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.TableGuide.Part;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;

/**
 * A table to be filled in: each of its keys or columns is told of in the column of notes, from the
 * fields that read it. A line that holds a note alone is passed over when the table is read.
 */
final class BlankTable {

  private static final String NOTE = "note";
  private static final String SUCH_AS = "such as ";

  private final JobTable table;
  private final Examples examples;
  private final List<List<String>> lines = new ArrayList<>();

  private BlankTable(JobTable table, Examples examples) {
    this.table = table;
    this.examples = examples;
  }

  /**
   * A table of keys.
   *
   * @param parts which of them
   * @param given what is filled in already, by key
   * @param left keys that need not be said
   */
  static BlankTable ofKeys(
      JobTable table,
      List<Part> parts,
      Map<String, String> given,
      Set<Field<?>> left,
      Examples examples) {
    BlankTable blank = new BlankTable(table, examples);
    Keys keys = table.keys().orElseThrow();
    blank.lines.add(List.of(keys.key(), keys.value(), NOTE));
    for (Part part : parts) {
      blank.lines.add(List.of("", "", "-- " + part.when() + " --"));
      for (Field<?> field : part.fields()) {
        if (!left.contains(field)) {
          String value = given.getOrDefault(field.name(), "");
          blank.lines.add(List.of(field.name(), value, blank.note(field)));
        }
      }
    }
    return blank;
  }

  /**
   * A table of columns.
   *
   * @param parts which of them
   * @param begun lines that are begun already, by column
   */
  static BlankTable ofColumns(
      JobTable table, List<Part> parts, List<Map<String, String>> begun, Examples examples) {
    BlankTable blank = new BlankTable(table, examples);
    Map<String, Field<?>> fields = new LinkedHashMap<>();
    parts.forEach(part -> part.fields().forEach(field -> fields.putIfAbsent(field.name(), field)));
    List<String> heading = new ArrayList<>(fields.keySet());
    heading.add(NOTE);
    blank.lines.add(heading);
    begun.forEach(
        line ->
            blank.lines.add(heading.stream().map(name -> line.getOrDefault(name, "")).toList()));
    fields
        .values()
        .forEach(
            field -> {
              List<String> line = new ArrayList<>(Collections.nCopies(fields.size(), ""));
              line.add(field.name() + ": " + blank.note(field));
              blank.lines.add(line);
            });
    return blank;
  }

  /** What it is, what may stand there, an example, and whether it must be given. */
  private String note(Field<?> field) {
    String allowed = field.allowed();
    boolean hasExample = allowed.contains(SUCH_AS);
    String example =
        hasExample ? "" : examples.of(table, field).map(each -> "; " + SUCH_AS + each).orElse("");
    return field.label() + "; " + allowed + example + (field.isRequired() ? "" : "; if known");
  }

  /** The name of its file. */
  String file() {
    return table.file();
  }

  /** The bytes of its file. */
  byte[] bytes() {
    String text =
        lines.stream()
            .map(line -> line.stream().map(BlankTable::cell).collect(joining(",")) + "\n")
            .collect(joining());
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(String text) {
    boolean isPlain = text.chars().noneMatch(each -> each == ',' || each == '"');
    return isPlain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  /** The parts of a table that are for jobs of these kinds. */
  static List<Part> parts(JobTable table, Set<TableGuide.For> jobs) {
    return TableGuide.parts(table).stream().filter(part -> jobs.contains(part.jobs())).toList();
  }
}
