package sheathwright.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * What stands in a workbook, as lines of text that {@link BareWorkbook} writes it from: styles,
 * names, sheets with the widths of their columns, lines and cells.
 */
final class CellListing {

  /** Between the parts of a line, and between the lines of a text that a cell holds. */
  static final String BETWEEN = "\t";

  static final String NEW_LINE = "\u2028";

  private static final int MOST_COLUMNS = 40;

  private CellListing() {}

  /** Usage: WORKBOOK LISTING ... */
  public static void main(String[] files) throws Exception {
    for (int at = 0; at < files.length; at += 2) {
      try (XSSFWorkbook workbook = new XSSFWorkbook(files[at])) {
        write(workbook, Path.of(files[at + 1]));
      }
    }
  }

  private static void write(XSSFWorkbook workbook, Path listing) throws IOException {
    List<String> lines = new ArrayList<>();
    for (int index = 0; index < workbook.getNumCellStyles(); index++) {
      lines.add(line(workbook.getCellStyleAt(index)));
    }
    for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
      XSSFSheet sheet = workbook.getSheetAt(index);
      lines.add(line("sheet", sheet.getSheetName()));
      for (int column = 0; column < MOST_COLUMNS; column++) {
        lines.add(line("width", column, sheet.getColumnWidth(column)));
      }
      for (Row row : sheet) {
        lines.add(line("row", row.getRowNum(), row.getHeightInPoints()));
        row.forEach(cell -> lines.add(line(cell)));
      }
    }
    for (Name name : workbook.getAllNames()) {
      if (!name.isFunctionName() && !name.getNameName().startsWith("_xlnm")) {
        lines.add(line("name", name.getNameName(), name.getRefersToFormula()));
      }
    }
    Files.write(listing, lines);
  }

  private static String line(Cell cell) {
    boolean hasFormula = cell.getCellType() == CellType.FORMULA;
    CellType type = hasFormula ? cell.getCachedFormulaResultType() : cell.getCellType();
    return line(
        "cell",
        cell.getColumnIndex(),
        cell.getCellStyle().getIndex(),
        type == CellType.BLANK ? "" : type,
        type == CellType.NUMERIC
            ? cell.getNumericCellValue()
            : type == CellType.STRING ? cell.getStringCellValue() : "",
        hasFormula ? cell.getCellFormula() : "");
  }

  private static String line(XSSFCellStyle style) {
    XSSFFont font = style.getFont();
    return line(
        "style",
        style.getDataFormatString(),
        font.getFontName(),
        font.getFontHeightInPoints(),
        font.getBold(),
        color(font.getXSSFColor()),
        color(style.getFillForegroundXSSFColor()),
        style.getBorderTop(),
        style.getBorderBottom(),
        style.getBorderLeft(),
        style.getBorderRight(),
        color(style.getBottomBorderXSSFColor()),
        style.getAlignment(),
        style.getVerticalAlignment(),
        style.getWrapText(),
        style.getIndention(),
        style.getLocked());
  }

  private static String color(XSSFColor color) {
    return color == null || color.getARGBHex() == null ? "" : color.getARGBHex();
  }

  private static String line(Object... parts) {
    StringBuilder line = new StringBuilder();
    for (Object part : parts) {
      line.append(line.length() == 0 ? "" : BETWEEN)
          .append(String.valueOf(part).replace("\n", NEW_LINE).replace(BETWEEN, " "));
    }
    return line.toString();
  }
}
