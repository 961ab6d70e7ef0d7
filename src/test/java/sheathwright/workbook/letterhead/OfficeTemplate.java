package sheathwright.workbook.letterhead;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;

/**
 * An invented office's letterhead with what templates lose when they are filled elsewhere: formulas
 * below, above and across a list, a shared formula, names of a cell and of a formula, conditional
 * formats, validation, merged cells, heights, page breaks, print area, repeated rows, a chart, a
 * text box, a picture, a picture in the page header, a protected sheet.
 */
final class OfficeTemplate {

  static final String TAB = "Our letter";
  static final int FIRST_LINE = 9;
  static final int LINES = 6;

  /** One green dot. */
  private static final byte[] DOT =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

  private static final String VML =
      """
      <xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office"><v:shape id="LH" type="#_x0000_t75" style="position:absolute;width:40pt;height:40pt"><v:imagedata o:relid="rId1" o:title="mark"/></v:shape></xml>""";

  private OfficeTemplate() {}

  /** The bytes of the file, with more cells put into it: words by their addresses. */
  static byte[] with(Map<String, String> further) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet(TAB);
      laidOut(workbook, sheet);
      new TreeMap<>(further).forEach((address, text) -> cell(sheet, address).setCellValue(text));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      return withHeaderPicture(bytes.toByteArray());
    }
  }

  private static void laidOut(XSSFWorkbook workbook, XSSFSheet sheet) {
    XSSFFont brand = workbook.createFont();
    brand.setFontName("Georgia");
    brand.setFontHeightInPoints((short) 15);
    brand.setColor(IndexedColors.DARK_RED.getIndex());
    XSSFCellStyle styled = workbook.createCellStyle();
    styled.setFont(brand);
    styled.setFillForegroundColor(IndexedColors.LEMON_CHIFFON.getIndex());
    styled.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    styled.setBorderBottom(BorderStyle.DOUBLE);
    styled.setAlignment(HorizontalAlignment.CENTER);
    styled.setDataFormat(workbook.createDataFormat().getFormat("[$$-409]#,##0.00;[Red]-0.00"));
    sheet.setColumnWidth(0, 31 * 256);
    sheet.setColumnWidth(3, 17 * 256);
    name(workbook, "our_share", "'%s'!$G$1".formatted(TAB));
    name(workbook, "TheirTotal", "SUM('%s'!$E$10:$E$15)".formatted(TAB));
    text(sheet, "A1", "Fennimore roof decks", styled);
    sheet.addMergedRegion(CellRangeAddress.valueOf("A1:C1"));
    sheet.getRow(0).setHeightInPoints(41);
    text(sheet, "A3", "{customer}", styled);
    text(sheet, "B3", "{quote_total_usd}", styled);
    formula(sheet, "C3", "B3*1.05").setCellStyle(styled);
    text(sheet, "A4", "{good_until}", styled);
    formula(sheet, "B4", "SUM(E10:E15)"); // above the list
    for (int line = 0; line < LINES; line++) {
      int row = FIRST_LINE + line + 1;
      text(sheet, "A" + row, "{lines.item}", styled);
      text(sheet, "B" + row, "{lines.quantity}", styled);
      text(sheet, "C" + row, " { lines.price_usd } ", styled);
      formula(sheet, "D" + row, "IF(A%d=\"\",\"\",B%d*C%d)".formatted(row, row, row)); // across
      text(sheet, "E" + row, "{lines.amount_usd}", styled);
      shared(sheet, row, line);
    }
    formula(sheet, "E16", "SUM(E10:E15)").setCellStyle(styled); // below
    formula(sheet, "E17", "our_share*TheirTotal");
    cell(sheet, "G1").setCellValue(0.5);
    var conditional = sheet.getSheetConditionalFormatting();
    var rule = conditional.createConditionalFormattingRule("$E10>1000");
    rule.createFontFormatting().setFontStyle(true, true);
    conditional.addConditionalFormatting(
        new CellRangeAddress[] {CellRangeAddress.valueOf("A10:E15")}, rule);
    var validations = sheet.getDataValidationHelper();
    sheet.addValidationData(
        validations.createValidation(
            validations.createExplicitListConstraint(new String[] {"yes", "no"}),
            new CellRangeAddressList(17, 17, 0, 0)));
    sheet.setRowBreak(20);
    workbook.setPrintArea(0, 0, 6, 0, 30);
    sheet.setRepeatingRows(CellRangeAddress.valueOf("1:2"));
    sheet.getFooter().setCenter("Fennimore, page &P");
    drawn(workbook, sheet);
    sheet.protectSheet("grouse");
  }

  private static void drawn(XSSFWorkbook workbook, XSSFSheet sheet) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    drawing.createPicture(
        new XSSFClientAnchor(0, 0, 0, 0, 7, 0, 8, 3),
        workbook.addPicture(DOT, XSSFWorkbook.PICTURE_TYPE_PNG));
    drawing.createTextbox(new XSSFClientAnchor(0, 0, 0, 0, 7, 4, 9, 7)).setText("We sweep up.");
    XSSFChart chart = drawing.createChart(new XSSFClientAnchor(0, 0, 0, 0, 7, 8, 12, 20));
    var data =
        chart.createData(
            ChartTypes.BAR,
            chart.createCategoryAxis(AxisPosition.BOTTOM),
            chart.createValueAxis(AxisPosition.LEFT));
    data.addSeries(
        XDDFDataSourcesFactory.fromStringCellRange(sheet, CellRangeAddress.valueOf("A10:A15")),
        XDDFDataSourcesFactory.fromNumericCellRange(sheet, CellRangeAddress.valueOf("E10:E15")));
    chart.plot(data);
  }

  /** One formula for all lines, written in the first of them (ECMA-376, part 1, 18.3.1.40). */
  private static void shared(XSSFSheet sheet, int row, int line) {
    XSSFCell cell = cell(sheet, "F" + row);
    cell.setCellFormula("ROW()-" + FIRST_LINE);
    CTCellFormula formula = cell.getCTCell().getF();
    formula.setT(STCellFormulaType.SHARED);
    formula.setSi(0);
    if (line == 0) {
      formula.setRef("F%d:F%d".formatted(row, row + LINES - 1));
    } else {
      formula.setStringValue("");
    }
  }

  private static void text(XSSFSheet sheet, String address, String text, XSSFCellStyle style) {
    XSSFCell cell = cell(sheet, address);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }

  private static XSSFCell formula(XSSFSheet sheet, String address, String formula) {
    XSSFCell cell = cell(sheet, address);
    cell.setCellFormula(formula);
    return cell;
  }

  private static XSSFCell cell(XSSFSheet sheet, String address) {
    var at = new org.apache.poi.ss.util.CellReference(address);
    XSSFRow row = sheet.getRow(at.getRow());
    XSSFRow there = row == null ? sheet.createRow(at.getRow()) : row;
    XSSFCell cell = there.getCell(at.getCol());
    return cell == null ? there.createCell(at.getCol()) : cell;
  }

  static void name(XSSFWorkbook workbook, String name, String points) {
    var made = workbook.createName();
    made.setNameName(name);
    made.setRefersToFormula(points);
  }

  /** The library that writes the rest cannot do this. */
  private static byte[] withHeaderPicture(byte[] bytes) throws IOException {
    OfficeFile file = OfficeFile.of("template", bytes);
    var sheet = file.sheets().get(0);
    file.put("xl/drawings/vmlDrawing9.vml", VML);
    file.parts().put("xl/media/header.png", DOT);
    file.put(
        "xl/drawings/_rels/vmlDrawing9.vml.rels",
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"%s/image\" Target=\"../media/header.png\"/></Relationships>"
            .formatted(Xml.RELATIONS));
    String rels = Relation.part(sheet.part());
    file.put(
        rels,
        new String(file.parts().get(rels), java.nio.charset.StandardCharsets.UTF_8)
            .replace(
                "</Relationships>",
                "<Relationship Id=\"rId77\" Type=\"%s/vmlDrawing\" Target=\"../drawings/vmlDrawing9.vml\"/></Relationships>"
                    .formatted(Xml.RELATIONS)));
    String types = "[Content_Types].xml";
    file.put(
        types,
        new String(file.parts().get(types), java.nio.charset.StandardCharsets.UTF_8)
            .replaceFirst(
                "<Default ",
                "<Default Extension=\"vml\" ContentType=\"application/vnd.openxmlformats-officedocument.vmlDrawing\"/><Default "));
    String text =
        new String(file.parts().get(sheet.part()), java.nio.charset.StandardCharsets.UTF_8);
    file.put(
        sheet.part(),
        text.replace("<headerFooter>", "<headerFooter><oddHeader>&amp;L&amp;G</oddHeader>")
            .replace(
                "</worksheet>",
                "<legacyDrawingHF xmlns:r=\"%s\" r:id=\"rId77\"/></worksheet>"
                    .formatted(Xml.RELATIONS)));
    return OfficeLetterhead.packed(file);
  }
}
