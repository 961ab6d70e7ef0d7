package sheathwright.figure;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * A list of like things, each with the same columns: the planes of a roof, the lines of a quote. In
 * a workbook it is a table with one row-relative formula a column; a column brought down to one
 * number is a SUM, MAX or MIN of its range.
 */
public final class Roll {

  /** One column: its heading, and what stands in it for each item. */
  public record Column<T>(String name, Function<T, Traced> cell) {}

  private final String name;
  private final String title;
  private final List<String> columns;
  private final List<List<Traced>> rows;
  private final Roll whole;

  private Roll(
      String name, String title, List<String> columns, List<List<Traced>> rows, Roll whole) {
    this.whole = whole == null ? this : whole;
    this.name = name;
    this.title = title;
    this.columns = columns;
    this.rows = rows;
  }

  /**
   * A roll of items.
   *
   * @param name begins the names of its ranges in a workbook: {@code planes}
   * @param title as it is spoken of: {@code the roof planes}
   */
  @SafeVarargs
  @SuppressWarnings("varargs") // handed on as a list, and never written to
  public static <T> Roll of(String name, String title, List<T> items, Column<T>... columns) {
    return of(name, title, items, Arrays.asList(columns));
  }

  /** A roll of items whose columns are made up as it comes. */
  public static <T> Roll of(String name, String title, List<T> items, List<Column<T>> columns) {
    return new Roll(
        name,
        title,
        columns.stream().map(Column::name).toList(),
        items.stream()
            .map(item -> columns.stream().map(column -> column.cell().apply(item)).toList())
            .toList(),
        null);
  }

  /** A column of a roll. */
  public static <T> Column<T> column(String name, Function<T, Traced> cell) {
    return new Column<>(name, cell);
  }

  /** The same list with some of its columns. */
  public Roll only(List<String> kept) {
    List<Integer> places = kept.stream().map(columns::indexOf).toList();
    return new Roll(
        name,
        title,
        List.copyOf(kept),
        rows.stream().map(row -> places.stream().map(row::get).toList()).toList(),
        whole);
  }

  /** The list that this one shows some columns of; itself, if it shows all. */
  public Roll whole() {
    return whole;
  }

  /** A column brought down to one number. */
  public <Q extends Quantity> Figure<Q> gathered(Gather how, String column, Unit<Q> unit) {
    Step.Gathered step = new Step.Gathered(how, this, column);
    double all =
        how == Gather.SUM || rows.isEmpty() ? 0 : ((Figure<?>) cellsOf(column).get(0)).number();
    for (Traced cell : cellsOf(column)) {
      Figure<?> figure = (Figure<?>) cell;
      if (!figure.unit().equals(unit)) {
        throw new RefusedException(
            "column %s of %s is in %s and cannot be gathered in %s"
                .formatted(column, name, figure.unit(), unit));
      }
      if (figure.refusal().isPresent()) {
        return Figure.gathered(0, figure.refusal().get(), unit, step);
      }
      all = how.both(all, figure.number());
    }
    return Figure.gathered(all, null, unit, step);
  }

  /** The sum of a column. */
  public <Q extends Quantity> Figure<Q> sum(String column, Unit<Q> unit) {
    return gathered(Gather.SUM, column, unit);
  }

  public String name() {
    return name;
  }

  public String title() {
    return title;
  }

  public List<String> columns() {
    return columns;
  }

  /** The rows, each with one cell a column. */
  public List<List<Traced>> rows() {
    return rows;
  }

  /** One column's cells, from the first row to the last. */
  public List<Traced> cellsOf(String column) {
    int index = columns.indexOf(column);
    return rows.stream().map(row -> row.get(index)).toList();
  }

  /** The range of one column in a workbook. */
  public String range(String column) {
    return name + "_" + column;
  }
}
