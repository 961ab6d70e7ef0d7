package sheathwright.job.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/** Reads the inputs out of a job's tables and gathers everything that is wrong with them. */
public final class TableReader {

  private static final String NOTE = "note";

  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> questions = new ArrayList<>();
  private final Map<Source.Cell, Traced> inputs = new LinkedHashMap<>();

  /** One input read, with what it is called and where it stands. */
  public record Input(Field<?> field, Traced value, RowSource.Line line) {}

  /**
   * A table of two columns, the first of which names what stands in the second.
   *
   * @param file the table
   * @param keys its headings
   * @param prefix begins the names of its cells in a workbook
   * @param suffix ends them
   * @param groups what may stand in it: a group is given whole or, where it is optional, not at all
   * @param moved what stood in it once, each with where it belongs now
   */
  public Map<String, Input> keyed(
      RowSource file,
      Keys keys,
      String prefix,
      String suffix,
      List<Group> groups,
      Map<String, String> moved) {
    Map<String, Input> inputs = new LinkedHashMap<>();
    String keyColumn = keys.key();
    String valueColumn = keys.value();
    List<String> both = List.of(keyColumn, valueColumn);
    TableColumns columns = columns(file, Meant.of(both), both, TableColumns::isNote, NOTE);
    if (columns.lacksAny()) {
      return inputs;
    }
    Map<String, RowSource.Line> given = new LinkedHashMap<>();
    Meant known = Meant.of(groups.stream().flatMap(group -> group.fields().stream()).toList());
    Set<String> meant = new HashSet<>();
    for (RowSource.Line line : file.lines()) {
      String name = columns.cell(line, keyColumn).strip();
      Optional<String> tooLong = Field.Form.NAME.tooLong(name);
      if (tooLong.isPresent()) {
        problem(file, line, keyColumn, tooLong.get());
      } else if (given.put(name, line) != null) {
        problem(file, line, keyColumn, "\"" + name + "\" appears twice");
      } else if (moved.containsKey(name)) {
        String message = "\"%s\" no longer stands here: %s; delete this line";
        problem(file, line, keyColumn, message.formatted(name, moved.get(name)));
      } else if (groups.stream().noneMatch(group -> group.has(name))) {
        known.nearest(name).ifPresent(meant::add);
        String instead = known.said(name, file.name(), "it must be one of", "");
        problem(file, line, keyColumn, "\"%s\" is not known%s".formatted(name, instead));
      }
    }
    Set<String> filled = new LinkedHashSet<>(given.keySet());
    filled.removeIf(name -> columns.cell(given.get(name), valueColumn).isBlank());
    for (Group group : groups) {
      boolean isGiven = group.isGivenIn(filled);
      if (isGiven && !group.needed().isEmpty()) {
        wanting(file, keyColumn, group, given, filled);
      }
      for (Field<?> field : group.fields()) {
        RowSource.Line line = given.get(field.name());
        if (filled.contains(field.name())) {
          String cellName = prefix + field.name() + suffix;
          Traced read =
              read(file, line, valueColumn, field, cellName, columns.cell(line, valueColumn));
          if (read != null) {
            inputs.put(field.name(), new Input(field, read, line));
          }
        } else if (field.isRequired() && group.isAsked(isGiven)) {
          if (line == null && !meant.contains(field.name())) {
            String message = "%s is missing: %s".formatted(field.name(), field.label());
            problem(file, message);
          } else if (line != null) {
            read(file, line, valueColumn, field, field.name(), "");
          }
        }
      }
    }
    return inputs;
  }

  /** What speaks of something that the job has not, in one line, where the first of it stands. */
  private void wanting(
      RowSource file,
      String keyColumn,
      Group group,
      Map<String, RowSource.Line> given,
      Set<String> filled) {
    List<String> names = group.fields().stream().map(Field::name).filter(filled::contains).toList();
    boolean isOne = names.size() == 1;
    String message = "\"%s\"%s for %s, which this job does not have; add it, or delete %s";
    problem(
        file,
        given.get(names.get(0)),
        keyColumn,
        message.formatted(
            names.get(0),
            isOne
                ? " is"
                : " and %s more (%s) are"
                    .formatted(names.size() - 1, String.join(", ", names.subList(1, names.size()))),
            group.needed(),
            isOne ? "this line" : "these lines"));
  }

  /** The same, to be asked for what it says. */
  public KeyedTable keyedTable(
      RowSource file,
      Keys keys,
      String prefix,
      String suffix,
      List<Group> groups,
      Map<String, String> moved) {
    return new KeyedTable(this, file, keys, keyed(file, keys, prefix, suffix, groups, moved));
  }

  /**
   * A table with a heading for each field, if the job has it.
   *
   * @param name what it is called
   * @param mayBeEmpty whether its heading alone says enough: that there is nothing
   */
  public ReadTable table(
      String name,
      Optional<? extends RowSource> file,
      List<? extends Field<?>> fields,
      boolean mayBeEmpty) {
    return file.map(
            there ->
                ReadTable.of(
                    this,
                    there,
                    mayBeEmpty && there.lines().isEmpty()
                        ? headed(there, fields)
                        : rows(there, fields)))
        .orElseGet(() -> ReadTable.absent(this, name));
  }

  /** No rows, from a table of headings only, whose columns are looked at all the same. */
  private List<Row> headed(RowSource file, List<? extends Field<?>> fields) {
    columns(file, fields, TableColumns::isNote, NOTE);
    return List.of();
  }

  /** A table with a heading for each field, and others that are somebody else's. */
  public ReadTable widerTable(RowSource file, List<? extends Field<?>> fields) {
    return ReadTable.of(this, file, rows(file, fields, heading -> true, "any other"));
  }

  /** A table with a heading for each field; one row for each line. */
  public List<Row> rows(RowSource file, List<? extends Field<?>> fields) {
    return rows(file, fields, TableColumns::isNote, NOTE);
  }

  /**
   * The same.
   *
   * @param isLeftAlone which other headings may stand there
   * @param others what those are, in words
   */
  public List<Row> rows(
      RowSource file,
      List<? extends Field<?>> fields,
      Predicate<String> isLeftAlone,
      String others) {
    List<Row> rows = new ArrayList<>();
    TableColumns columns = columns(file, fields, isLeftAlone, others);
    if (columns.lacksAny()) {
      return rows;
    }
    for (RowSource.Line line : file.lines()) {
      Map<String, Traced> row = new LinkedHashMap<>();
      for (Field<?> field : fields) {
        String text = columns.cell(line, field.name());
        if (!text.isBlank()) {
          row.put(field.name(), read(file, line, field.name(), field, field.name(), text));
        } else if (field.isRequired()) {
          read(file, line, field.name(), field, field.name(), text);
        }
      }
      rows.add(new Row(line, row));
    }
    if (rows.isEmpty()) {
      problem(file, "it has no lines under its heading");
    }
    return rows;
  }

  private TableColumns columns(
      RowSource file,
      List<? extends Field<?>> fields,
      Predicate<String> isLeftAlone,
      String others) {
    return columns(
        file,
        Meant.of(fields),
        fields.stream().filter(Field::isRequired).map(Field::name).toList(),
        isLeftAlone,
        others);
  }

  private TableColumns columns(
      RowSource file,
      Meant known,
      List<String> required,
      Predicate<String> isLeftAlone,
      String others) {
    TableColumns columns = TableColumns.of(file, known, required, isLeftAlone, "the table", others);
    problems.addAll(columns.unknown());
    problems.addAll(columns.missing());
    questions.addAll(file.questions());
    return columns;
  }

  /** Says what is wrong with a row. */
  public void problem(RowSource file, Row row, Field<?> field, String message) {
    problem(file, row.line(), field.name(), message);
  }

  public void problem(RowSource file, RowSource.Line line, String column, String message) {
    problem(said(file, line, column, message));
  }

  void problem(Problem problem) {
    problems.add(problem);
  }

  static Problem said(RowSource file, RowSource.Line line, String column, String message) {
    String heading = file.heading(line, column);
    return file.problem(line.number(), heading, TypedCell.under(heading, message));
  }

  /** A problem of the table as a whole. */
  public void problem(RowSource file, String message) {
    problems.add(new Problem(file.name(), file.place(), "", message));
  }

  /** A problem of a table that may not be there. */
  public void problem(String name, String message) {
    problems.add(new Problem(name, 0, "", message));
  }

  void question(Problem question) {
    questions.add(question);
  }

  /** Asks about a row what is allowed, but hardly meant. */
  void question(RowSource file, Row row, Field<?> field, String message) {
    questions.add(said(file, row.line(), field.name(), message));
  }

  /** Whether nothing is wrong with a table, as far as was looked. */
  boolean isSound(String name) {
    return problems.stream().noneMatch(problem -> problem.file().equals(name));
  }

  /** Whether anything is wrong, as far as was looked. */
  public boolean hasProblems() {
    return !problems.isEmpty();
  }

  /**
   * Refuses the tables if anything is wrong with them.
   *
   * @param further what was found to be wrong elsewhere
   */
  public void raiseProblems(Collection<Problem> further) {
    Set<Problem> all = new LinkedHashSet<>(problems);
    all.addAll(further);
    if (!all.isEmpty()) {
      throw new ProblemsException(Problem.inOrder(all));
    }
  }

  public void raiseProblems() {
    raiseProblems(List.of());
  }

  /** Every value that was read, by the cell that it was read from. */
  public Map<Source.Cell, Traced> inputs() {
    return Collections.unmodifiableMap(inputs);
  }

  /** What was read and is allowed, but is hardly what was meant. */
  public List<Problem> questions() {
    return List.copyOf(questions);
  }

  private Traced read(
      RowSource file,
      RowSource.Line line,
      String column,
      Field<?> field,
      String cellName,
      String text) {
    try {
      Source.Cell cell =
          new Source.Cell(file.name(), line.number(), file.heading(line, column), field.name());
      Source source = Source.given(cell);
      boolean isNumber = field.form() == Field.Form.NUMBER;
      String readable = isNumber ? file.typed(field.name(), text).text() : text;
      Traced value = field.read(cellName, readable, source);
      inputs.put(cell, value);
      field
          .question(text, value)
          .map(question -> said(file, line, column, field.name() + ": " + question))
          .ifPresent(questions::add);
      return value;
    } catch (RefusedException wrong) {
      problem(file, line, column, wrong.getMessage());
      return null;
    }
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
