package sheathwright.repl.line;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.Lengths;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.repl.line.Token.Kind;

/**
 * Finds the numbers with units in a line, as they are spoken. What could be read in two ways is
 * refused with both.
 */
final class SpokenAmounts {

  private static final String WHOLE = "\\d+";
  private static final String DECIMAL = "(?:\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?|\\.\\d+)";
  private static final String GLYPH = "[½¼¾⅛⅜⅝⅞]";
  private static final String FRACTION = "(?:\\d+ ?/ ?\\d+|" + GLYPH + ")";
  private static final String WITH_FRACTION =
      "(?:(?:" + WHOLE + "[-– ])?" + FRACTION + "|" + WHOLE + GLYPH + ")";
  private static final String NUMBER = "(?:" + WITH_FRACTION + "|" + DECIMAL + ")";

  private static final Pattern FEET_MARK =
      Pattern.compile(
          "(?<feet>"
              + DECIMAL
              + ")['′’](?: ?[-–]? ?(?<inches>"
              + NUMBER
              + ")(?:[\"″”]|(?![\\d\\p{L}/.])))?");
  private static final Pattern INCH_MARK = Pattern.compile("(?<n>" + NUMBER + ")[\"″”]");
  private static final Pattern FEET_INCHES =
      Pattern.compile(
          "(?<feet>"
              + WHOLE
              + ")[-–](?<inches>"
              + WHOLE
              + "(?:[-– ]"
              + FRACTION
              + "|"
              + GLYPH
              + "|\\.\\d+)?)\\s*(?<unit>"
              + UnitWord.ANY
              + ")");
  private static final Pattern PITCH = Pattern.compile("(?<n>" + NUMBER + ")\\s*in 12(?![\\w.])");
  private static final Pattern MIXED =
      Pattern.compile(
          "(?:(?<whole>"
              + WHOLE
              + ")(?:[-– ]|(?="
              + GLYPH
              + ")))?(?<f>"
              + FRACTION
              + ")\\s*(?<unit>%|"
              + UnitWord.ANY
              + ")");
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?<n>"
              + DECIMAL
              + ")\\s*(?<unit>"
              + UnitWord.ANY
              + ")(?:/(?<per>"
              + UnitWord.ANY
              + "))?");
  private static final Pattern PERCENT = Pattern.compile("(?<n>" + DECIMAL + ")(?<between>\\s*)%");
  private static final String EACH = "(?:(?:/| per )(?<per>" + UnitWord.ANY + "))?";
  private static final Pattern MONEY = Pattern.compile("(?<money>\\$(?<n>[\\d,.]*\\d))" + EACH);
  private static final Pattern MONEY_BEHIND =
      Pattern.compile("(?<money>(?<n>" + DECIMAL + ")\\s*\\$)(?![\\p{L}\\p{N}_$])" + EACH);

  /** The finest mark of a tape is a sixty-fourth. */
  private static final int FINEST = 64;

  private final String line;
  private final List<Token> tokens;

  SpokenAmounts(String line, List<Token> tokens) {
    this.line = line;
    this.tokens = tokens;
  }

  /**
   * The amount that begins with a token, if one does.
   *
   * @throws Unreadable if it could be read in two ways
   */
  Optional<Amount> at(int index) {
    Token first = tokens.get(index);
    if (first.kind() == Kind.MONEY) {
      return begins(MONEY, first.from()).map(SpokenAmounts::money);
    }
    if (first.kind() != Kind.NUMBER && first.kind() != Kind.FRACTION) {
      return Optional.empty();
    }
    int at = first.from();
    return feetMarked(at)
        .or(() -> inchMarked(at))
        .or(() -> feetAndInches(at))
        .or(() -> pitch(at))
        .or(() -> mixed(at))
        .or(() -> plain(at))
        .or(() -> begins(MONEY_BEHIND, at).map(SpokenAmounts::money))
        .or(() -> percent(index));
  }

  /** The token that follows an amount. */
  int after(Amount amount, int index) {
    int next = index;
    while (next < tokens.size() && tokens.get(next).from() < amount.to()) {
      next++;
    }
    return next;
  }

  private Optional<Matcher> begins(Pattern pattern, int at) {
    Matcher matcher =
        pattern
            .matcher(line)
            .region(at, line.length())
            .useTransparentBounds(true)
            .useAnchoringBounds(false);
    return matcher.lookingAt() ? Optional.of(matcher) : Optional.empty();
  }

  private Optional<Amount> feetMarked(int at) {
    return begins(FEET_MARK, at)
        .map(
            said -> {
              String inches = said.group("inches");
              String text = said.group("feet") + "'" + (inches == null ? "" : " " + digits(inches));
              return feet(text, said);
            });
  }

  private Optional<Amount> inchMarked(int at) {
    return begins(INCH_MARK, at).map(said -> inches(said.group("n"), said));
  }

  private Optional<Amount> feetAndInches(int at) {
    Optional<Matcher> found = begins(FEET_INCHES, at);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Matcher said = found.get();
    UnitWord unit = UnitWord.of(said.group("unit"));
    String feet = said.group("feet");
    String inches = said.group("inches");
    if (unit == UnitWord.FOOT) {
      return Optional.of(feet(feet + "-" + digits(inches), said));
    }
    if (unit == UnitWord.INCH && !inches.contains("/") && inches.matches(WHOLE)) {
      throw new Unreadable(
          at,
          "%s could be %s ft %s in or a subtraction: write %s-%s ft, or %s in - %s in"
              .formatted(said.group(), feet, inches, feet, inches, feet, inches));
    }
    return Optional.empty();
  }

  private Optional<Amount> pitch(int at) {
    return begins(PITCH, at)
        .map(
            said ->
                Amount.of(Shown.plain(number(said.group("n"))), Units.RISE_IN_12, at, said.end()));
  }

  private Optional<Amount> mixed(int at) {
    Optional<Matcher> found = begins(MIXED, at);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Matcher said = found.get();
    String unit = said.group("unit");
    String fraction = digits(said.group("f"));
    String whole = said.group("whole");
    if (!isOfAnInch(fraction)) {
      String top = fraction.substring(0, fraction.indexOf('/'));
      String bottom = fraction.substring(fraction.indexOf('/') + 1);
      throw new Unreadable(
          at,
          "%s could be (%s) %s or %s / (%s %s): write which, the first as a decimal"
              .formatted(said.group(), fraction, unit, top, bottom, unit));
    }
    if (unit.equals("%")) {
      return Optional.of(Amount.of(decimal(whole, fraction), Units.PERCENT, at, said.end()));
    }
    UnitWord word = UnitWord.of(unit);
    if (word == UnitWord.FOOT && whole != null) {
      throw new Unreadable(
          at,
          "%s could be %s ft %s in or %s and %s feet: write %s' %s\" or %s ft"
              .formatted(
                  said.group(),
                  whole,
                  fraction,
                  whole,
                  fraction,
                  whole,
                  fraction,
                  decimal(whole, fraction)));
    }
    return Optional.of(
        word == UnitWord.INCH
            ? inches((whole == null ? "" : whole + "-") + fraction, said)
            : Amount.of(
                Shown.plain(number((whole == null ? "" : whole + "-") + fraction) / word.parts()),
                word.unit(),
                at,
                said.end()));
  }

  private Optional<Amount> plain(int at) {
    return begins(PLAIN, at)
        .map(
            said -> {
              UnitWord unit = UnitWord.of(said.group("unit"));
              String per = said.group("per");
              Optional<Unit<?>> both = per == null ? Optional.empty() : unit.per(UnitWord.of(per));
              String number =
                  unit.parts() == 1
                      ? said.group("n")
                      : Shown.plain(Double.parseDouble(said.group("n")) / unit.parts());
              return both.map(joined -> Amount.of(number, joined, at, said.end()))
                  .orElseGet(() -> Amount.of(number, unit.unit(), at, said.end("unit")));
            });
  }

  /** A percent sign before an operand is Java's remainder, unless it touches the number alone. */
  private Optional<Amount> percent(int index) {
    int at = tokens.get(index).from();
    Optional<Matcher> found = begins(PERCENT, at);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Matcher said = found.get();
    Amount amount = Amount.of(said.group("n"), Units.PERCENT, at, said.end());
    int next = after(amount, index);
    boolean touches = said.group("between").isEmpty();
    boolean stands =
        next == tokens.size()
            || tokens.get(next).kind() == Kind.SIGN
                && tokens.get(next).text().matches("[),;\\]}*/<>=:?]|[<>=!]=|&&|\\|\\|")
            || touches && tokens.get(next).from() > said.end();
    return stands ? Optional.of(amount) : Optional.empty();
  }

  private static Amount money(Matcher said) {
    String dollars = said.group("n");
    if (dollars.contains(",")) {
      throw new Unreadable(
          said.start(),
          "$%s has a comma, which parts arguments here: write $%s, or a space after the comma"
              .formatted(dollars, dollars.replace(",", "")));
    }
    if (said.group("per") == null) {
      return Amount.of(dollars, Units.USD, said.start(), said.end("money"));
    }
    UnitWord per = UnitWord.of(said.group("per"));
    return per.under("$")
        .map(unit -> Amount.of(dollars, unit, said.start(), said.end()))
        .orElseGet(
            () ->
                Amount.of(dollars, Units.USD, said.start(), said.end("money"))
                    .each(per.unit(), said.end()));
  }

  private Amount feet(String text, Matcher said) {
    checked(said, () -> Lengths.inchesFromFeet(text));
    return Amount.of(text, Units.FOOT, said.start(), said.end());
  }

  private Amount inches(String text, Matcher said) {
    checked(said, () -> Lengths.inches(digits(text)));
    return Amount.of(digits(text), Units.INCH, said.start(), said.end());
  }

  private static void checked(Matcher said, Runnable read) {
    try {
      read.run();
    } catch (RefusedException wrong) {
      throw new Unreadable(said.start(), wrong.getMessage());
    }
  }

  private static boolean isOfAnInch(String fraction) {
    int slash = fraction.indexOf('/');
    if (slash > 8 || fraction.length() - slash > 8) {
      return false;
    }
    int top = Integer.parseInt(fraction.substring(0, slash).strip());
    int bottom = Integer.parseInt(fraction.substring(slash + 1).strip());
    return top < bottom && bottom >= 2 && bottom <= FINEST && Integer.bitCount(bottom) == 1;
  }

  private static double number(String text) {
    return Lengths.inches(digits(text));
  }

  private static String decimal(String whole, String fraction) {
    return Shown.plain(number((whole == null ? "" : whole + "-") + fraction));
  }

  /** Written out: {@code 1½} as {@code 1-1/2}. */
  static String digits(String text) {
    StringBuilder digits = new StringBuilder();
    for (char c : text.replace('–', '-').replace(" / ", "/").strip().toCharArray()) {
      int glyph = "½¼¾⅛⅜⅝⅞".indexOf(c);
      if (glyph >= 0) {
        boolean isGlued =
            digits.length() > 0 && Character.isDigit(digits.charAt(digits.length() - 1));
        digits
            .append(isGlued ? "-" : "")
            .append(List.of("1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8").get(glyph));
      } else {
        digits.append(c);
      }
    }
    return digits.toString();
  }
}
