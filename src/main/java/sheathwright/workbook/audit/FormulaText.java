package sheathwright.workbook.audit;

import java.util.Locale;
import java.util.function.ToIntBiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;

/**
 * A cell's formula without what programs spell as they like: capitals, blanks, dollar signs, quotes
 * around the names of tabs, prefixes of newer functions, and the way in which a number is written.
 */
final class FormulaText {

  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<text>\"(?:[^\"]|\"\")*\")"
              + "|(?<tab>'(?:[^']|'')+'!|[\\p{L}_$][\\p{L}\\p{N}_.$]*!)"
              + "|(?<number>(?<![\\p{L}\\p{N}_.$])(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?(?![\\p{L}_(!]))"
              + "|(?<word>[\\p{L}_$\\\\][\\p{L}\\p{N}_.$\\\\]*)"
              + "|(?<blank>\\s+)"
              + "|(?<other>.)",
          Pattern.DOTALL);

  private static final Pattern CELL = Pattern.compile("(\\$?)([A-Za-z]{1,3})(\\$?)([1-9]\\d{0,6})");

  /** Where a line stands now; less than 0 where it is gone. */
  @FunctionalInterface
  interface Lines extends ToIntBiFunction<String, Integer> {

    /** Every line where it was. */
    Lines SAME = (tab, row) -> row;
  }

  private FormulaText() {}

  /** The formula of a cell on a tab. */
  static String canonical(String formula, String tab) {
    return canonical(formula, tab, Lines.SAME);
  }

  /** The same, as it reads where lines have been moved. */
  static String canonical(String formula, String tab, Lines lines) {
    StringBuilder text = new StringBuilder();
    Matcher tokens = TOKEN.matcher(formula);
    String onTab = "";
    while (tokens.find()) {
      if (tokens.group("text") != null) {
        text.append(tokens.group());
      } else if (tokens.group("tab") != null) {
        onTab = tabOf(tokens.group());
        if (!onTab.equalsIgnoreCase(tab)) {
          text.append(onTab.toUpperCase(Locale.ROOT)).append('!');
        }
        continue;
      } else if (tokens.group("number") != null) {
        text.append(Double.parseDouble(tokens.group()));
      } else if (tokens.group("word") != null) {
        boolean isCall = formula.startsWith("(", tokens.end());
        text.append(isCall ? function(tokens.group()) : word(tokens.group(), tab, onTab, lines));
      } else if (tokens.group("other") != null) {
        text.append(tokens.group());
      }
      if (!tokens.group().equals(":")) {
        onTab = formula.startsWith(":", tokens.end()) ? onTab : "";
      }
    }
    String plain = text.toString().replace("TRUE()", "TRUE").replace("FALSE()", "FALSE");
    return plain.startsWith("=") || plain.startsWith("+") ? plain.substring(1) : plain;
  }

  private static String tabOf(String token) {
    String name = token.substring(0, token.length() - 1);
    boolean isQuoted = name.startsWith("'");
    String plain = isQuoted ? name.substring(1, name.length() - 1).replace("''", "'") : name;
    return plain.startsWith("$") ? plain.substring(1) : plain;
  }

  private static String function(String word) {
    return word.toUpperCase(Locale.ROOT).replace("_XLFN.", "").replace("_XLWS.", "");
  }

  private static String word(String word, String tab, String onTab, Lines lines) {
    Matcher cell = CELL.matcher(word);
    if (!cell.matches()) {
      return word.toUpperCase(Locale.ROOT).replace("$", "");
    }
    int row = Integer.parseInt(cell.group(4)) - 1;
    int now = lines.applyAsInt(onTab.isEmpty() ? tab : onTab, row);
    return now < 0 ? "#REF!" : cell.group(2).toUpperCase(Locale.ROOT) + (now + 1);
  }

  /** What it does, without where the cells stand that it does it to. */
  static String skeleton(String formula) {
    return canonical(formula, "", (tab, row) -> 0);
  }

  /** Where a column of a tab stood; less than 0 where it was not there. */
  @FunctionalInterface
  interface Columns extends ToIntBiFunction<String, Integer> {}

  /** A formula of a cell on a tab as it reads where columns stand elsewhere. */
  static String across(String formula, String tab, Columns columns) {
    StringBuilder text = new StringBuilder();
    Matcher tokens = TOKEN.matcher(formula);
    String onTab = "";
    while (tokens.find()) {
      String token = tokens.group();
      Matcher cell = CELL.matcher(token);
      if (tokens.group("tab") != null) {
        onTab = tabOf(token);
        text.append(token);
        continue;
      }
      boolean isCell =
          tokens.group("word") != null && !formula.startsWith("(", tokens.end()) && cell.matches();
      text.append(isCell ? across(cell, onTab.isEmpty() ? tab : onTab, columns) : token);
      if (!token.equals(":")) {
        onTab = formula.startsWith(":", tokens.end()) ? onTab : "";
      }
    }
    return text.toString();
  }

  private static String across(Matcher cell, String tab, Columns columns) {
    int column = CellReference.convertColStringToIndex(cell.group(2).toUpperCase(Locale.ROOT));
    int now = columns.applyAsInt(tab, column);
    return now < 0
        ? "#REF!"
        : cell.group(1) + CellReference.convertNumToColString(now) + cell.group(3) + cell.group(4);
  }

  /** A formula that several cells share, as it reads so many lines and columns further on. */
  static String shifted(String formula, int rows, int columns) {
    StringBuilder text = new StringBuilder();
    Matcher tokens = TOKEN.matcher(formula);
    while (tokens.find()) {
      String token = tokens.group();
      Matcher cell = CELL.matcher(token);
      boolean isCell =
          tokens.group("word") != null && !formula.startsWith("(", tokens.end()) && cell.matches();
      text.append(isCell ? moved(cell, rows, columns) : token);
    }
    return text.toString();
  }

  private static String moved(Matcher cell, int rows, int columns) {
    int column = CellReference.convertColStringToIndex(cell.group(2).toUpperCase(Locale.ROOT));
    int row = Integer.parseInt(cell.group(4)) - 1;
    return cell.group(1)
        + CellReference.convertNumToColString(cell.group(1).isEmpty() ? column + columns : column)
        + cell.group(3)
        + ((cell.group(3).isEmpty() ? row + rows : row) + 1);
  }
}
