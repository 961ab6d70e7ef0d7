package sheathwright.job.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.catalog.Nearest;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/** Reads the inputs out of a job's tables and gathers everything that is wrong with them. */
public final class TableReader {

  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> questions = new ArrayList<>();

  /** One input read, with what it is called and where it stands. */
  public record Input(Field<?> field, Traced value, CsvFile.Line line) {}

  /**
   * A table of two columns, the first of which names what stands in the second.
   *
   * @param file the table
   * @param keyColumn heading of the first
   * @param valueColumn heading of the second
   * @param prefix begins the names of its cells in a workbook
   * @param suffix ends them
   * @param groups what may stand in it: a group is given whole or, where it is optional, not at all
   */
  public Map<String, Input> keyed(
      CsvFile file,
      String keyColumn,
      String valueColumn,
      String prefix,
      String suffix,
      List<Group> groups) {
    Map<String, Input> inputs = new LinkedHashMap<>();
    headings(file, List.of(keyColumn, valueColumn));
    int key = column(file, keyColumn);
    int value = column(file, valueColumn);
    if (key < 0 || value < 0) {
      return inputs;
    }
    Map<String, CsvFile.Line> given = new LinkedHashMap<>();
    for (CsvFile.Line line : file.lines()) {
      String name = line.cells().get(key).strip();
      Optional<String> tooLong = Field.Form.NAME.tooLong(name);
      if (tooLong.isPresent()) {
        problem(file, line, keyColumn, tooLong.get());
      } else if (given.put(name, line) != null) {
        problem(file, line, keyColumn, "\"" + name + "\" appears twice");
      } else if (groups.stream().noneMatch(group -> group.has(name))) {
        problem(
            file,
            line,
            keyColumn,
            "\"%s\" is not known%s; it must be one of %s"
                .formatted(
                    name, Nearest.asked(name, names(groups)), String.join(", ", names(groups))));
      }
    }
    Set<String> filled = nonBlank(given, value);
    for (Group group : groups) {
      boolean isGiven = group.isGivenIn(filled);
      for (Field<?> field : group.fields()) {
        CsvFile.Line line = given.get(field.name());
        if (filled.contains(field.name())) {
          String cellName = prefix + field.name() + suffix;
          Traced read = read(file, line, valueColumn, field, cellName, line.cells().get(value));
          if (read != null) {
            inputs.put(field.name(), new Input(field, read, line));
          }
          if (!group.needed().isEmpty()) {
            String message =
                "\"%s\" is for %s, which the job has not; add it, or take this line away";
            problem(file, line, keyColumn, message.formatted(field.name(), group.needed()));
          }
        } else if (field.isRequired() && group.isAsked(isGiven)) {
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

  /** A table with a heading for each field; one row for each line. */
  public List<Row> rows(CsvFile file, List<? extends Field<?>> fields) {
    List<Row> rows = new ArrayList<>();
    headings(file, fields.stream().map(Field::name).toList());
    Map<Field<?>, Integer> columns = new LinkedHashMap<>();
    for (Field<?> field : fields) {
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
      rows.add(new Row(line, row));
    }
    if (rows.isEmpty()) {
      problems.add(new Problem(file.name(), 0, "", "it has no lines under its heading"));
    }
    return rows;
  }

  private void headings(CsvFile file, List<String> known) {
    String allowed = "the table has %s and note".formatted(String.join(", ", known));
    problems.addAll(Headings.problems(file, known, Headings::isNote, allowed));
  }

  /** Says what is wrong with a row. */
  public void problem(CsvFile file, Row row, Field<?> field, String message) {
    problem(file, row.line(), field.name(), message);
  }

  public void problem(CsvFile file, CsvFile.Line line, String column, String message) {
    problems.add(new Problem(file.name(), line.number(), column, message));
  }

  public void raiseProblems() {
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }

  /** What was read and is allowed, but is hardly what was meant. */
  public List<Problem> questions() {
    return List.copyOf(questions);
  }

  private Traced read(
      CsvFile file,
      CsvFile.Line line,
      String column,
      Field<?> field,
      String cellName,
      String text) {
    String which = column.equals(field.name()) ? "" : field.name() + ": ";
    try {
      Source source =
          Source.given(new Source.Cell(file.name(), line.number(), column, field.name()));
      String readable = field.form() == Field.Form.NUMBER ? file.readable(text) : text;
      Traced value = field.read(cellName, readable, source);
      field
          .question(text, value)
          .map(question -> new Problem(file.name(), line.number(), column, which + question))
          .ifPresent(questions::add);
      return value;
    } catch (RefusedException wrong) {
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

  private static Set<String> names(List<Group> groups) {
    Set<String> names = new LinkedHashSet<>();
    groups.forEach(group -> group.fields().forEach(field -> names.add(field.name())));
    return names;
  }

  /**
   * Fields that belong together.
   *
   * @param fields the fields
   * @param isRequired whether the job must have them; else all or none
   * @param needed what they speak of, if the job has it not; else empty
   */
  public record Group(List<? extends Field<?>> fields, boolean isRequired, String needed) {

    public Group(List<? extends Field<?>> fields, boolean isRequired) {
      this(fields, isRequired, "");
    }

    /** The same, of no use to a job that has not what they speak of. */
    public Group needing(String what, boolean isThere) {
      return isThere ? this : new Group(fields, isRequired, what);
    }

    boolean has(String name) {
      return fields.stream().anyMatch(field -> field.name().equals(name));
    }

    boolean isGivenIn(Set<String> names) {
      return fields.stream().map(Field::name).anyMatch(names::contains);
    }

    boolean isAsked(boolean isGiven) {
      return needed.isEmpty() && (isRequired || isGiven);
    }
  }
}
