package sheathwright.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A published table: rows found by one or more words, columns found by their heading. A look-up is
 * a step like any other: in the workbook it becomes INDEX and MATCH on the table, which is written
 * out beside it.
 *
 * @param name begins the names of its ranges in a workbook: {@code lumber}
 * @param title as it is spoken of: {@code lumber design values}
 * @param keys headings of the leading columns that find a row
 * @param columns headings of the columns that hold values
 * @param rows each row's keys, then its values; a blank is a value that the table does not give
 * @param source body, edition and table
 * @param notes the printed units and footnotes, and every deviation from print
 */
public record Table(
    String name,
    String title,
    List<String> keys,
    List<String> columns,
    List<List<String>> rows,
    Source source,
    List<String> notes) {

  /** The value in a named column of the row that the keys find. */
  public <Q extends Quantity> Figure<Q> number(Unit<Q> unit, String column, OneOf<?>... rowKeys) {
    return numberAt(unit, Choice.literal(column), rowKeys);
  }

  /** The words in a named column of the row that the keys find. */
  public Choice<String> words(String column, OneOf<?>... rowKeys) {
    Step.LookedUp step = lookUp(Choice.literal(column), rowKeys);
    Refusal refusal = refusalBehind(step);
    if (refusal != null) {
      return Choice.lookedUp(null, refusal, step, source);
    }
    Optional<String> cell = cell(plain(step), column);
    return cell.isPresent()
        ? Choice.lookedUp(cell.get(), null, step, source)
        : Choice.lookedUp(null, notHeld(plain(step), column), step, source);
  }

  private int place(String column) {
    return keys.size() + columns.indexOf(column);
  }

  /** The value in a column that is itself chosen. */
  public <Q extends Quantity> Figure<Q> numberAt(
      Unit<Q> unit, OneOf<?> column, OneOf<?>... rowKeys) {
    Step.LookedUp step = lookUp(column.choice(), rowKeys);
    Refusal refusal = refusalBehind(step);
    if (refusal != null) {
      return Figure.lookedUp(0, refusal, unit, step, source);
    }
    List<String> words = plain(step);
    String heading = column.choice().plain();
    Optional<String> value = cell(words, heading);
    return value.isPresent()
        ? Figure.lookedUp(Double.parseDouble(value.get()), null, unit, step, source)
        : Figure.lookedUp(0, notHeld(words, heading), unit, step, source);
  }

  private Step.LookedUp lookUp(Choice<?> column, OneOf<?>... rowKeys) {
    List<Choice<?>> found = new ArrayList<>();
    for (OneOf<?> key : rowKeys) {
      found.add(key.choice());
    }
    return new Step.LookedUp(this, List.copyOf(found), column);
  }

  private static Refusal refusalBehind(Step.LookedUp step) {
    return step.operands().stream().flatMap(key -> key.refusal().stream()).findFirst().orElse(null);
  }

  private static List<String> plain(Step.LookedUp step) {
    return step.rowKeys().stream().map(Choice::plain).toList();
  }

  /** The range of joined row keys in a workbook. */
  public String keyRange() {
    return name + "_key";
  }

  /** The range of one column in a workbook. */
  public String columnRange(String column) {
    return name + "_" + column.replace('-', '_');
  }

  /** The range of all values in a workbook. */
  public String bodyRange() {
    return name + "_body";
  }

  /** The range of the headings of the values in a workbook. */
  public String headRange() {
    return name + "_head";
  }

  private Optional<String> cell(List<String> words, String heading) {
    return rows.stream()
        .filter(row -> columns.contains(heading) && row.subList(0, keys.size()).equals(words))
        .map(row -> row.get(place(heading)))
        .filter(cell -> !cell.isEmpty())
        .findFirst();
  }

  private Refusal notHeld(List<String> words, String heading) {
    int known = 0;
    Set<String> next = nextKeys(words, 0);
    while (known + 1 < words.size() && next.contains(words.get(known))) {
      known++;
      next = nextKeys(words, known);
    }
    String where = known == 0 ? "" : " under " + String.join(", ", words.subList(0, known));
    // Where the row itself is missing, every column of it is refused in the same words.
    boolean hasTheRow = rows.stream().anyMatch(row -> row.subList(0, keys.size()).equals(words));
    return new Refusal(
        "%s hold nothing for %s%s (%s); they hold%s: %s"
            .formatted(
                title,
                String.join(", ", words),
                hasTheRow ? " at " + heading : "",
                source,
                where,
                String.join(", ", next)));
  }

  private Set<String> nextKeys(List<String> words, int known) {
    Set<String> next = new LinkedHashSet<>();
    for (List<String> row : rows) {
      if (Objects.equals(row.subList(0, known), words.subList(0, known))) {
        next.add(row.get(known));
      }
    }
    return next;
  }
}
