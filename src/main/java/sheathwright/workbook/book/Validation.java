package sheathwright.workbook.book;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import sheathwright.figure.Limits;
import sheathwright.figure.Shown;

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
    StringBuilder xml = new StringBuilder("<dataValidation");
    attribute(xml, "type", type);
    attribute(xml, "operator", "between");
    attribute(xml, "allowBlank", "true");
    attribute(xml, "errorStyle", "stop");
    if (!inWords.isEmpty()) {
      attribute(xml, "showErrorMessage", "true");
      attribute(xml, "errorTitle", "Not allowed here");
      attribute(xml, "error", "It must be " + inWords + ".");
    }
    attribute(xml, "showInputMessage", "true");
    attribute(xml, "promptTitle", "You may change this");
    attribute(xml, "prompt", CellText.of(cut(help)));
    attribute(xml, "sqref", cells);
    xml.append('>');
    for (int i = 0; i < formulas.length; i++) {
      String tag = "formula" + (i + 1);
      xml.append('<').append(tag).append('>');
      SheetText.append(xml, formulas[i]);
      xml.append("</").append(tag).append('>');
    }
    return xml.append("</dataValidation>").toString();
  }

  /** A prompt takes 255 characters. */
  private static String cut(String help) {
    return help.length() <= LONGEST_HELP ? help : help.substring(0, LONGEST_HELP - 1) + "…";
  }

  private static void attribute(StringBuilder xml, String name, String value) {
    StringBuilder escaped = new StringBuilder();
    SheetText.append(escaped, value);
    xml.append(' ').append(name).append("=\"");
    xml.append(escaped.toString().replace("\"", "&quot;")).append('"');
  }

  /** A line whose first cell says this is not shown. */
  static void whiteIfItSays(String word, XSSFSheet sheet, CellRangeAddress lines) {
    SheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    String name =
        new CellReference(lines.getFirstRow(), lines.getFirstColumn(), false, true)
            .formatAsString();
    ConditionalFormattingRule rule =
        formatting.createConditionalFormattingRule(name + "=\"" + word + "\"");
    rule.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.index);
    formatting.addConditionalFormatting(new CellRangeAddress[] {lines}, rule);
  }

  /** A verdict that begins with STOP says so in red as well. */
  static void redIfItSaysStop(XSSFSheet sheet, CellAddress cell) {
    SheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule =
        formatting.createConditionalFormattingRule("LEFT(" + cell + ",4)=\"STOP\"");
    rule.createFontFormatting().setFontColorIndex(IndexedColors.DARK_RED.index);
    CellRangeAddress[] where = {CellRangeAddress.valueOf(cell.formatAsString())};
    formatting.addConditionalFormatting(where, rule);
  }
}
