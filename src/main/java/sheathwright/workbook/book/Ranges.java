package sheathwright.workbook.book;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellReference;
import sheathwright.figure.Roll;
import sheathwright.figure.Table;

/**
 * The names of one workbook's cells, columns of lists and printed tables, each with the cells that
 * it stands for.
 */
final class Ranges {

  private final Names names = new Names();
  private final DefinedNames defined = new DefinedNames();
  private final Map<Roll, Map<String, String>> lists = new IdentityHashMap<>();

  /** All names, as the workbook's part holds them. */
  DefinedNames defined() {
    return defined;
  }

  /** A cell under a name like the wanted one. */
  Place cell(String wanted, String owner, Tab tab, int row, int column) {
    Place place = new Place(tab.name(), row, column, names.taken(wanted, owner));
    defined.define(place.name(), place.absolute());
    return place;
  }

  /**
   * The name of one column of a list; two lists of one name are told apart, and a list that shows
   * some columns of another bears that one's names.
   */
  String of(Roll roll, String column) {
    return lists.computeIfAbsent(roll.whole(), this::namesOf).get(column);
  }

  private Map<String, String> namesOf(Roll roll) {
    Map<String, String> ranges = new HashMap<>();
    roll.columns().forEach(column -> ranges.put(column, names.taken(roll.range(column), "second")));
    return ranges;
  }

  /** Gives a column of some lines its name. */
  void named(String name, Tab tab, int firstRow, int lastRow, int column) {
    defined.define(name, cells(tab, firstRow, column, lastRow, column));
  }

  /** Names a column of some lines like the wanted name. */
  void column(String wanted, Tab tab, int firstRow, int lastRow, int column) {
    named(names.taken(wanted, "tab"), tab, firstRow, lastRow, column);
  }

  /** Names the first column of some lines, and gives the name that it got. */
  String named(String wanted, Tab tab, int firstRow, int lastRow) {
    String name = names.taken(wanted, "second");
    named(name, tab, firstRow, lastRow, 0);
    return name;
  }

  /** Gives no cell a name that a table's part has, whose look-ups are written by it. */
  void leave(Table table) {
    Stream.concat(
            Stream.of(table.keyRange(), table.bodyRange(), table.headRange()),
            table.columns().stream().map(table::columnRange))
        .forEach(names::leave);
  }

  /** Names the keys, the columns, the body and the headings of a printed table. */
  void named(Table table, Tab tab, int head, int last, int first) {
    define(table.keyRange(), cells(tab, head + 1, 0, last, 0));
    int values = first + table.keys().size();
    int end = values + table.columns().size() - 1;
    for (int i = 0; i < table.columns().size(); i++) {
      String column = table.columnRange(table.columns().get(i));
      define(column, cells(tab, head + 1, values + i, last, values + i));
    }
    define(table.bodyRange(), cells(tab, head + 1, values, last, end));
    define(table.headRange(), cells(tab, head, values, head, end));
  }

  private void define(String range, String cells) {
    defined.define(Names.legal(range), cells);
  }

  private static String cells(Tab tab, int firstRow, int firstColumn, int lastRow, int lastColumn) {
    return "%s!%s:%s"
        .formatted(
            Place.quoted(tab.name()),
            new CellReference(firstRow, firstColumn, true, true).formatAsString(),
            new CellReference(lastRow, lastColumn, true, true).formatAsString());
  }
}
