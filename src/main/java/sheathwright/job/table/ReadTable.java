package sheathwright.job.table;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheathwright.catalog.Nearest;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;

/** A table of many lines as it was read, and where what is wrong with its lines is said. */
public final class ReadTable {

  /** More names than this are not looked through. */
  private static final int MOST_NAMED = 12;

  private final TableReader reader;
  private final String name;
  private final Optional<RowSource> file;
  private final List<Row> rows;

  private ReadTable(TableReader reader, String name, Optional<RowSource> file, List<Row> rows) {
    this.reader = reader;
    this.name = name;
    this.file = file;
    this.rows = rows;
  }

  static ReadTable of(TableReader reader, RowSource file, List<Row> rows) {
    return new ReadTable(reader, file.name(), Optional.of(file), rows);
  }

  /** One that the job has not: it has no lines. */
  static ReadTable absent(TableReader reader, String name) {
    return new ReadTable(reader, name, Optional.empty(), List.of());
  }

  /** What it is called in messages. */
  public String name() {
    return name;
  }

  /** Whether the job has it. */
  public boolean isThere() {
    return file.isPresent();
  }

  /** Whether nothing is wrong with it, as far as was looked. */
  public boolean isSound() {
    return reader.isSound(name);
  }

  /** Its lines. */
  public List<Row> rows() {
    return rows;
  }

  /** What its lines are called, in their order. */
  public Set<String> names(Field<Choice<String>> field) {
    Set<String> names = new LinkedHashSet<>();
    rows.forEach(row -> row.read(field).ifPresent(each -> names.add(each.value())));
    return names;
  }

  /** What is wrong with a line, to be said by whoever asks. */
  public Problem said(Row row, Field<?> field, String message) {
    return TableReader.said(file.orElseThrow(), row.line(), field.name(), message);
  }

  /**
   * A text of a line that may be a number, to be read as this table writes its numbers.
   *
   * @throws sheathwright.figure.RefusedException if it could be one number or another
   */
  public TypedCell typed(Row row, Field<Choice<String>> field) {
    return file.orElseThrow().typed(field.name(), row.of(field).value());
  }

  /** Says what is wrong with a line. */
  public void problem(Row row, Field<?> field, String message) {
    reader.problem(file.orElseThrow(), row, field, message);
  }

  /** Says what is wrong with the table as a whole. */
  public void problem(String message) {
    reader.problem(name, message);
  }

  /** Asks about a line what is allowed, but hardly meant. */
  public void question(Row row, Field<?> field, String message) {
    reader.question(file.orElseThrow(), row, field, message);
  }

  /**
   * Says that a number of a line is more than another beside it.
   *
   * @param why it may not be
   */
  public <Q extends Quantity> void atMost(
      Row row, Field<Figure<Q>> less, Field<Figure<Q>> more, String why) {
    Optional<Figure<Q>> one = row.read(less);
    Optional<Figure<Q>> other = row.read(more);
    if (one.isPresent() && other.isPresent() && one.get().value() > other.get().value()) {
      String message = "%s is given, but %s is %s; %s: give at most that";
      problem(
          row, less, message.formatted(one.get().plain(), more.name(), other.get().plain(), why));
    }
  }

  /** Says which lines are called as one before them. */
  public void once(Field<Choice<String>> field) {
    Set<String> seen = new HashSet<>();
    for (Row row : rows) {
      Optional<Choice<String>> name = row.read(field);
      if (name.isPresent() && !seen.add(name.get().value())) {
        String message = "\"%s\" appears twice; give each %s one line";
        problem(row, field, message.formatted(name.get().value(), field.name()));
      }
    }
  }

  /**
   * Says which lines name something that another table has not. Where nothing of that could be
   * read, nobody knows.
   *
   * @param word what such a line is: {@code a plane}
   */
  public void known(
      Field<Choice<String>> field, String word, ReadTable other, Field<Choice<String>> named) {
    for (Row row : rows) {
      row.read(field)
          .flatMap(given -> other.unknown(given.value(), word, named))
          .ifPresent(message -> problem(row, field, message));
    }
  }

  /** That no line of this table has a name, with what it could be; nothing where one has it. */
  public Optional<String> unknown(String given, String word, Field<Choice<String>> named) {
    Set<String> known = names(named);
    boolean isUnclear = known.isEmpty() && isThere() && !isSound();
    if (isUnclear || known.contains(given)) {
      return Optional.empty();
    }
    String has =
        known.isEmpty()
            ? "; it has none: add it, or take this out"
            : known.size() <= MOST_NAMED
                ? "; it has " + String.join(", ", known)
                : "%s; it has %s others, such as %s"
                    .formatted(Nearest.asked(given, known), known.size(), known.iterator().next());
    return Optional.of("\"%s\" is not %s of %s%s".formatted(given, word, name, has));
  }
}
