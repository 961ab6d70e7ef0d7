package sheathwright.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * What a program does that somebody writes by hand with POI and nothing else: the cells, styles and
 * names of a workbook, from a {@link CellListing} of them. It computes nothing and draws, protects,
 * prints and checks nothing. Formulas are taken as they are, without POI's parser.
 */
final class BareWorkbook {

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final List<XSSFCellStyle> styles = new ArrayList<>();
  private XSSFSheet sheet;
  private XSSFRow row;

  private BareWorkbook() {}

  /** Usage: LISTING WORKBOOK ... */
  public static void main(String[] files) throws IOException {
    for (int at = 0; at < files.length; at += 2) {
      Files.write(Path.of(files[at + 1]), bytes(Files.readAllLines(Path.of(files[at]))));
    }
  }

  static byte[] bytes(List<String> listing) throws IOException {
    BareWorkbook bare = new BareWorkbook();
    bare.workbook.setCellFormulaValidation(false);
    listing.forEach(line -> bare.take(line.split(CellListing.BETWEEN, -1)));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bare.workbook.write(bytes);
    bare.workbook.close();
    return bytes.toByteArray();
  }

  private void take(String[] line) {
    switch (line[0]) {
      case "style" -> styles.add(style(line));
      case "sheet" -> sheet = workbook.createSheet(line[1]);
      case "width" -> sheet.setColumnWidth(Integer.parseInt(line[1]), Integer.parseInt(line[2]));
      case "row" -> {
        row = sheet.createRow(Integer.parseInt(line[1]));
        row.setHeightInPoints(Float.parseFloat(line[2]));
      }
      case "cell" -> cell(line);
      case "name" -> {
        Name name = workbook.createName();
        name.setNameName(line[1]);
        name.setRefersToFormula(line[2]);
      }
      default -> throw new IllegalArgumentException(line[0]);
    }
  }

  private void cell(String[] line) {
    XSSFCell cell = row.createCell(Integer.parseInt(line[1]));
    cell.setCellStyle(styles.get(Integer.parseInt(line[2])));
    if (!line[5].isEmpty()) {
      cell.setCellFormula(line[5]);
    }
    switch (line[3]) {
      case "NUMERIC" -> cell.setCellValue(Double.parseDouble(line[4]));
      case "STRING" -> cell.setCellValue(line[4].replace(CellListing.NEW_LINE, "\n"));
      case "ERROR" -> cell.setCellErrorValue(FormulaError.NA);
      default -> {}
    }
  }

  private XSSFCellStyle style(String[] line) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(line[1]));
    XSSFFont font = workbook.createFont();
    font.setFontName(line[2]);
    font.setFontHeightInPoints(Short.parseShort(line[3]));
    font.setBold(Boolean.parseBoolean(line[4]));
    if (!line[5].isEmpty()) {
      font.setColor(color(line[5]));
    }
    style.setFont(font);
    if (!line[6].isEmpty()) {
      style.setFillForegroundColor(color(line[6]));
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
    style.setBorderTop(BorderStyle.valueOf(line[7]));
    style.setBorderBottom(BorderStyle.valueOf(line[8]));
    style.setBorderLeft(BorderStyle.valueOf(line[9]));
    style.setBorderRight(BorderStyle.valueOf(line[10]));
    if (!line[11].isEmpty()) {
      style.setBottomBorderColor(color(line[11]));
    }
    style.setAlignment(HorizontalAlignment.valueOf(line[12]));
    style.setVerticalAlignment(VerticalAlignment.valueOf(line[13]));
    style.setWrapText(Boolean.parseBoolean(line[14]));
    style.setIndention(Short.parseShort(line[15]));
    style.setLocked(Boolean.parseBoolean(line[16]));
    return style;
  }

  private static XSSFColor color(String hex) {
    return new XSSFColor(HexFormat.of().parseHex(hex), null);
  }
}
