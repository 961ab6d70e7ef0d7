package sheathwright.catalog;

import java.text.Normalizer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
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

  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:(\\d+)(?:\\s*-\\s*|\\s+))?(\\d+)\\s*/\\s*(\\d+)");

  /** A fraction that a phone made one character of, and the digit before it. */
  private static final Pattern PRINTED = Pattern.compile("(\\d?)([¼-¾⅐-⅞])");

  private Numbers() {}

  /**
   * The number that a text stands for.
   *
   * @param text a decimal number or a fraction, {@code 1/60} or {@code 3 1/2}; {@code 1,408.72},
   *     {@code $38.50} and {@code 5 %} are read where their unit allows, and feet with inches where
   *     a length is meant
   * @param unit the unit of the column
   * @return the number in that unit
   * @throws RefusedException if it cannot be read so
   */
  public static double read(String text, Unit<?> unit) {
    String bare = PRINTED.matcher(text.strip()).replaceAll(Numbers::typed);
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
    Matcher fraction = FRACTION.matcher(bare);
    if (fraction.matches()) {
      return fraction(fraction, text.strip());
    }
    throw new RefusedException("\"" + text.strip() + "\" is not a number");
  }

  /** A fraction, behind a whole number or alone. */
  private static double fraction(Matcher fraction, String text) {
    boolean isMixed = fraction.group(2) != null;
    double whole = isMixed ? Double.parseDouble(fraction.group(2)) : 0;
    double part = Double.parseDouble(fraction.group(3));
    double parts = Double.parseDouble(fraction.group(4));
    if (parts == 0 || isMixed && part >= parts) {
      throw new RefusedException(
          "\"%s\" is not a number: %s"
              .formatted(
                  text,
                  parts == 0
                      ? "nothing is divided by 0"
                      : "a fraction behind a whole number is less than one, such as 3 1/2"));
    }
    double number = whole + part / parts;
    return fraction.group(1).equals("-") ? -number : number;
  }

  private static String typed(MatchResult printed) {
    String fraction =
        Normalizer.normalize(printed.group(2), Normalizer.Form.NFKC).replace('\u2044', '/');
    return printed.group(1).isEmpty() ? fraction : printed.group(1) + " " + fraction;
  }

  private static String straightened(String quoted) {
    return quoted.replace('’', '\'').replace('′', '\'').replace('”', '"').replace('″', '"');
  }
}
