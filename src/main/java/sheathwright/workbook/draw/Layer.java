package sheathwright.workbook.draw;

import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;

/**
 * The layer of a tab on which drawings, charts and photographs stand. Nothing gets onto it without
 * the words for whoever cannot see it.
 */
final class Layer {

  /** Each drawing of a tab has so many to itself: no two shapes on a tab have the same. */
  private static final long NUMBERS = 100_000;

  /**
   * What is said in a drawing's place.
   *
   * @param name that a spreadsheet program lists it by
   * @param title what it is, in a few words
   * @param description what can be seen on it
   */
  record Words(String name, String title, String description) {

    Words {
      if (name.isBlank() || title.isBlank() || description.isBlank()) {
        throw new IllegalArgumentException(
            "a drawing without words: " + name + title + description);
      }
    }

    private void sayFor(CTNonVisualDrawingProps drawing, XSSFSheet sheet) {
      drawing.setId(
          NUMBERS * sheet.getDrawingPatriarch().getCTDrawing().sizeOfTwoCellAnchorArray());
      drawing.setName(name);
      drawing.setTitle(title);
      drawing.setDescr(description);
    }
  }

  private Layer() {}

  /** A group of shapes, to be drawn in. */
  static XSSFShapeGroup group(XSSFSheet sheet, XSSFClientAnchor anchor, Words words) {
    XSSFShapeGroup group = sheet.createDrawingPatriarch().createGroup(anchor);
    words.sayFor(group.getCTGroupShape().getNvGrpSpPr().getCNvPr(), sheet);
    return group;
  }

  /** A chart without lines yet. */
  static XSSFChart chart(XSSFSheet sheet, XSSFClientAnchor anchor, Words words) {
    XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
    chart.getCTChartSpace().unsetPrintSettings(); // it is printed with its page
    words.sayFor(
        chart.getGraphicFrame().getCTGraphicalObjectFrame().getNvGraphicFramePr().getCNvPr(),
        sheet);
    return chart;
  }

  /** A picture that the workbook holds under a number. */
  static void picture(XSSFSheet sheet, XSSFClientAnchor anchor, int number, Words words) {
    XSSFPicture picture = sheet.createDrawingPatriarch().createPicture(anchor, number);
    words.sayFor(picture.getCTPicture().getNvPicPr().getCNvPr(), sheet);
  }
}
