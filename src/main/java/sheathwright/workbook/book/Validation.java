package sheathwright.workbook.book;

import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
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
   * Holds an input to what it may be.
   *
   * @param last line down to which the same is asked, from the input's own line
   */
  static void of(
      XSSFSheet sheet,
      Place place,
      int last,
      Traced input,
      Limits byFunction,
      WordLists wordLists) {
    CellRangeAddressList cells =
        new CellRangeAddressList(place.row(), last, place.column(), place.column());
    DataValidationHelper helper = sheet.getDataValidationHelper();
    if (input instanceof Choice<?> choice) {
      if (!choice.options().isEmpty()) {
        String range = wordLists.rangeOf(choice);
        DataValidationConstraint words =
            range.isEmpty()
                ? helper.createExplicitListConstraint(choice.options().toArray(String[]::new))
                : helper.createFormulaListConstraint(range);
        add(sheet, cells, words, "one of the words in the list");
      }
      return;
    }
    Limits own = input.step().limits();
    Limits limits = own.and(byFunction);
    if (limits.kind() == Limits.Kind.ENDS_ONLY) {
      String[] two = {Shown.plain(limits.least()), Shown.plain(limits.most())};
      add(sheet, cells, helper.createExplicitListConstraint(two), limits.inWords());
    } else if (limits.exist()) {
      add(sheet, cells, range(helper, limits), limits.inWords() + " " + ((Figure<?>) input).unit());
    }
  }

  private static DataValidationConstraint range(DataValidationHelper helper, Limits limits) {
    String least = Shown.plain(limits.least());
    String most = Shown.plain(limits.most());
    return limits.kind() == Limits.Kind.WHOLE_ONLY
        ? helper.createIntegerConstraint(OperatorType.BETWEEN, least, most)
        : helper.createDecimalConstraint(OperatorType.BETWEEN, least, most);
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

  private static void add(
      XSSFSheet sheet,
      CellRangeAddressList cells,
      DataValidationConstraint constraint,
      String allowed) {
    DataValidation validation = sheet.getDataValidationHelper().createValidation(constraint, cells);
    validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
    validation.createErrorBox("Not allowed here", "It must be " + allowed.strip() + ".");
    validation.setShowErrorBox(true);
    validation.createPromptBox("You may change this", allowed.strip());
    validation.setShowPromptBox(true);
    sheet.addValidationData(validation);
  }
}
