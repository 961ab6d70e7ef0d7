package sheathwright.catalog;

import java.util.regex.Pattern;
import sheathwright.figure.Lengths;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** Numbers as people type them into a table's cell, read in the unit of the column. */
public final class Numbers {

  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+(\\.\\d*)?");

  private Numbers() {}

  /**
   * The number that a text stands for.
   *
   * @param text a decimal number; {@code 1,408.72}, {@code $38.50} and {@code 5 %} are read where
   *     their unit allows, and fractions of an inch where a length is meant
   * @param unit the unit of the column
   * @return the number in that unit
   * @throws RefusedException if it cannot be read so
   */
  public static double read(String text, Unit<?> unit) {
    String bare = text.strip();
    if (unit.symbol().startsWith("$") && bare.startsWith("$")) {
      bare = bare.substring(1).strip();
    }
    if (unit.equals(Units.PERCENT) && bare.endsWith("%")) {
      bare = bare.substring(0, bare.length() - 1).strip();
    }
    if (GROUPED.matcher(bare).matches()) {
      bare = bare.replace(",", "");
    }
    if (DECIMAL.matcher(bare).matches()) {
      return Double.parseDouble(bare);
    }
    if (unit.equals(Units.INCH)) {
      return Lengths.inches(straightened(bare));
    }
    if (unit.equals(Units.FOOT)) {
      return Lengths.inchesFromFeet(straightened(bare)) / 12;
    }
    throw new RefusedException("\"" + text.strip() + "\" is not a number");
  }

  private static String straightened(String quoted) {
    return quoted.replace('’', '\'').replace('′', '\'').replace('”', '"').replace('″', '"');
  }
}
