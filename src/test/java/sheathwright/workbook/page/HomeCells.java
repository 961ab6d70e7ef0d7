package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What stands in a written file, found by its name or read from top to bottom. */
final class HomeCells {

  private HomeCells() {}

  /** A named cell. */
  static Cell at(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  /** A named number, recalculated. */
  static double number(XSSFWorkbook workbook, String name) {
    return evaluator(workbook).evaluate(at(workbook, name)).getNumberValue();
  }

  /** A named text, recalculated. */
  static String text(XSSFWorkbook workbook, String name) {
    return evaluator(workbook).evaluate(at(workbook, name)).getStringValue();
  }

  private static FormulaEvaluator evaluator(XSSFWorkbook workbook) {
    return workbook.getCreationHelper().createFormulaEvaluator();
  }

  /** Every text that was written as such. */
  static List<String> texts(XSSFWorkbook workbook) {
    List<String> texts = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.STRING) {
            texts.add(cell.getStringCellValue());
          }
        }
      }
    }
    return texts;
  }
}
