package sheathwright.cell;

import com.sun.star.uno.AnyConverter;
import java.util.Arrays;
import sheathwright.job.cell.CellCall;

/** What a spreadsheet program hands over, as the library takes it. */
final class Cells {

  private Cells() {}

  /** The one result of a function. */
  static Object one(String function, Object... values) {
    return CellCall.results(function, taken(values))[0];
  }

  /** The results of a function, in a row. */
  static Object[][] row(String function, Object... values) {
    return new Object[][] {CellCall.results(function, taken(values))};
  }

  /** How they are worked out. */
  static String working(String function, Object... values) {
    return CellCall.working(function, taken(values));
  }

  /** A function filled down a table. */
  static Object[][] table(String function, Object[][] rows) {
    return CellCall.table(function, Arrays.stream(rows).map(Cells::taken).toArray(Object[][]::new));
  }

  private static Object[] taken(Object[] values) {
    return Arrays.stream(values).map(Cells::taken).toArray();
  }

  /** A value left out is void, also in a range. */
  private static Object taken(Object value) {
    if (value == null || AnyConverter.isVoid(value)) {
      return null;
    }
    return value instanceof Object[] range ? taken(range) : value;
  }
}
