package sheathwright.workbook.draw;

import java.util.List;
import org.apache.poi.ss.usermodel.ShapeTypes;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.TextHorizontalOverflow;
import org.apache.poi.xssf.usermodel.TextVerticalOverflow;
import org.apache.poi.xssf.usermodel.XSSFChildAnchor;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTLineProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTPath2D;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.STPresetLineDashVal;
import sheathwright.roof.Box;
import sheathwright.roof.Spot;

/**
 * A drawing to scale on a page, made of lines and areas and therefore crisp at any size. It is
 * drawn in inches, upwards and to the right.
 */
final class Sketch {

  /** How something is drawn: a line of its own, and an area filled or left open. */
  enum Pen {
    WOOD("F3EDDD", null, 0, false),
    CHIP("FFFFFF", null, 0, false),
    SHEET(null, "3B4A3F", 0.75, false),
    OUTLINE(null, "1F2A24", 1.75, false),
    SUPPORT(null, "8A8F84", 0.5, true),
    OPENING("FFFFFF", "1F2A24", 1.25, false),
    PATCH("FFFFFF", "1F2A24", 2, false),
    HATCH(null, "1F2A24", 0.5, false),
    MARK("F6DDD6", "9A2F1C", 1, false),
    NOTE(null, "9A2F1C", 1, true),
    JOINT(null, "9A2F1C", 2.25, false),
    CONTOUR(null, "9A2F1C", 1, false);

    private final String ink;
    private final String line;
    private final double points;
    private final boolean isDashed;

    Pen(String ink, String line, double points, boolean isDashed) {
      this.ink = ink;
      this.line = line;
      this.points = points;
      this.isDashed = isDashed;
    }
  }

  /** Drawing units in an inch of roof. */
  private static final int FINE = 100;

  private final XSSFShapeGroup group;
  private final Box frame;
  private long number;

  /**
   * A drawing between two corners of a page.
   *
   * @param frame what of the roof it shows, in inches
   * @param words said in its place where it cannot be seen
   */
  Sketch(XSSFSheet sheet, Layer.Words words, Box frame, int top, int columns, int lines) {
    this.frame = frame;
    XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, 0, top, columns, top + lines);
    group = Layer.group(sheet, anchor, words);
    number = group.getCTGroupShape().getNvGrpSpPr().getCNvPr().getId();
    group.setCoordinates(0, 0, fine(frame.width()), fine(frame.height()));
  }

  /** Closed areas, or their outlines, as one shape. */
  void areas(Pen pen, List<List<Spot>> rings) {
    draw(pen, rings, true);
  }

  /** Open lines as one shape. */
  void lines(Pen pen, List<List<Spot>> lines) {
    draw(pen, lines, false);
  }

  /** An upright rectangle. */
  void box(Pen pen, Box box) {
    areas(pen, List.of(corners(box)));
  }

  static List<Spot> corners(Box box) {
    return List.of(
        new Spot(box.left(), box.bottom()),
        new Spot(box.right(), box.bottom()),
        new Spot(box.right(), box.top()),
        new Spot(box.left(), box.top()));
  }

  /** Words in the middle of a place, in points on paper. */
  void words(String text, Spot middle, double wide, double high, double points) {
    Box place = Box.at(middle.x() - wide / 2, middle.y() - high / 2, wide, high);
    XSSFSimpleShape shape = shape(place);
    shape.setShapeType(ShapeTypes.RECT);
    shape.setTextHorizontalOverflow(TextHorizontalOverflow.OVERFLOW);
    shape.setTextVerticalOverflow(TextVerticalOverflow.OVERFLOW);
    shape.setWordWrap(false);
    shape.setLeftInset(0);
    shape.setRightInset(0);
    shape.setTopInset(0);
    shape.setBottomInset(0);
    shape.setVerticalAlignment(org.apache.poi.ss.usermodel.VerticalAlignment.CENTER);
    shape.clearText();
    var paragraph = shape.addNewTextParagraph();
    paragraph.setTextAlign(org.apache.poi.xssf.usermodel.TextAlign.CENTER);
    XSSFTextRun run = paragraph.addNewTextRun();
    run.setText(text);
    run.setFontSize(points);
    run.setBold(true);
    run.setFont("Arial");
    run.setFontColor(new java.awt.Color(0x1F, 0x2A, 0x24));
    CTShapeProperties properties = shape.getCTShape().getSpPr();
    if (properties.isSetLn()) {
      properties.unsetLn();
    }
    properties.addNewLn().addNewNoFill();
    properties.addNewNoFill();
  }

  private void draw(Pen pen, List<List<Spot>> rings, boolean isClosed) {
    if (rings.isEmpty()) {
      return;
    }
    double left = rings.stream().flatMap(List::stream).mapToDouble(Spot::x).min().orElse(0);
    double right = rings.stream().flatMap(List::stream).mapToDouble(Spot::x).max().orElse(0);
    double bottom = rings.stream().flatMap(List::stream).mapToDouble(Spot::y).min().orElse(0);
    double top = rings.stream().flatMap(List::stream).mapToDouble(Spot::y).max().orElse(0);
    Box extent = new Box(left, bottom, Math.max(right, left + 0.01), Math.max(top, bottom + 0.01));
    XSSFSimpleShape shape = shape(extent);
    CTShapeProperties properties = shape.getCTShape().getSpPr();
    properties.unsetPrstGeom();
    var geometry = properties.addNewCustGeom();
    geometry.addNewAvLst();
    CTPath2D path = geometry.addNewPathLst().addNewPath();
    path.setW(fine(extent.width()));
    path.setH(fine(extent.height()));
    for (List<Spot> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        var point = i == 0 ? path.addNewMoveTo().addNewPt() : path.addNewLnTo().addNewPt();
        point.setX((long) fine(ring.get(i).x() - extent.left()));
        point.setY((long) fine(extent.top() - ring.get(i).y()));
      }
      if (isClosed) {
        path.addNewClose();
      }
    }
    fill(properties, isClosed ? pen : null);
    line(properties, pen);
  }

  private static void fill(CTShapeProperties properties, Pen pen) {
    if (pen == null || pen.ink == null) {
      properties.addNewNoFill();
    } else {
      properties.addNewSolidFill().addNewSrgbClr().setVal(color(pen.ink));
    }
  }

  private static void line(CTShapeProperties properties, Pen pen) {
    if (properties.isSetLn()) {
      properties.unsetLn();
    }
    CTLineProperties line = properties.addNewLn();
    if (pen.line == null) {
      line.addNewNoFill();
      return;
    }
    line.setW(Units.toEMU(pen.points));
    line.addNewSolidFill().addNewSrgbClr().setVal(color(pen.line));
    if (pen.isDashed) {
      line.addNewPrstDash().setVal(STPresetLineDashVal.DASH);
    }
  }

  private XSSFSimpleShape shape(Box place) {
    XSSFSimpleShape shape =
        group.createSimpleShape(
            new XSSFChildAnchor(
                fine(place.left() - frame.left()),
                fine(frame.top() - place.top()),
                fine(place.right() - frame.left()),
                fine(frame.top() - place.bottom())));
    shape.getCTShape().getNvSpPr().getCNvPr().setId(++number);
    return shape;
  }

  private static byte[] color(String hex) {
    return java.util.HexFormat.of().parseHex(hex);
  }

  private static int fine(double inches) {
    return (int) Math.round(inches * FINE);
  }
}
