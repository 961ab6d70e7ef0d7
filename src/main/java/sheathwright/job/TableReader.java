package sheathwright.job;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.TableCell;
import sheathwright.figure.Traced;

/** Reads the inputs out of a job's tables and gathers everything that is wrong with them. */
final class TableReader {

  private final List<Problem> problems = new ArrayList<>();

  /** One input read, with what it is called and where it stands. */
  record Input(Field field, Traced value, CsvFile.Line line) {}

  /**
   * A table of two columns, the first of which names what stands in the second.
   *
   * @param file the table
   * @param keyColumn heading of the first
   * @param valueColumn heading of the second; further columns are notes
   * @param prefix begins the names of its cells in a workbook
   * @param suffix ends them
   * @param groups what may stand in it: a group is given whole or, where it is optional, not at all
   */
  Map<String, Input> keyed(
      CsvFile file,
      String keyColumn,
      String valueColumn,
      String prefix,
      String suffix,
      List<Group> groups) {
    Map<String, Input> inputs = new LinkedHashMap<>();
    int key = column(file, keyColumn);
    int value = column(file, valueColumn);
    if (key < 0 || value < 0) {
      return inputs;
    }
    Map<String, CsvFile.Line> given = new LinkedHashMap<>();
    for (CsvFile.Line line : file.lines()) {
      String name = line.cells().get(key).strip();
      if (given.put(name, line) != null) {
        problem(file, line, keyColumn, "\"" + name + "\" stands twice");
      } else if (groups.stream().noneMatch(group -> group.field(name) != null)) {
        problem(
            file,
            line,
            keyColumn,
            "\"%s\" is not known; it must be one of %s".formatted(name, names(groups)));
      }
    }
    for (Group group : groups) {
      boolean asked = group.isRequired() || group.isGivenIn(nonBlank(given, value));
      for (Field field : group.fields()) {
        CsvFile.Line line = given.get(field.name());
        String text = line == null ? "" : line.cells().get(value);
        if (!text.isBlank()) {
          String cellName = prefix + field.name() + suffix;
          Traced read = read(file, line, valueColumn, field, cellName, text);
          if (read != null) {
            inputs.put(field.name(), new Input(field, read, line));
          }
        } else if (asked && field.isRequired()) {
          problems.add(
              new Problem(
                  file.name(),
                  line == null ? 0 : line.number(),
                  line == null ? "" : valueColumn,
                  "%s is missing: %s".formatted(field.name(), field.label())));
        }
      }
    }
    return inputs;
  }

  private static Set<String> nonBlank(Map<String, CsvFile.Line> given, int value) {
    Set<String> names = new LinkedHashSet<>();
    given.forEach(
        (name, line) -> {
          if (!line.cells().get(value).isBlank()) {
            names.add(name);
          }
        });
    return names;
  }

  /** A table with a heading for each field; one map for each line. */
  List<Map<String, Traced>> rows(CsvFile file, String table, List<Field> fields) {
    List<Map<String, Traced>> rows = new ArrayList<>();
    Set<String> headings = new LinkedHashSet<>();
    for (String heading : file.header()) {
      if (!heading.isEmpty() && !headings.add(heading)) {
        problems.add(new Problem(file.name(), 1, heading, "this column stands twice"));
      }
      boolean known = fields.stream().anyMatch(field -> field.name().equals(heading));
      if (!known && !heading.equals("note")) {
        problems.add(
            new Problem(
                file.name(),
                1,
                heading,
                "this column is not known; the table has %s and note"
                    .formatted(fields.stream().map(Field::name).collect(joining(", ")))));
      }
    }
    Map<Field, Integer> columns = new LinkedHashMap<>();
    for (Field field : fields) {
      if (field.isRequired() || file.header().contains(field.name())) {
        columns.put(field, column(file, field.name()));
      }
    }
    if (columns.containsValue(-1)) {
      return rows;
    }
    for (CsvFile.Line line : file.lines()) {
      Map<String, Traced> row = new LinkedHashMap<>();
      columns.forEach(
          (field, column) -> {
            String text = line.cells().get(column);
            if (text.isBlank() && field.isRequired()) {
              problem(file, line, field.name(), "it is empty: " + field.label());
            } else if (!text.isBlank()) {
              row.put(field.name(), read(file, line, field.name(), field, field.name(), text));
            }
          });
      rows.add(row);
    }
    if (rows.isEmpty()) {
      problems.add(new Problem(file.name(), 0, "", "it has no lines under its heading"));
    }
    return rows;
  }

  void problem(CsvFile file, CsvFile.Line line, String column, String message) {
    problems.add(new Problem(file.name(), line.number(), column, message));
  }

  void raiseProblems() {
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }

  private Traced read(
      CsvFile file, CsvFile.Line line, String column, Field field, String cellName, String text) {
    try {
      Source source = Source.given(new TableCell(file.name(), line.number(), column, field.name()));
      return field.read(cellName, file.readable(text), source);
    } catch (RefusedException wrong) {
      String which = column.equals(field.name()) ? "" : field.name() + ": ";
      problem(file, line, column, which + wrong.getMessage());
      return null;
    }
  }

  private int column(CsvFile file, String heading) {
    int column = file.header().indexOf(heading);
    if (column < 0) {
      problems.add(
          new Problem(
              file.name(),
              1,
              heading,
              "this column is missing; the file has " + String.join(", ", file.header())));
    }
    return column;
  }

  private static String names(List<Group> groups) {
    Set<String> names = new LinkedHashSet<>();
    groups.forEach(group -> group.fields().forEach(field -> names.add(field.name())));
    return String.join(", ", names);
  }

  /**
   * Fields that belong together.
   *
   * @param fields the fields
   * @param isRequired whether the job must have them; else all or none
   */
  record Group(List<Field> fields, boolean isRequired) {

    Field field(String name) {
      return fields.stream().filter(field -> field.name().equals(name)).findFirst().orElse(null);
    }

    boolean isGivenIn(Set<String> names) {
      return fields.stream().map(Field::name).anyMatch(names::contains);
    }
  }
}
