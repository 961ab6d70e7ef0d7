package sheathwright.workbook.part;

import java.util.ArrayList;
import java.util.List;

/** Shapes that are one drawing, each in units of the group's own, to the right and down. */
public final class ShapeGroup {

  /** Where a shape stands in its group. */
  public record Frame(int left, int top, int wide, int high) {

    private void writeTo(XmlText xml) {
      xml.open("a:xfrm").empty("a:off", "x", left, "y", top);
      xml.empty("a:ext", "cx", wide, "cy", high).close("a:xfrm");
    }
  }

  /**
   * Words on a drawing.
   *
   * @param points how tall
   */
  public record Label(String text, String font, double points, String color) {}

  /** Runs of points, from the corner of a shape's frame. */
  public static final class Outline {

    private final int wide;
    private final int high;
    private final XmlText path = new XmlText();

    /** Of a size that the frame is filled with. */
    public Outline(int wide, int high) {
      this.wide = wide;
      this.high = high;
    }

    /** Begins a run. */
    public void moveTo(long right, long down) {
      path.open("a:moveTo").empty("a:pt", "x", right, "y", down).close("a:moveTo");
    }

    /** Goes on with it. */
    public void lineTo(long right, long down) {
      path.open("a:lnTo").empty("a:pt", "x", right, "y", down).close("a:lnTo");
    }

    /** Goes back to where it began. */
    public void close() {
      path.empty("a:close");
    }
  }

  /** One of the shapes: what its properties hold behind its frame, and its words if it has any. */
  private record Shape(Frame frame, String properties, String words) {}

  /** Units of letters in a point (ECMA-376, 20.1.10.72). */
  private static final int LETTERS_A_POINT = 100;

  private final int wide;
  private final int high;
  private final List<Shape> shapes = new ArrayList<>();

  ShapeGroup(int wide, int high) {
    this.wide = wide;
    this.high = high;
  }

  /** Areas, or their outlines. */
  public void areas(Frame frame, Outline outline, Ink ink) {
    path(frame, outline, ink);
  }

  /** Lines, which hold no area whatever they go around. */
  public void lines(Frame frame, Outline outline, Ink ink) {
    path(frame, outline, ink.open());
  }

  private void path(Frame frame, Outline outline, Ink ink) {
    XmlText xml = new XmlText().open("a:custGeom").empty("a:avLst").open("a:pathLst");
    xml.open("a:path", "w", outline.wide, "h", outline.high).add(outline.path.toString());
    xml.close("a:path").close("a:pathLst").close("a:custGeom");
    ink.writeTo(xml);
    shapes.add(new Shape(frame, xml.toString(), ""));
  }

  /** Words in the middle of a place, without a line around them. */
  public void label(Frame frame, Label label) {
    XmlText xml =
        new XmlText().open("a:prstGeom", "prst", "rect").empty("a:avLst").close("a:prstGeom");
    Ink.NONE.writeTo(xml);
    shapes.add(new Shape(frame, xml.toString(), words(label)));
  }

  private static String words(Label label) {
    XmlText xml = new XmlText().open("xdr:txBody");
    xml.begin("a:bodyPr")
        .with("vertOverflow", "overflow")
        .with("horzOverflow", "overflow")
        .with("wrap", "none")
        .with("lIns", 0)
        .with("tIns", 0)
        .with("rIns", 0)
        .with("bIns", 0)
        .with("rtlCol", 0)
        .with("anchor", "ctr")
        .closed();
    xml.empty("a:lstStyle").open("a:p").empty("a:pPr", "algn", "ctr").open("a:r");
    long size = Math.round(label.points() * LETTERS_A_POINT);
    xml.open("a:rPr", "lang", "en-US", "sz", size, "b", 1);
    Ink.fill(xml, label.color());
    xml.empty("a:latin", "typeface", label.font()).close("a:rPr").leaf("a:t", label.text());
    return xml.close("a:r").close("a:p").close("xdr:txBody").toString();
  }

  /** As the layer's part holds it; each shape has a number behind the group's. */
  String text(Words said, long number) {
    XmlText xml = new XmlText().open("xdr:grpSp").open("xdr:nvGrpSpPr");
    said.writeTo(xml, number);
    xml.empty("xdr:cNvGrpSpPr").close("xdr:nvGrpSpPr");
    xml.open("xdr:grpSpPr").open("a:xfrm").empty("a:off", "x", 0, "y", 0);
    xml.empty("a:ext", "cx", wide, "cy", high).empty("a:chOff", "x", 0, "y", 0);
    xml.empty("a:chExt", "cx", wide, "cy", high).close("a:xfrm").close("xdr:grpSpPr");
    for (int i = 0; i < shapes.size(); i++) {
      Shape shape = shapes.get(i);
      xml.open("xdr:sp").open("xdr:nvSpPr");
      xml.empty("xdr:cNvPr", "id", number + i + 1, "name", "Shape " + (i + 1));
      xml.empty("xdr:cNvSpPr").close("xdr:nvSpPr").open("xdr:spPr");
      shape.frame().writeTo(xml);
      xml.add(shape.properties()).close("xdr:spPr").add(shape.words()).close("xdr:sp");
    }
    return xml.close("xdr:grpSp").toString();
  }
}
