package sheathwright.repl.show;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the Java below the prompt complains of, in words of the trade: what was given, what is due,
 * something to type. The first line of the table that fits is said.
 */
public final class Hints {

  /** The kinds of value by the names that Java has for them. */
  private static final Map<String, String> KINDS =
      Map.ofEntries(
          Map.entry("Length", "a length (in, ft)"),
          Map.entry("Area", "an area (sqft)"),
          Map.entry("Pressure", "a load (psf)"),
          Map.entry("StrengthPressure", "a wind pressure (strengthPsf)"),
          Map.entry("Density", "a density (pcf)"),
          Map.entry("Speed", "a speed (mph)"),
          Map.entry("Stress", "a stress (psi)"),
          Map.entry("Force", "a force (lb)"),
          Map.entry("LineForce", "a load along a line (lbPerFt)"),
          Map.entry("Money", "dollars (usd)"),
          Map.entry("Time", "hours"),
          Map.entry("Ratio", "a pure number (number, pct, pitch)"),
          Map.entry("Sheets", "sheets"),
          Map.entry("Nails", "nails"),
          Map.entry("Pieces", "pieces"),
          Map.entry("int", "a number without a unit"),
          Map.entry("double", "a number without a unit"),
          Map.entry("long", "a number without a unit"),
          Map.entry("String", "a text in quotes"),
          Map.entry("boolean", "yes or no"),
          Map.entry("Condition", "a condition"),
          Map.entry("Object", "anything"));

  /** The words of operators that figures have, and how a comparison is asked. */
  private static final Map<String, String> OPERATORS =
      Map.ofEntries(
          Map.entry("+", "plus"),
          Map.entry("-", "minus"),
          Map.entry("*", "times"),
          Map.entry("/", "dividedBy"),
          Map.entry("<", "isLessThan"),
          Map.entry("<=", "isAtMost"),
          Map.entry(">", "isMoreThan"),
          Map.entry(">=", "isAtLeast"),
          Map.entry("==", "isTheSameAs"));

  /** One line of the table. */
  private record Hint(Pattern message, Function<MatchResult, String> said) {}

  private static final List<Hint> COMPILED =
      List.of(
          hint(
              "incompatible types: (.+) cannot be converted to (.+)",
              found -> "%s stands where %s is due".formatted(kind(found, 1), kind(found, 2))),
          hint(
              "bad operand types for binary operator '(.+?)'; first type: (.+); second type: (.+)",
              Hints::operator),
          hint(
              "bad operand type (.+) for unary operator '(.+)'",
              found -> "%s takes no %s in front".formatted(kind(found, 1), found.group(2))),
          hint(
              "unclosed string literal.*",
              found -> "a text is not closed: write a quote \" behind its last letter"),
          hint(
              "not a statement.*",
              found -> "this does nothing by itself; give it a name: x = …, or call a function"),
          hint(
              ".*(?:expected|illegal start of).*",
              found ->
                  "this cannot be read; a call is name(argument, argument), and name = call keeps"
                      + " its answer"));

  private static final List<Hint> RAISED =
      List.of(
          hint(
              "NullPointerException: .*",
              found -> "it asks something of a name that holds nothing"),
          hint("ArithmeticException: / by zero", found -> "nothing can be divided by zero"),
          hint(
              "\\w*IndexOutOfBoundsException: \\D*(-?\\d+)\\D+(\\d+).*",
              found ->
                  "there is no place %s; there are %s, and the first is 0"
                      .formatted(found.group(1), found.group(2))),
          hint("NumberFormatException: (.*)", found -> "this is not a number: " + found.group(1)),
          hint("\\w+: null", found -> "the line broke off"),
          hint("\\w+: (.*)", found -> "the line broke off: " + found.group(1)));

  private Hints() {}

  /** What is said of a complaint of the compiler, on one line; unknown ones stay as they are. */
  public static String compiled(String message) {
    return said(COMPILED, message);
  }

  /**
   * What is said where a line broke off while it ran.
   *
   * @param type what Java raised, without its package
   * @param message what it said
   */
  public static String raised(String type, String message) {
    return said(RAISED, type + ": " + message);
  }

  /** The kinds of arguments in words. */
  public static String kinds(String given) {
    return KIND.matcher(given).replaceAll(found -> Matcher.quoteReplacement(kind(found, 0)));
  }

  private static final Pattern KIND = Pattern.compile("\\w+(?:<[^()]*>)?");

  private static String operator(MatchResult found) {
    String sign = found.group(1);
    String word = OPERATORS.getOrDefault(sign, "");
    boolean wantsLike = !sign.equals("*") && !sign.equals("/");
    if (wantsLike && !found.group(2).equals(found.group(3))) {
      return "%s and %s do not measure the same thing; %s takes two of one kind"
          .formatted(kind(found, 2), kind(found, 3), sign);
    }
    return word.isEmpty() || found.group(2).equals("String")
        ? "%s and %s cannot go together by %s".formatted(kind(found, 2), kind(found, 3), sign)
        : "%s has no %s here; type a.%s(b), a plain number as number(2)"
            .formatted(kind(found, 2), sign, word);
  }

  private static String kind(MatchResult found, int group) {
    return KINDS.getOrDefault(found.group(group).strip(), found.group(group).strip());
  }

  private static Hint hint(String message, Function<MatchResult, String> said) {
    return new Hint(Pattern.compile(message, Pattern.DOTALL), said);
  }

  private static String said(List<Hint> hints, String message) {
    for (Hint hint : hints) {
      Matcher found = hint.message().matcher(message);
      if (found.matches()) {
        return hint.said().apply(found.toMatchResult());
      }
    }
    return message;
  }
}
