package sheathwright.workbook.letterhead;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.w3c.dom.Element;
import sheathwright.workbook.draw.Photograph;
import sheathwright.workbook.letterhead.OfficeFile.Sheet;

/** Lays photographs upon cells, or what cells were made one; each as large as fits, in its shape. */
final class Laying {

  private static final String DRAWING =
      "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
  private static final String DRAWN = "http://schemas.openxmlformats.org/drawingml/2006/main";
  private static final String LINKS_OF =
      "http://schemas.openxmlformats.org/package/2006/relationships";
  private static final String DRAWING_TYPE =
      "application/vnd.openxmlformats-officedocument.drawing+xml";
  private static final String TYPES = "[Content_Types].xml";

  /** The end of a sheet's part, from what points at its drawings on (ECMA-376, part 1, 18.3.1.99). */
  private static final List<String> ORDER =
      List.of(
          "drawing",
          "drawingHF",
          "legacyDrawing",
          "legacyDrawingHF",
          "picture",
          "oleObjects",
          "controls",
          "AlternateContent",
          "webPublishItems",
          "tableParts",
          "extLst");

  private final OfficeFile office;
  private final XSSFWorkbook measured;
  private int number;

  /**
   * Lays photographs upon the sheets of an office's workbook.
   *
   * @param measured the same, which knows how wide its columns are
   */
  Laying(OfficeFile office, XSSFWorkbook measured) {
    this.office = office;
    this.measured = measured;
  }

  void lay(LaidPhoto laid) {
    number++;
    String media = free("xl/media/letterhead_photo", ".jpeg");
    office.parts().put(media, laid.photograph().bytes());
    type(media, "image/jpeg");
    String drawing = drawing(laid.blank().sheet());
    String id = link(drawing, "image", media);
    Element all = office.root(drawing);
    Element anchor =
        Xml.root(office.file(), anchor(laid, id).getBytes(StandardCharsets.UTF_8));
    Xml.all(anchor, "cNvPr").forEach(shape -> shape.setAttribute("descr", laid.words()));
    all.appendChild(all.getOwnerDocument().importNode(anchor, true));
    office.put(drawing, all);
  }

  private String free(String begins, String ends) {
    int at = 1;
    while (office.parts().containsKey(begins + at + ends)) {
      at++;
    }
    return begins + at + ends;
  }

  /** The part that holds what is drawn upon a sheet; made, if there is none. */
  private String drawing(Sheet sheet) {
    return Relation.of(office.file(), office.parts(), sheet.part()).stream()
        .filter(each -> each.is("drawing"))
        .map(Relation::target)
        .findFirst()
        .orElseGet(
            () -> {
              String part = free("xl/drawings/letterhead_drawing", ".xml");
              office.put(part, "<xdr:wsDr xmlns:xdr=\"%s\"/>".formatted(DRAWING));
              type(part, DRAWING_TYPE);
              String id = link(sheet.part(), "drawing", part);
              Xml.section(sheet.root(), "drawing", ORDER)
                  .setAttributeNS(Xml.RELATIONS, "r:id", id);
              office.put(sheet.part(), sheet.root());
              return part;
            });
  }

  private String link(String from, String kind, String to) {
    String part = Relation.part(from);
    if (!office.parts().containsKey(part)) {
      office.put(part, "<Relationships xmlns=\"%s\"/>".formatted(LINKS_OF));
    }
    Element links = office.root(part);
    String id = "letterhead" + (Xml.children(links).size() + 1);
    Element link = links.getOwnerDocument().createElementNS(LINKS_OF, "Relationship");
    link.setAttribute("Id", id);
    link.setAttribute("Type", Xml.RELATIONS + "/" + kind);
    link.setAttribute("Target", "/" + to);
    links.appendChild(link);
    office.put(part, links);
    return id;
  }

  private void type(String part, String type) {
    Element types = office.root(TYPES);
    Element override =
        types.getOwnerDocument().createElementNS(types.getNamespaceURI(), "Override");
    override.setAttribute("PartName", "/" + part);
    override.setAttribute("ContentType", type);
    types.appendChild(override);
    office.put(TYPES, types);
  }

  private String anchor(LaidPhoto laid, String id) {
    Cell cell = laid.blank().cell();
    XSSFSheet sheet = measured.getSheet(laid.blank().sheet().name());
    CellRangeAddress area =
        sheet.getMergedRegions().stream()
            .filter(each -> each.isInRange(cell.row(), cell.column()))
            .findFirst()
            .orElse(
                new CellRangeAddress(cell.row(), cell.row(), cell.column(), cell.column()));
    double wide = 0;
    for (int column = area.getFirstColumn(); column <= area.getLastColumn(); column++) {
      wide += sheet.getColumnWidthInPixels(column) * Units.EMU_PER_PIXEL;
    }
    double high = 0;
    for (int row = area.getFirstRow(); row <= area.getLastRow(); row++) {
      double points =
          sheet.getRow(row) == null
              ? sheet.getDefaultRowHeightInPoints()
              : sheet.getRow(row).getHeightInPoints();
      high += points * Units.EMU_PER_POINT;
    }
    Photograph photograph = laid.photograph();
    double scale = Math.min(wide / photograph.wide(), high / photograph.high());
    return """
        <xdr:oneCellAnchor xmlns:xdr="%s" xmlns:a="%s"><xdr:from><xdr:col>%d</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>%d</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="%d" cy="%d"/><xdr:pic><xdr:nvPicPr><xdr:cNvPr id="%d" name="Letterhead photograph %d"/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr><xdr:blipFill><a:blip xmlns:r="%s" r:embed="%s"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="%d" cy="%d"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>"""
        .formatted(
            DRAWING,
            DRAWN,
            area.getFirstColumn(),
            area.getFirstRow(),
            (long) (photograph.wide() * scale),
            (long) (photograph.high() * scale),
            FIRST_SHAPE + number,
            number,
            Xml.RELATIONS,
            id,
            (long) (photograph.wide() * scale),
            (long) (photograph.high() * scale));
  }

  /** Numbers of shapes from here on are hardly taken by the office's own. */
  private static final int FIRST_SHAPE = 90_000;
}
