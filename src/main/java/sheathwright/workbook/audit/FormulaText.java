package sheathwright.workbook.audit;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A cell's formula without what programs spell as they like: capitals, blanks, dollar signs, quotes
 * around the names of tabs, prefixes of newer functions, and the way in which a number is written.
 */
final class FormulaText {

  static final Pattern TOKEN =
      Pattern.compile(
          "(?<text>\"(?:[^\"]|\"\")*\")"
              + "|(?<tab>'(?:[^']|'')+'!|[\\p{L}_$][\\p{L}\\p{N}_.$]*!)"
              + "|(?<number>(?<![\\p{L}\\p{N}_.$])(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?(?![\\p{L}_(!]))"
              + "|(?<word>[\\p{L}_$\\\\][\\p{L}\\p{N}_.$\\\\]*)"
              + "|(?<blank>\\s+)"
              + "|(?<other>.)",
          Pattern.DOTALL);

  private FormulaText() {}

  /** The formula of a cell on a tab. */
  static String canonical(String formula, String tab) {
    StringBuilder text = new StringBuilder();
    Matcher tokens = TOKEN.matcher(formula);
    while (tokens.find()) {
      if (tokens.group("text") != null) {
        text.append(tokens.group());
      } else if (tokens.group("tab") != null) {
        String onTab = tabOf(tokens.group());
        boolean isGone = formula.startsWith(References.GONE, tokens.end());
        if (!onTab.equalsIgnoreCase(tab) && !isGone) {
          text.append(onTab.toUpperCase(Locale.ROOT)).append('!');
        }
      } else if (tokens.group("number") != null) {
        text.append(Double.parseDouble(tokens.group()));
      } else if (tokens.group("word") != null) {
        boolean isCall = formula.startsWith("(", tokens.end());
        text.append(isCall ? function(tokens.group()) : word(tokens.group()));
      } else if (tokens.group("other") != null) {
        text.append(tokens.group());
      }
    }
    String plain =
        text.toString()
            .replace("TRUE()", "TRUE")
            .replace("FALSE()", "FALSE")
            .replace(References.GONE + ":" + References.GONE, References.GONE);
    return plain.startsWith("=") || plain.startsWith("+") ? plain.substring(1) : plain;
  }

  static String tabOf(String token) {
    String name = token.substring(0, token.length() - 1);
    boolean isQuoted = name.startsWith("'");
    String plain = isQuoted ? name.substring(1, name.length() - 1).replace("''", "'") : name;
    return plain.startsWith("$") ? plain.substring(1) : plain;
  }

  private static String function(String word) {
    return word.toUpperCase(Locale.ROOT).replace("_XLFN.", "").replace("_XLWS.", "");
  }

  private static String word(String word) {
    return word.toUpperCase(Locale.ROOT).replace("$", "");
  }

  /** What it does, without in which lines the cells stand that it does it to. */
  static String skeleton(String formula) {
    return canonical(
        References.moved(
            formula,
            "",
            spot -> Optional.of(new Spot(spot.sheet(), 0, spot.column(), 0, spot.lastColumn()))),
        "");
  }

  /** What it does, without where the cells stand that it does it to, or whether they are there. */
  static String shape(String formula) {
    return skeleton(
            References.moved(formula, "", spot -> Optional.of(new Spot(spot.sheet(), 0, 0, 0, 0))))
        .replace("A1:A1", "A1")
        .replace(References.GONE, "A1");
  }
}
