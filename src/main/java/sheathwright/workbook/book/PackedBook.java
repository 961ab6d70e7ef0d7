package sheathwright.workbook.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook's file. POI writes everything but the cells and their names: those go out as text, so
 * that no cell is ever an object of its own in a tree of XML. The texts that cells share and the
 * styles are written last, when all lines have taken theirs.
 */
final class PackedBook {

  private static final String NO_LINES = "<sheetData/>";
  private static final String END_OF_NAMES = "</definedNames>";

  /** The first day that a packed file can bear: the same lines always make the same bytes. */
  private static final LocalDateTime FIXED_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final XSSFWorkbook workbook;
  private final DefinedNames names;
  private final SharedTexts texts = new SharedTexts();
  private final Map<String, Consumer<OutputStream>> lines = new HashMap<>();

  PackedBook(XSSFWorkbook workbook, DefinedNames names, Iterable<Tab> tabs) {
    this.workbook = workbook;
    this.names = names;
    tabs.forEach(tab -> with(tab, further -> {}));
  }

  /**
   * Writes more lines below what stands on one tab.
   *
   * @param further writes each of them and forgets it
   */
  void with(Tab tab, Consumer<OutputStream> further) {
    lines.put(
        name(tab.sheet()),
        out -> {
          SheetText.sharing(texts, out).write(tab.lines());
          further.accept(out);
        });
  }

  void write(OutputStream out) throws IOException {
    ByteArrayOutputStream bare = new ByteArrayOutputStream();
    workbook.write(bare);
    workbook.close();
    ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(bare.toByteArray()));
    ZipOutputStream packed = new ZipOutputStream(out);
    packed.setLevel(
        Deflater.BEST_SPEED); // lines are much alike: a third of the time, little larger
    String named = name(workbook);
    String styles = name(workbook.getStylesSource());
    String shared = name(workbook.getSharedStringSource());
    for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
      String name = part.getName();
      if (name.equals(styles) || name.equals(shared)) {
        continue;
      }
      begin(packed, name);
      if (lines.containsKey(name)) {
        String around = text(parts);
        int place = around.indexOf(NO_LINES);
        write(around.substring(0, place) + "<sheetData>", packed);
        try {
          lines.get(name).accept(packed);
        } catch (UncheckedIOException unwritable) {
          throw unwritable.getCause();
        }
        write("</sheetData>" + around.substring(place + NO_LINES.length()), packed);
      } else if (name.equals(named)) {
        String around = text(parts);
        int place = around.indexOf(END_OF_NAMES);
        write(around.substring(0, place), packed);
        write(names.xml().toString(), packed);
        write(around.substring(place), packed);
      } else {
        parts.transferTo(packed);
      }
    }
    begin(packed, styles);
    workbook.getStylesSource().writeTo(packed);
    begin(packed, shared);
    texts.writeTo(packed);
    packed.finish();
  }

  private static String text(ZipInputStream part) throws IOException {
    return new String(part.readAllBytes(), StandardCharsets.UTF_8);
  }

  private static void write(String text, OutputStream out) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String name(POIXMLDocumentPart part) {
    return part.getPackagePart().getPartName().getName().substring(1);
  }

  private static void begin(ZipOutputStream packed, String name) throws IOException {
    ZipEntry part = new ZipEntry(name);
    part.setTimeLocal(FIXED_DATE);
    packed.putNextEntry(part);
  }
}
