package sheathwright.workbook.paper;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;

/** Values as a reader reads them from a tape or a stamp. */
final class Spoken {

  /** Panels are stamped in parts of 32. */
  private static final int PARTS = 32;

  private static final Pattern DECIMAL = Pattern.compile("[0-9]+(\\.[0-9]+)?");

  private static final Pattern CODE = Pattern.compile("([a-z]{3})-([0-9]{4})");

  private Spoken() {}

  /** A length in inches and their parts, a count as a bare number, all else as it is shown. */
  static String of(Traced value) {
    if (!(value instanceof Figure<?> figure)) {
      return word(value.shown());
    }
    if (figure.unit().equals(Units.INCH)) {
      return Lengths.mixed(Math.round(figure.value() * PARTS), PARTS) + " in";
    }
    return figure.unit().equals(Units.NAILS_PER_SHEET) ? figure.plain() : figure.shown();
  }

  /** A word of a table as people say it: {@code IRC 2018}, {@code 8d common}. */
  static String word(String word) {
    Matcher code = CODE.matcher(word);
    return code.matches()
        ? code.group(1).toUpperCase(Locale.ROOT) + " " + code.group(2)
        : word.contains(" ") ? word : word.replace('-', ' ');
  }

  /** A number as a table has it, with its unit; of inches, in their parts. */
  static String of(String number, String unit) {
    if (unit.equals(Units.INCH.symbol()) && DECIMAL.matcher(number).matches()) {
      return of(Figure.of(Double.parseDouble(number), Units.INCH));
    }
    return number + " " + unit;
  }
}
