package sheathwright.workbook.book;

import java.util.List;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;

/** What may be typed into an input: a drop-down for a word, a range for a number. */
final class Validation {

  private Validation() {}

  /**
   * What holds an input to what it may be, as the sheet's part says it (ECMA-376, 18.3.1.32); empty
   * if it may be anything.
   *
   * @param last line down to which the same is asked, from the input's own line
   */
  static String of(Place place, int last, Traced input, Limits byFunction, WordLists wordLists) {
    String cells =
        new CellRangeAddress(place.row(), last, place.column(), place.column()).formatAsString();
    if (input instanceof Choice<?> choice) {
      return choice.options().isEmpty() ? "" : words(cells, choice, wordLists.rangeOf(choice));
    }
    Limits own = input.step().limits();
    Limits limits = own.and(byFunction);
    if (!limits.exist()) {
      return "";
    }
    String least = Shown.plain(limits.least());
    String most = Shown.plain(limits.most());
    if (limits.kind() == Limits.Kind.ENDS_ONLY) {
      return written(cells, "list", limits.inWords(), quoted(List.of(least, most)));
    }
    String type = limits.kind() == Limits.Kind.WHOLE_ONLY ? "whole" : "decimal";
    String allowed = limits.inWords() + " " + ((Figure<?>) input).unit();
    return written(cells, type, allowed, least, most);
  }

  private static String words(String cells, Choice<?> choice, String range) {
    return written(
        cells,
        "list",
        "one of the words in the list",
        range.isEmpty() ? quoted(choice.options()) : range);
  }

  private static String quoted(List<String> words) {
    return "\"" + String.join(",", words) + "\"";
  }

  private static String written(String cells, String type, String allowed, String... formulas) {
    StringBuilder xml = new StringBuilder("<dataValidation");
    attribute(xml, "type", type);
    attribute(xml, "operator", "between");
    attribute(xml, "allowBlank", "true");
    attribute(xml, "errorStyle", "stop");
    attribute(xml, "showErrorMessage", "true");
    attribute(xml, "errorTitle", "Not allowed here");
    attribute(xml, "error", "It must be " + allowed.strip() + ".");
    attribute(xml, "showInputMessage", "true");
    attribute(xml, "promptTitle", "You may change this");
    attribute(xml, "prompt", allowed.strip());
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
