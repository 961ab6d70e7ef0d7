package sheathwright.workbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.OverwrittenCells;

/** How a document that leaves the house prints, and whether it misses what is changed in it. */
public final class SheetsOfPaper {

  private static final double WIDE = (8.5 - 2 * 0.5) * 72;
  private static final double TALL = (11 - 0.6 - 0.7) * 72;
  private static final double SMALLEST = 0.7;
  private static final double POINTS_A_DOT = 0.75;

  private SheetsOfPaper() {}

  /** Each tab is one sheet of letter paper at seven tenths of its size at least. */
  public static void areFew(byte[] book, int most) {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      assertThat(workbook.getNumberOfSheets()).isLessThanOrEqualTo(most);
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        assertThat(sheet.getFitToPage()).isTrue();
        assertThat(sheet.getPrintSetup().getFitHeight()).isEqualTo((short) 1);
        assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
        assertThat(sheet.getPrintSetup().getLandscape()).isFalse();
        assertThat(scale(sheet, columns(workbook.getPrintArea(i))))
            .as(sheet.getSheetName())
            .isGreaterThan(SMALLEST);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static int columns(String area) {
    return new AreaReference(area, SpreadsheetVersion.EXCEL2007).getLastCell().getCol() + 1;
  }

  private static double scale(XSSFSheet sheet, int columns) {
    double wide = 0;
    for (int column = 0; column < columns; column++) {
      wide += sheet.getColumnWidthInPixels(column) * POINTS_A_DOT;
    }
    return Math.min(WIDE / wide, TALL / tall(sheet));
  }

  private static double tall(Sheet sheet) {
    double tall = 0;
    for (int line = 0; line <= sheet.getLastRowNum(); line++) {
      tall +=
          sheet.getRow(line) == null
              ? sheet.getDefaultRowHeightInPoints()
              : sheet.getRow(line).getHeightInPoints();
    }
    return tall;
  }

  /** 1 if the document says that a number was changed in it, 0 if it says that none was. */
  static double changed(XSSFWorkbook workbook, FormulaEvaluator evaluator) {
    Cell state = OverwrittenCells.at(workbook, workbook.getName("sums_tie").getRefersToFormula());
    return evaluator.evaluate(state).getStringValue().startsWith("A number was changed") ? 1 : 0;
  }
}
