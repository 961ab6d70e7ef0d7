package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;

/** The cells and ranges that a formula points at, and the formula as it reads where they moved. */
final class References {

  /** What programs write where a formula pointed at a cell that is gone. */
  static final String GONE = "#REF!";

  private static final String CELL = "(\\$?)([A-Za-z]{1,3})(\\$?)([1-9]\\d{0,6})";

  private static final Pattern AREA =
      Pattern.compile(CELL + "(?::" + CELL + ")?(?![\\p{L}\\p{N}_.(!])");

  private static final int PARTS = 4;

  private References() {}

  /** Where what is pointed at stands now. */
  @FunctionalInterface
  interface Places {

    /** Where a cell or a range stands now; nothing where all of it is gone. */
    Optional<Spot> of(Spot spot);

    /** Whether no cell has a name any more. */
    default boolean isGone(String name) {
      return false;
    }
  }

  /** A formula of a cell on a tab as it reads where cells stand elsewhere. */
  static String moved(String formula, String tab, Places places) {
    StringBuilder text = new StringBuilder();
    Matcher tokens = FormulaText.TOKEN.matcher(formula);
    Matcher area = AREA.matcher(formula);
    String onTab = "";
    int at = 0;
    while (at < formula.length() && tokens.find(at)) {
      at = tokens.end();
      String token = tokens.group();
      if (tokens.group("tab") != null) {
        onTab = token;
        continue;
      }
      area.region(tokens.start(), formula.length());
      boolean isWord = tokens.group("word") != null;
      if (isWord && area.lookingAt()) {
        at = area.end();
        String before = onTab;
        text.append(
            places
                .of(spot(area, onTab.isEmpty() ? tab : FormulaText.tabOf(onTab)))
                .map(spot -> before + written(area, spot))
                .orElse(GONE));
      } else {
        text.append(onTab).append(isWord && places.isGone(token) ? GONE : token);
      }
      onTab = "";
    }
    return text.append(onTab).toString(); // what is left is the end of a #REF!
  }

  /** Everything that a formula of a cell on a tab points at. */
  static List<Spot> in(String formula, String tab) {
    List<Spot> spots = new ArrayList<>();
    moved(
        formula,
        tab,
        spot -> {
          spots.add(spot);
          return Optional.of(spot);
        });
    return spots;
  }

  private static Spot spot(Matcher area, String tab) {
    boolean isRange = area.group(2 + PARTS) != null;
    int row = row(area, 0);
    int column = column(area, 0);
    return new Spot(
        tab, row, column, isRange ? row(area, PARTS) : row, isRange ? column(area, PARTS) : column);
  }

  private static int row(Matcher area, int first) {
    return Integer.parseInt(area.group(first + 4)) - 1;
  }

  private static int column(Matcher area, int first) {
    return CellReference.convertColStringToIndex(area.group(first + 2));
  }

  private static String written(Matcher area, Spot spot) {
    String first = written(area, 0, spot.row(), spot.column());
    return area.group(2 + PARTS) == null
        ? first
        : first + ":" + written(area, PARTS, spot.lastRow(), spot.lastColumn());
  }

  private static String written(Matcher area, int first, int row, int column) {
    return area.group(first + 1)
        + CellReference.convertNumToColString(column)
        + area.group(first + 3)
        + (row + 1);
  }

  /** A formula that several cells share, as it reads so many lines and columns further on. */
  static String shifted(String formula, int rows, int columns) {
    StringBuilder text = new StringBuilder();
    Matcher tokens = FormulaText.TOKEN.matcher(formula);
    Matcher cell = Pattern.compile(CELL).matcher("");
    while (tokens.find()) {
      String token = tokens.group();
      boolean isCell =
          tokens.group("word") != null
              && !formula.startsWith("(", tokens.end())
              && cell.reset(token).matches();
      text.append(isCell ? shifted(cell, rows, columns) : token);
    }
    return text.toString();
  }

  private static String shifted(Matcher cell, int rows, int columns) {
    return written(
        cell,
        0,
        row(cell, 0) + (cell.group(3).isEmpty() ? rows : 0),
        column(cell, 0) + (cell.group(1).isEmpty() ? columns : 0));
  }
}
