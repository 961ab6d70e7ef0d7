package sheathwright.workbook.book;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import sheathwright.figure.Limits;
import sheathwright.figure.Shown;
import sheathwright.workbook.part.Sheet;
import sheathwright.workbook.part.XmlText;

/** What may be typed into an input: a drop-down for a word, a range for a number. */
final class Validation {

  private static final int LONGEST_HELP = 255;

  private Validation() {}

  /**
   * What holds cells to what may be typed there, as the sheet's part says it (ECMA-376, 18.3.1.32);
   * empty if that is anything and nothing is said of it.
   */
  static String of(String cells, Allowed allowed, WordLists wordLists) {
    if (!allowed.words().isEmpty()) {
      String range = wordLists.rangeOf(allowed.name(), allowed.words());
      return written(cells, "list", allowed, range.isEmpty() ? quoted(allowed.words()) : range);
    }
    Limits limits = allowed.limits();
    if (!limits.exist()) {
      return allowed.help().isEmpty() ? "" : written(cells, "none", allowed);
    }
    String least = Shown.plain(limits.least());
    String most = Shown.plain(limits.most());
    if (limits.kind() == Limits.Kind.ENDS_ONLY) {
      return written(cells, "list", allowed, quoted(List.of(least, most)));
    }
    String type = limits.kind() == Limits.Kind.WHOLE_ONLY ? "whole" : "decimal";
    return written(cells, type, allowed, least, most);
  }

  private static String quoted(List<String> words) {
    return "\"" + String.join(",", words) + "\"";
  }

  private static String written(String cells, String type, Allowed allowed, String... formulas) {
    String inWords = allowed.inWords();
    String help =
        Stream.of(allowed.help(), inWords).filter(said -> !said.isEmpty()).collect(joining(": "));
    boolean isHeld = !inWords.isEmpty();
    XmlText xml =
        new XmlText()
            .begin("dataValidation")
            .with("type", type)
            .with("operator", "between")
            .with("allowBlank", "true")
            .with("errorStyle", "stop")
            .with("showErrorMessage", isHeld ? "true" : null)
            .with("errorTitle", isHeld ? "Not allowed here" : null)
            .with("error", isHeld ? "It must be " + inWords + "." : null)
            .with("showInputMessage", "true")
            .with("promptTitle", "You may change this")
            .with("prompt", CellText.of(cut(help)))
            .with("sqref", cells)
            .opened();
    for (int i = 0; i < formulas.length; i++) {
      xml.leaf("formula" + (i + 1), formulas[i]);
    }
    return xml.close("dataValidation").toString();
  }

  /** A prompt takes 255 characters. */
  private static String cut(String help) {
    return help.length() <= LONGEST_HELP ? help : help.substring(0, LONGEST_HELP - 1) + "…";
  }

  /** A line whose first cell says this is not shown. */
  static void whiteIfItSays(String word, Sheet sheet, CellRangeAddress lines) {
    String first =
        new CellReference(lines.getFirstRow(), lines.getFirstColumn(), false, true)
            .formatAsString();
    sheet.whiteIf(lines, first + "=\"" + word + "\"");
  }

  /** A verdict that begins with STOP says so in red as well. */
  static void redIfItSaysStop(Sheet sheet, int line, int column) {
    CellRangeAddress cell = new CellRangeAddress(line, line, column, column);
    sheet.redIf(cell, "LEFT(" + cell.formatAsString() + ",4)=\"STOP\"");
  }
}
