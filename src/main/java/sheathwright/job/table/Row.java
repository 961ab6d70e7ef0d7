package sheathwright.job.table;

import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;

/**
 * One line of a table, read.
 *
 * @param line where it stands
 * @param values by the name of their field; a value that could not be read is null
 */
public record Row(RowSource.Line line, Map<String, Traced> values) {

  /** Whether anything stands in this field. */
  public boolean has(Field<?> field) {
    return values.containsKey(field.name());
  }

  /** What stands in this field; null where nothing does. */
  public <T extends Traced> T of(Field<T> field) {
    return field.as(values.get(field.name()));
  }

  /** What was read of this field; nothing where nothing stands, or nothing that could be read. */
  public <T extends Traced> Optional<T> read(Field<T> field) {
    return Optional.ofNullable(of(field));
  }

  /** The same, or another value where nothing stands there. */
  public <T extends Traced> T or(Field<T> field, T other) {
    return has(field) ? of(field) : other;
  }

  /** The same values as a column of a list. */
  public static Roll.Column<Row> column(Field<?> field) {
    return Roll.column(field.name(), row -> row.of(field));
  }
}
