package sheathwright.workbook.part;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A file of one sheet, made from parts and opened by a reader that others wrote. */
final class WrittenParts {

  private WrittenParts() {}

  /** The sheet as Apache POI reads it, which keeps to ECMA-376. */
  static XSSFWorkbook opened(Styles styles, Sheet sheet, String lines) {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(packed(styles, sheet, lines)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static byte[] packed(Styles styles, Sheet sheet, String lines) {
    PartFile file = new PartFile();
    List<String> links = new ArrayList<>();
    FilePart workbook =
        file.add(
            "xl/workbook.xml",
            Ooxml.WORKBOOK,
            out -> FilePart.Content.of(WorkbookPart.text(List.of(sheet), links, "")).writeTo(out));
    file.whole().link(Ooxml.LINKS + "/officeDocument", workbook);
    FilePart part =
        file.add(
            "xl/worksheets/sheet1.xml",
            Ooxml.SHEET,
            FilePart.Content.of(sheet.head(true) + lines + sheet.tail(List.of())));
    links.add(workbook.link(Ooxml.LINKS + "/worksheet", part));
    if (!sheet.layer().isEmpty()) {
      FilePart drawing =
          file.add(
              "xl/drawings/drawing1.xml", Ooxml.DRAWING, FilePart.Content.of(sheet.layer().text()));
      part.link(Ooxml.LINKS + "/drawing", drawing);
      for (Pasted each : sheet.layer().pasted()) {
        drawing.link(each.link(), pasted(file, each));
      }
    }
    workbook.link(
        Ooxml.LINKS + "/styles",
        file.add("xl/styles.xml", Ooxml.STYLES, FilePart.Content.of(styles.text())));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      file.writeTo(bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  private static FilePart pasted(PartFile file, Pasted what) {
    return what instanceof Chart chart
        ? file.add("xl/charts/chart1.xml", Ooxml.CHART, FilePart.Content.of(chart.text()))
        : file.add("xl/media/image1.jpeg", Ooxml.JPEG, out -> out.write(((Picture) what).bytes()));
  }
}
