package sheathwright.figure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as tradesmen write them: {@code 1-3/8}, {@code 9 1/4"}, {@code 16-9 1/4}, {@code 16'
 * 9-1/4"}, {@code 13.5}.
 */
public final class Lengths {

  private static final String INCHES = "(\\d+(?:\\.\\d+)?)|(?:(\\d+)[- ])?(\\d+)/(\\d+)";
  private static final Pattern INCHES_ALONE = Pattern.compile("(?:" + INCHES + ")\\s*(?:\"|in)?");
  private static final Pattern FEET_MARKED =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:'|ft)(?:[- ]*(?:" + INCHES + ")\\s*(?:\"|in)?)?");
  private static final Pattern FEET_DASH_INCHES =
      Pattern.compile("(\\d+)-(?:(\\d+(?:\\.\\d+)?)|(\\d+)[- ](\\d+)/(\\d+))\"?");
  private static final Pattern DECIMAL = Pattern.compile("\\d+(?:\\.\\d+)?|\\.\\d+");
  private static final Pattern BARE_FRACTION = Pattern.compile("(?:\\d+[- ])?\\d+/\\d+");
  private static final int SIXTEENTHS = 16;

  /** The finest part of an inch that a panel is printed in, and how near to it one is meant. */
  private static final int FINEST = 32;

  private static final double HAIR = 1e-6;

  private Lengths() {}

  /**
   * Inches from text that stands where inches are meant.
   *
   * @param text {@code 1-3/8}, {@code 1 3/8}, {@code 3/8}, {@code 13.5}, {@code 16' 9-1/4"}; may
   *     start with a minus
   * @return inches
   * @throws RefusedException if it reads as none of these
   */
  public static double inches(String text) {
    String plain = text.strip();
    if (plain.startsWith("-")) {
      return -unsignedInches(plain.substring(1).strip(), text);
    }
    return unsignedInches(plain, text);
  }

  private static double unsignedInches(String plain, String text) {
    Matcher alone = INCHES_ALONE.matcher(plain);
    if (alone.matches()) {
      return inchesIn(alone, 1, text);
    }
    Matcher marked = FEET_MARKED.matcher(plain);
    if (marked.matches()) {
      return markedFeet(marked, text);
    }
    if (DECIMAL.matcher(plain).matches()) {
      return Double.parseDouble(plain);
    }
    throw notALength(text, "inches are written 1-3/8, 9 1/4 or 13.5, feet and inches 16' 9-1/4\"");
  }

  /**
   * Inches from text that stands where feet are meant.
   *
   * @param text {@code 16-9 1/4} and {@code 16' 9-1/4"} are feet and inches, decimals are feet; a
   *     bare {@code 1-3/8} could be either and is refused
   * @return inches
   * @throws RefusedException if it reads as none of these
   */
  public static double inchesFromFeet(String text) {
    String plain = text.strip();
    if (plain.startsWith("-")) {
      return -unsignedInchesFromFeet(plain.substring(1).strip(), text);
    }
    return unsignedInchesFromFeet(plain, text);
  }

  private static double unsignedInchesFromFeet(String plain, String text) {
    if (DECIMAL.matcher(plain).matches()) {
      return Double.parseDouble(plain) * 12;
    }
    if (BARE_FRACTION.matcher(plain).matches()) {
      throw notALength(
          text,
          "it could be feet or inches here; write 1-0 3/8 or 1' 3/8\", or decimals of a foot");
    }
    Matcher dashed = FEET_DASH_INCHES.matcher(plain);
    if (dashed.matches()) {
      return belowOneFoot(inchesIn(dashed, 2, text), text)
          + 12 * Double.parseDouble(dashed.group(1));
    }
    Matcher marked = FEET_MARKED.matcher(plain);
    if (marked.matches()) {
      return markedFeet(marked, text);
    }
    Matcher alone = INCHES_ALONE.matcher(plain);
    if (alone.matches()) {
      return inchesIn(alone, 1, text);
    }
    throw notALength(text, "feet are written 16-9 1/4, 16' 9-1/4\" or 16.77");
  }

  /** Inches to the nearest sixteenth: {@code 1-3/8}. */
  public static String inInches(double inches) {
    return sign(inches) + mixed(sixteenths(inches));
  }

  /** Inches as they were measured: {@code 1-3/8} where a tape has that mark, else every digit. */
  public static String onTape(double inches) {
    String sixteenths = inInches(inches);
    return inches(sixteenths) == inches ? sixteenths : Shown.plain(inches);
  }

  /** Inches as a panel's thickness is printed: {@code 15/32}; every digit where that is none. */
  public static String inFractions(double inches) {
    for (int parts = 1; parts <= FINEST; parts *= 2) {
      long count = Math.round(inches * parts);
      if (Math.abs(inches * parts - count) < HAIR) {
        long whole = count / parts;
        long rest = count % parts;
        String part = rest + "/" + parts;
        return rest == 0 ? String.valueOf(whole) : whole == 0 ? part : whole + "-" + part;
      }
    }
    return Shown.plain(inches);
  }

  /** Feet and inches to the nearest sixteenth: {@code 16' 9-1/4"}. */
  public static String inFeetAndInches(double inches) {
    long sixteenths = sixteenths(inches);
    long foot = 12L * SIXTEENTHS;
    return sign(inches) + sixteenths / foot + "' " + mixed(sixteenths % foot) + "\"";
  }

  static boolean isSixteenths(double inches) {
    double sixteenths = inches * SIXTEENTHS;
    return Math.abs(sixteenths - Math.rint(sixteenths)) < 1e-7;
  }

  private static double markedFeet(Matcher marked, String text) {
    double feet = Double.parseDouble(marked.group(1));
    boolean feetAlone = marked.group(2) == null && marked.group(4) == null;
    return 12 * feet + (feetAlone ? 0 : belowOneFoot(inchesIn(marked, 2, text), text));
  }

  private static double inchesIn(Matcher match, int group, String text) {
    if (match.group(group) != null) {
      return Double.parseDouble(match.group(group));
    }
    double whole = match.group(group + 1) == null ? 0 : Double.parseDouble(match.group(group + 1));
    double part = Double.parseDouble(match.group(group + 2));
    double parts = Double.parseDouble(match.group(group + 3));
    if (parts == 0 || part >= parts) {
      throw notALength(text, "a fraction of an inch is less than one, such as 3/8");
    }
    return whole + part / parts;
  }

  private static double belowOneFoot(double inches, String text) {
    if (inches >= 12) {
      throw notALength(text, "the inches after the feet must be less than 12");
    }
    return inches;
  }

  private static RefusedException notALength(String text, String allowed) {
    return new RefusedException(
        "\"" + text.strip() + "\" is not a length that can be read: " + allowed);
  }

  private static long sixteenths(double inches) {
    return Math.round(Math.abs(inches) * SIXTEENTHS);
  }

  private static String sign(double inches) {
    return inches < 0 && sixteenths(inches) > 0 ? "-" : "";
  }

  private static String mixed(long sixteenths) {
    return mixed(sixteenths, SIXTEENTHS);
  }

  /** So many lines of a ruler that has this many to the inch, a power of two: {@code 1-3/32}. */
  public static String mixed(long lines, int toTheInch) {
    long whole = lines / toTheInch;
    long part = lines % toTheInch;
    if (part == 0) {
      return Long.toString(whole);
    }
    long common = Long.lowestOneBit(part);
    String fraction = part / common + "/" + toTheInch / common;
    return whole == 0 ? fraction : whole + "-" + fraction;
  }
}
