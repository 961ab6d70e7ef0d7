package sheathwright.workbook.letterhead;

import java.math.BigDecimal;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.w3c.dom.Element;
import sheathwright.workbook.letterhead.OfficeFile.Sheet;

/**
 * What the office's own formulas come to, now that the cells below them are filled: for readers
 * that show what a file holds and calculate nothing, such as a phone's.
 */
final class Results {

  private Results() {}

  /**
   * Puts them into the office's cells.
   *
   * @param whole the joined workbook
   */
  static void write(OfficeFile office, XSSFWorkbook whole) {
    FormulaEvaluator evaluator = whole.getCreationHelper().createFormulaEvaluator();
    for (Sheet sheet : office.sheets()) {
      if (Xml.child(sheet.root(), "sheetData").isEmpty()) {
        continue; // a sheet that is one chart
      }
      for (Cell cell : Cell.of(sheet.root())) {
        Element formula = Xml.child(cell.element(), "f").orElse(null);
        if (formula != null && !formula.getAttribute("t").equals("dataTable")) {
          write(
              cell,
              result(
                  evaluator,
                  whole.getSheet(sheet.name()).getRow(cell.row()).getCell(cell.column())));
        }
      }
      office.put(sheet.part(), sheet.root());
    }
  }

  /** What a formula comes to; nothing, where that cannot be told here. */
  private static CellValue result(
      FormulaEvaluator evaluator, org.apache.poi.ss.usermodel.Cell cell) {
    try {
      return evaluator.evaluate(cell);
    } catch (RuntimeException unknown) {
      return null; // a function that is not known here: the reader's program works it out
    }
  }

  private static void write(Cell cell, CellValue value) {
    if (value == null) {
      cell.result("n", "");
      return;
    }
    switch (value.getCellType()) {
      case NUMERIC -> cell.result("n", BigDecimal.valueOf(value.getNumberValue()).toPlainString());
      case STRING -> cell.result("str", value.getStringValue());
      case BOOLEAN -> cell.result("b", value.getBooleanValue() ? "1" : "0");
      case ERROR -> cell.result("e", FormulaError.forInt(value.getErrorValue()).getString());
      case BLANK, FORMULA, _NONE -> cell.result("n", "");
    }
  }
}
