package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.file.Letters;
import sheathwright.workbook.page.Samples;

/**
 * No words are cut off and no number is too wide for its cell: each measured with the widths that
 * the letters have in print.
 */
class TextFitsTest {

  /** What a spreadsheet program keeps free at both sides together, and for each indention. */
  private static final double SIDES = 4;

  private static final double INDENTION = 9;
  private static final double POINTS_A_DOT = 0.75;

  /** So small may a number grow that has a narrow column, of its size. */
  private static final double STILL_READ = 0.75;

  /** From the top of the tallest letter to the foot of the lowest (Arial: 0.905 and 0.212). */
  private static final double LETTER = 1.117;

  static Iterable<String> names() {
    return Samples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyText_andEveryNumber_fitsItsCell(String name) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      assertThat(cutOff(workbook)).as(name).isEmpty();
    }
  }

  @Test
  void aNarrowColumn_aLowLine_andANumberTooWide_areFound() throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get("quince-hollow-quote"))) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      sheet.setColumnWidth(4, 3 * 256);
      assertThat(cutOff(workbook)).anyMatch(each -> each.startsWith("Your quote!E"));
    }
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get("quince-hollow-quote"))) {
      workbook.getSheetAt(2).forEach(row -> row.setHeightInPoints(8));
      assertThat(cutOff(workbook)).anyMatch(each -> each.startsWith("What you get!"));
    }
  }

  private static List<String> cutOff(XSSFWorkbook workbook) {
    List<String> cutOff = new ArrayList<>();
    DataFormatter formatter = new DataFormatter(java.util.Locale.US);
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      Map<CellAddress, Integer> merged = new HashMap<>();
      for (CellRangeAddress region : sheet.getMergedRegions()) {
        merged.put(
            new CellAddress(region.getFirstRow(), region.getFirstColumn()), region.getLastColumn());
      }
      for (Row row : sheet) {
        for (Cell cell : row) {
          String shown = shown((XSSFCell) cell, formatter);
          int last = merged.getOrDefault(cell.getAddress(), cell.getColumnIndex());
          if (!shown.isEmpty() && !fits((XSSFCell) cell, shown, last)) {
            cutOff.add(Cells.address(cell) + " " + shown);
          }
        }
      }
    }
    return cutOff;
  }

  private static CellType type(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
  }

  /** What stands in a cell; nothing for a number that a program shortens until it fits. */
  private static String shown(XSSFCell cell, DataFormatter formatter) {
    return switch (type(cell)) {
      case STRING -> cell.getStringCellValue();
      case NUMERIC ->
          cell.getCellStyle().getDataFormatString().equals("General")
              ? ""
              : formatter.formatRawCellContents(
                  cell.getNumericCellValue(),
                  cell.getCellStyle().getDataFormat(),
                  cell.getCellStyle().getDataFormatString());
      default -> "";
    };
  }

  private static boolean fits(XSSFCell cell, String shown, int last) {
    XSSFFont font = cell.getCellStyle().getFont();
    double size = font.getFontHeightInPoints();
    double own = points(cell, last);
    if (cell.getCellStyle().getWrapText() && type(cell) == CellType.STRING) {
      double tall = lines(shown, font, own) * size * LETTER;
      return tall <= cell.getRow().getHeightInPoints() + 0.5;
    }
    boolean runsOn =
        type(cell) == CellType.STRING
            && cell.getCellStyle().getAlignment() != HorizontalAlignment.RIGHT
            && last == cell.getColumnIndex();
    int free = last;
    while (runsOn && isFree(cell, free + 1)) {
      free++;
    }
    boolean shrinks = cell.getCellStyle().getShrinkToFit() && type(cell) == CellType.NUMERIC;
    double wide = Letters.wide(shown, size, font.getBold()) * (shrinks ? STILL_READ : 1);
    return wide <= points(cell, free);
  }

  /** Up to where the page ends: to the right of it nothing is printed. */
  private static boolean isFree(XSSFCell cell, int column) {
    int end = cell.getSheet().getDimension().getLastColumn();
    Cell next = cell.getRow().getCell(column);
    return column <= end && (next == null || next.getCellType() == CellType.BLANK);
  }

  private static double points(XSSFCell cell, int last) {
    double dots = -SIDES - INDENTION * cell.getCellStyle().getIndention();
    for (int column = cell.getColumnIndex(); column <= last; column++) {
      dots += cell.getSheet().getColumnWidthInPixels(column);
    }
    return dots * POINTS_A_DOT;
  }

  /** Word by word, a word that is too wide by itself letter by letter. */
  private static int lines(String words, XSSFFont font, double points) {
    double size = font.getFontHeightInPoints();
    int lines = 1;
    String line = "";
    for (String word : words.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (Letters.wide(longer, size, font.getBold()) <= points) {
        line = longer;
        continue;
      }
      lines += line.isEmpty() ? 0 : 1;
      line = "";
      for (char letter : word.toCharArray()) {
        if (!line.isEmpty() && Letters.wide(line + letter, size, font.getBold()) > points) {
          lines++;
          line = "";
        }
        line += letter;
      }
    }
    return lines;
  }
}
