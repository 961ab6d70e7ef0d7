package sheathwright.workbook.part;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * The layer of a sheet on which drawings, charts and photographs stand (ECMA-376, 20.5). Nothing
 * gets onto it without the words for whoever cannot see it.
 */
public final class DrawingLayer {

  /** Each drawing of a sheet has so many to itself: no two shapes on a sheet have the same. */
  private static final long NUMBERS = 100_000;

  private final Sheet sheet;
  private final List<Placed> drawings = new ArrayList<>();
  private final List<Pasted> pasted = new ArrayList<>();

  /** A drawing between two cells; what it holds is asked for when the file is written. */
  private record Placed(Anchor anchor, Supplier<String> drawing) {}

  DrawingLayer(Sheet sheet) {
    this.sheet = sheet;
  }

  public boolean isEmpty() {
    return drawings.isEmpty();
  }

  /** An empty group of shapes, in units of its own. */
  public ShapeGroup group(Anchor anchor, Words words, int wide, int high) {
    ShapeGroup group = new ShapeGroup(wide, high);
    long number = nextNumber();
    drawings.add(new Placed(anchor, () -> group.text(words, number)));
    return group;
  }

  /** A chart. */
  public void chart(Anchor anchor, Words words, Chart chart) {
    XmlText xml = new XmlText().open("xdr:graphicFrame").open("xdr:nvGraphicFramePr");
    words.writeTo(xml, nextNumber());
    xml.empty("xdr:cNvGraphicFramePr").close("xdr:nvGraphicFramePr");
    xml.open("xdr:xfrm").empty("a:off", "x", 0, "y", 0);
    xml.empty("a:ext", "cx", wide(anchor), "cy", high(anchor)).close("xdr:xfrm");
    xml.open("a:graphic").open("a:graphicData", "uri", Ooxml.CHARTS);
    xml.empty("c:chart", "xmlns:c", Ooxml.CHARTS, "r:id", paste(chart));
    xml.close("a:graphicData").close("a:graphic").close("xdr:graphicFrame");
    drawings.add(new Placed(anchor, xml::toString));
  }

  /** A picture. */
  public void picture(Anchor anchor, Words words, Picture picture) {
    XmlText xml = new XmlText().open("xdr:pic").open("xdr:nvPicPr");
    words.writeTo(xml, nextNumber());
    xml.open("xdr:cNvPicPr").empty("a:picLocks", "noChangeAspect", 1).close("xdr:cNvPicPr");
    xml.close("xdr:nvPicPr").open("xdr:blipFill").empty("a:blip", "r:embed", paste(picture));
    xml.open("a:stretch").empty("a:fillRect").close("a:stretch").close("xdr:blipFill");
    xml.open("xdr:spPr").open("a:xfrm").empty("a:off", "x", 0, "y", 0);
    xml.empty("a:ext", "cx", 0, "cy", 0).close("a:xfrm");
    xml.open("a:prstGeom", "prst", "rect").empty("a:avLst").close("a:prstGeom");
    xml.close("xdr:spPr").close("xdr:pic");
    drawings.add(new Placed(anchor, xml::toString));
  }

  private long nextNumber() {
    return NUMBERS * (drawings.size() + 1);
  }

  private String paste(Pasted what) {
    pasted.add(what);
    return FilePart.link(pasted.size());
  }

  private long wide(Anchor anchor) {
    double dots = 0;
    for (int column = anchor.from().column(); column < anchor.to().column(); column++) {
      dots += sheet.dots(column);
    }
    return Math.round(dots) * Anchor.UNITS_A_DOT;
  }

  private static long high(Anchor anchor) {
    int lines = anchor.to().row() - anchor.from().row();
    return Math.round(lines * Sheet.LINE * Anchor.UNITS_A_POINT);
  }

  /** What stands on it and has a part of its own, in the order in which its text points there. */
  public List<Pasted> pasted() {
    return pasted;
  }

  /** The whole part. */
  public String text() {
    XmlText xml = new XmlText().add(XmlText.HEAD);
    xml.open(
        "xdr:wsDr", "xmlns:xdr", Ooxml.PLACES, "xmlns:a", Ooxml.SHAPES, "xmlns:r", Ooxml.LINKS);
    for (Placed each : drawings) {
      xml.open("xdr:twoCellAnchor", "editAs", "twoCell");
      each.anchor().writeTo(xml);
      xml.add(each.drawing().get()).empty("xdr:clientData").close("xdr:twoCellAnchor");
    }
    return xml.close("xdr:wsDr").toString();
  }
}
