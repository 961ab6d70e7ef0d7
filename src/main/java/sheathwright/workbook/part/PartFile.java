package sheathwright.workbook.part;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A file of parts, packed: what kinds they are stands first, then each part in the order in which
 * they were added. The same parts always make the same bytes.
 */
public final class PartFile {

  /** The part that says what kinds the others are. */
  public static final String KINDS = "[Content_Types].xml";

  private static final String KIND_OF_LINKS =
      "application/vnd.openxmlformats-package.relationships+xml";

  /** The first moment that a packed file bears without a time zone beside it. */
  private static final LocalDateTime FIXED_DATE = LocalDateTime.of(1980, 1, 1, 0, 0, 2);

  private final FilePart whole = new FilePart("", "", out -> {});
  private final List<FilePart> parts = new ArrayList<>();

  /** What the file itself points at. */
  public FilePart whole() {
    return whole;
  }

  /**
   * One more part.
   *
   * @param kind of what stands in it, as {@link Ooxml} names it
   */
  public FilePart add(String name, String kind, FilePart.Content content) {
    FilePart part = new FilePart(name, kind, content);
    parts.add(part);
    return part;
  }

  /** Packs all of them. */
  public void writeTo(OutputStream out) throws IOException {
    ZipOutputStream packed = new ZipOutputStream(out);
    packed.setLevel(Deflater.BEST_SPEED);
    write(packed, KINDS, FilePart.Content.of(kinds()));
    write(packed, whole.nameOfLinks(), FilePart.Content.of(whole.linksText()));
    for (FilePart part : parts) {
      packed.setLevel(part.level());
      write(packed, part.name(), part.content());
      if (part.isLinked()) {
        write(packed, part.nameOfLinks(), FilePart.Content.of(part.linksText()));
      }
    }
    packed.finish();
  }

  private static void write(ZipOutputStream packed, String name, FilePart.Content content)
      throws IOException {
    packed.putNextEntry(entry(name));
    content.writeTo(packed);
  }

  /** The head of a packed part, which bears no day. */
  public static ZipEntry entry(String name) {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(FIXED_DATE);
    return entry;
  }

  private String kinds() {
    XmlText xml = new XmlText().add(XmlText.HEAD).open("Types", "xmlns", Ooxml.PACKAGE_KINDS);
    xml.empty("Default", "Extension", "rels", "ContentType", KIND_OF_LINKS);
    xml.empty("Default", "Extension", "xml", "ContentType", Ooxml.XML);
    xml.empty("Default", "Extension", "jpeg", "ContentType", Ooxml.JPEG);
    for (FilePart part : parts) {
      if (!part.kind().equals(Ooxml.XML) && !part.kind().equals(Ooxml.JPEG)) {
        xml.empty("Override", "PartName", "/" + part.name(), "ContentType", part.kind());
      }
    }
    return xml.close("Types").toString();
  }
}
