package sheathwright.workbook.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.file.LogProvider;

/** The numbers that a workbook of ours says by name, as it was written. */
public final class SentNumbers {

  static {
    LogProvider.settle();
  }

  private SentNumbers() {}

  /** Each by the name of its cell. */
  public static Map<String, Double> of(byte[] workbook) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      for (Name name : book.getAllNames()) {
        number(book, name).ifPresent(number -> numbers.put(name.getNameName(), number));
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return numbers;
  }

  private static Optional<Double> number(XSSFWorkbook book, Name name) {
    AreaReference area = new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
    boolean isLine = area.getFirstCell().getCol() < 0; // headings printed again on each page
    if (isLine || !area.isSingleCell()) {
      return Optional.empty();
    }
    CellReference at = area.getFirstCell();
    return Optional.ofNullable(book.getSheet(at.getSheetName()))
        .flatMap(sheet -> cell(sheet, at))
        .filter(SentNumbers::isNumber)
        .map(Cell::getNumericCellValue);
  }

  private static Optional<Cell> cell(XSSFSheet sheet, CellReference at) {
    XSSFRow row = sheet.getRow(at.getRow());
    return Optional.ofNullable(row).map(found -> found.getCell(at.getCol()));
  }

  private static boolean isNumber(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return type == CellType.NUMERIC;
  }
}
