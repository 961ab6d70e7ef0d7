package sheathwright.workbook.part;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.file.Program;

/** What a file says of itself, as two parts of it. */
public final class Properties {

  private static final String CORE =
      "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
  private static final String CORE_LINK =
      "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties";
  private static final String MORE =
      "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties";
  private static final String ELEMENTS = "http://purl.org/dc/elements/1.1/";
  private static final String TERMS = "http://purl.org/dc/terms/";
  private static final String TYPES = "http://www.w3.org/2001/XMLSchema-instance";

  private static final int NOON = 12;

  private Properties() {}

  /** Adds both to a file. */
  public static void add(PartFile file, Particulars particulars) {
    FilePart more =
        file.add(
            "docProps/app.xml", Ooxml.PROPERTIES, FilePart.Content.of(more(particulars.company())));
    file.whole().link(Ooxml.LINKS + "/extended-properties", more);
    FilePart core =
        file.add(
            "docProps/core.xml", Ooxml.CORE_PROPERTIES, FilePart.Content.of(core(particulars)));
    file.whole().link(CORE_LINK, core);
  }

  /** ECMA-376, part 1, 22.2. */
  private static String more(String company) {
    XmlText xml = new XmlText().add(XmlText.HEAD).open("Properties", "xmlns", MORE);
    xml.leaf("Application", Program.NAME);
    if (!company.isEmpty()) {
      xml.leaf("Company", company);
    }
    return xml.close("Properties").toString();
  }

  /** ECMA-376, part 2, 11; a file that bears no day bears none, and never that of its writing. */
  private static String core(Particulars particulars) {
    XmlText xml = new XmlText().add(XmlText.HEAD);
    xml.begin("cp:coreProperties")
        .with("xmlns:cp", CORE)
        .with("xmlns:dc", ELEMENTS)
        .with("xmlns:dcterms", TERMS)
        .with("xmlns:xsi", TYPES)
        .opened();
    Optional<LocalDate> on = particulars.on();
    on.ifPresent(
        day ->
            xml.open("dcterms:created", "xsi:type", "dcterms:W3CDTF")
                .words(day.atTime(NOON, 0).toInstant(ZoneOffset.UTC).toString())
                .close("dcterms:created"));
    String company = particulars.company();
    xml.leaf("dc:creator", company.isEmpty() ? Program.NAME : company);
    xml.leaf("dc:subject", particulars.subject()).leaf("dc:title", particulars.title());
    return xml.close("cp:coreProperties").toString();
  }
}
