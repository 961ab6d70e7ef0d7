package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.CrewBook;
import sheathwright.workbook.page.Samples;

/**
 * No letter of any document is printed smaller than can be read on a roof: what its font is, times
 * how far its page is shrunk to fit on paper.
 */
class PrintedSizeTest {

  private static final double LEAST_POINTS = 7;

  /** Programs round how far they shrink to whole percents. */
  private static final double ROUNDED = 0.07;

  private static final double POINTS_A_DOT = 0.75;
  private static final double SHORT_SIDE = 8.5 * 72;
  private static final double LONG_SIDE = 11 * 72;

  /** Margins at both sides together, and above and below. */
  private static final double BESIDE = 72;

  private static final double ABOVE_AND_BELOW = 1.3 * 72;

  static Iterable<String> names() {
    return Samples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyLetterOfADocument_isReadOnPaper(String name) throws IOException {
    assertThat(small(Samples.all().get(name))).isEmpty();
  }

  static List<String> jobs() {
    return Samples.everyJob();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyLetterOnTheRoof_isReadOnPaper(String job) throws IOException {
    assertThat(small(CrewBook.bytes(new Estimate(Job.of(Samples.tables(job)))))).isEmpty();
  }

  @Test
  void aPageThatIsShrunkTooFar_isFound() throws IOException {
    byte[] quote = Samples.all().get("quince-hollow-quote");
    try (XSSFWorkbook workbook = Cells.opened(quote)) {
      workbook.getSheetAt(0).setColumnWidth(0, 120 * 256);
      assertThat(small(workbook)).anyMatch(each -> each.startsWith("Your quote"));
    }
  }

  private static List<String> small(byte[] book) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      return small(workbook);
    }
  }

  /** The smallest letters of each printed tab that has any too small. */
  private static List<String> small(XSSFWorkbook workbook) {
    Map<String, Double> smallest = new LinkedHashMap<>();
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      if (!PrintedLists.isKeptBack(workbook, i)) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        double scale = scale(sheet, workbook.getPrintArea(i));
        for (Row row : sheet) {
          for (Cell cell : row) {
            double size =
                ((XSSFCell) cell).getCellStyle().getFont().getFontHeightInPoints() * scale;
            if (cell.getCellType() != CellType.BLANK && size < LEAST_POINTS - ROUNDED) {
              smallest.merge(sheet.getSheetName(), size, Math::min);
            }
          }
        }
      }
    }
    List<String> small = new ArrayList<>();
    smallest.forEach((tab, size) -> small.add("%s: %.1f pt".formatted(tab, size)));
    return small;
  }

  private static double scale(XSSFSheet sheet, String printed) {
    if (!sheet.getFitToPage()) {
      return sheet.getPrintSetup().getScale() / 100.0;
    }
    int last = new AreaReference(printed, SpreadsheetVersion.EXCEL2007).getLastCell().getCol();
    double wide = 0;
    for (int column = 0; column <= last; column++) {
      wide += sheet.getColumnWidthInPixels(column) * POINTS_A_DOT;
    }
    boolean isAcross = sheet.getPrintSetup().getLandscape();
    double paperWide = (isAcross ? LONG_SIDE : SHORT_SIDE) - BESIDE;
    double paperTall = (isAcross ? SHORT_SIDE : LONG_SIDE) - ABOVE_AND_BELOW;
    int pages = sheet.getPrintSetup().getFitHeight();
    double scale = Math.min(1, sheet.getPrintSetup().getFitWidth() * paperWide / wide);
    return pages == 0 ? scale : Math.min(scale, pages * paperTall / tall(sheet));
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
}
