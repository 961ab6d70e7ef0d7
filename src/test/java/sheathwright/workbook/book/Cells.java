package sheathwright.workbook.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cells of a workbook by address, as they were written and as an engine recalculates them. */
public final class Cells {

  private Cells() {}

  /** The value that each formula cell holds in the file. */
  public static Map<String, Object> written(byte[] file) {
    Map<String, Object> values = new LinkedHashMap<>();
    eachFormula(file, (workbook, cell) -> values.put(address(cell), cached(cell)));
    return values;
  }

  /** The value that POI's evaluator gives each formula cell, whatever the file holds. */
  public static Map<String, Object> byPoi(byte[] file) {
    Map<String, Object> values = new LinkedHashMap<>();
    Map<XSSFWorkbook, FormulaEvaluator> evaluators = new LinkedHashMap<>();
    eachFormula(
        file,
        (workbook, cell) -> {
          FormulaEvaluator evaluator =
              evaluators.computeIfAbsent(
                  workbook, opened -> opened.getCreationHelper().createFormulaEvaluator());
          values.put(address(cell), value(evaluator.evaluate(cell)));
        });
    return values;
  }

  /** The text of each formula. */
  public static Map<String, String> formulas(byte[] file) {
    Map<String, String> formulas = new LinkedHashMap<>();
    eachFormula(file, (workbook, cell) -> formulas.put(address(cell), cell.getCellFormula()));
    return formulas;
  }

  public static String address(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
  }

  public static XSSFWorkbook opened(byte[] file) {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(file));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void eachFormula(byte[] file, BiConsumer<XSSFWorkbook, Cell> action) {
    try (XSSFWorkbook workbook = opened(file)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              action.accept(workbook, cell);
            }
          }
        }
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static Object cached(Cell cell) {
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> cell.getNumericCellValue();
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> cell.getBooleanCellValue();
      default -> "#error";
    };
  }

  private static Object value(CellValue value) {
    return switch (value.getCellType()) {
      case NUMERIC -> value.getNumberValue();
      case STRING -> value.getStringValue();
      case BOOLEAN -> value.getBooleanValue();
      default -> "#error";
    };
  }
}
