package sheathwright.figure;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Numbers as people read them, and as tables hold them; text in lines of a width. */
public final class Shown {

  private static final DecimalFormatSymbols POINT = DecimalFormatSymbols.getInstance(Locale.ROOT);

  /** Behind a blank, and before the dot of a further call. */
  private static final Pattern BETWEEN_WORDS = Pattern.compile("(?<= )|(?<=\\))(?=\\.[a-z])");

  private static final Set<String> ABBREVIATED = Set.of("ft", "sq ft", "lb", "h");

  /** The most that any unit has, and what a number below one is shown with in every unit. */
  private static final int FEWEST_BELOW_ONE = 4;

  private Shown() {}

  /**
   * Text with numbers in it, the same whatever language the machine speaks: a pattern that asks for
   * a number's digits stands here, never before {@code formatted}.
   */
  public static String text(String pattern, Object... parts) {
    return String.format(Locale.ROOT, pattern, parts);
  }

  /**
   * With every digit that it takes to read the same number back, and no exponent: {@code
   * 16.770509831248425}.
   */
  public static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** A name in words: {@code edge spacing} for {@code edge_spacing_in}. */
  public static String inWords(String name) {
    return inWords(name, Units.endingOf(name));
  }

  /**
   * Text in lines that go on at a word, or at a dot between two calls.
   *
   * @param width characters in a line; a longer word has a line of its own
   * @param first stands before the first line
   * @param further stands before each further one
   */
  public static List<String> wrapped(String text, int width, String first, String further) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean isBegun = false;
    for (String piece : BETWEEN_WORDS.split(text)) {
      if (isBegun && line.length() + piece.stripTrailing().length() > width) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(further);
      }
      line.append(piece);
      isBegun = true;
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }

  static String inWords(String name, Unit<?> unit) {
    String suffix = "_" + unit.suffix();
    String bare = name.endsWith(suffix) ? name.substring(0, name.length() - suffix.length()) : name;
    return bare.replace('_', ' ');
  }

  /**
   * A number with its unit: {@code 65 sheets}, {@code $117.00}, {@code 16' 9-1/4"}, {@code 20.67
   * lb/in}.
   */
  public static String with(Unit<?> unit, double number) {
    if (unit.equals(Units.FOOT)) {
      return Lengths.inFeetAndInches(number * 12);
    }
    if (unit.equals(Units.INCH) && Lengths.isSixteenths(number)) {
      return Lengths.inInches(number) + " in";
    }
    if (unit.symbol().startsWith("$")) {
      double rounded = Rounding.halfUp(number, unit.decimals());
      return (rounded < 0 ? "-$" : "$")
          + format("#,##0.00##", Math.abs(rounded))
          + unit.symbol().substring(1);
    }
    String digits = grouped(number, unit.decimals());
    return unit.isCount()
        ? counted(digits, unit.symbol())
        : digits + separator(unit) + unit.symbol();
  }

  /**
   * So many of a thing: {@code 1 place}, {@code 1.5 sheets}.
   *
   * @param one what one of them is called; its plural ends with an s
   */
  public static String counted(double number, String one) {
    return counted(plain(number), one);
  }

  private static String counted(String digits, String one) {
    return digits + " " + many(digits, one);
  }

  /** What so many are called, beside their number; an abbreviation stays. */
  public static String many(double number, String one) {
    return ABBREVIATED.contains(one) ? one : many(plain(number), one);
  }

  private static String many(String digits, String one) {
    return one + (digits.equals("1") ? "" : "s");
  }

  private static String separator(Unit<?> unit) {
    return unit.symbol().isEmpty() ? "" : " ";
  }

  /** To the unit's decimals; what is less than one to four, so that something is left of it. */
  private static String grouped(double number, int decimals) {
    int shown = Math.abs(number) < 1 ? FEWEST_BELOW_ONE : decimals;
    return format("#,##0.####", Rounding.halfUp(number, shown));
  }

  private static String format(String pattern, double rounded) {
    return new DecimalFormat(pattern, POINT).format(rounded);
  }
}
