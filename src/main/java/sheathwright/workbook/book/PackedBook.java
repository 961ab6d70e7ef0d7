package sheathwright.workbook.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook's file. POI writes everything but the cells, their names and what inputs are held to:
 * those go out as text, so that no cell is ever an object of its own in a tree of XML. The texts
 * that cells share and the styles are written last, when all lines have taken theirs.
 */
final class PackedBook {

  private static final String NO_LINES = "<sheetData/>";
  private static final List<String> AFTER_VALIDATIONS = List.of("<hyperlinks>", "<printOptions ");
  private static final String END_OF_NAMES = "</definedNames>";

  /**
   * The first moment that a packed file bears without a time zone beside it: the same lines always
   * make the same bytes.
   */
  private static final LocalDateTime FIXED_DATE = LocalDateTime.of(1980, 1, 1, 0, 0, 2);

  private final XSSFWorkbook workbook;
  private final DefinedNames names;
  private final ManifestPart manifest;
  private final SharedTexts texts = new SharedTexts();
  private final Map<String, Tab> tabs = new HashMap<>();
  private final Map<Tab, Consumer<OutputStream>> further = new HashMap<>();

  PackedBook(XSSFWorkbook workbook, DefinedNames names, Iterable<Tab> tabs, ManifestPart manifest) {
    this.workbook = workbook;
    this.names = names;
    this.manifest = manifest;
    ManifestPart.announce(workbook);
    tabs.forEach(tab -> this.tabs.put(name(tab.sheet()), tab));
  }

  /**
   * Writes more lines below what stands on one tab.
   *
   * @param lines writes each of them and forgets it
   */
  void with(Tab tab, Consumer<OutputStream> lines) {
    further.put(tab, lines);
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
      if (tabs.containsKey(name)) {
        write(tabs.get(name), text(parts), packed);
      } else if (name.equals(named)) {
        String around = text(parts);
        int place = around.indexOf(END_OF_NAMES);
        write(around.substring(0, place), packed);
        write(names.xml().toString(), packed);
        write(around.substring(place), packed);
      } else if (name.equals(ManifestPart.entry())) {
        packed.setLevel(Deflater.DEFAULT_COMPRESSION); // it is as long as all sheets together
        manifest.write(packed, further.keySet());
        packed.setLevel(Deflater.BEST_SPEED);
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

  /** A sheet's part: around its lines and what its inputs are held to, all is as POI wrote it. */
  private void write(Tab tab, String around, OutputStream packed) throws IOException {
    int lines = around.indexOf(NO_LINES);
    int after = lines + NO_LINES.length();
    int validations = firstOf(around, after);
    write(around.substring(0, lines) + "<sheetData>", packed);
    try {
      SheetText.sharing(texts, packed).write(tab.lines());
      further.getOrDefault(tab, none -> {}).accept(packed);
    } catch (UncheckedIOException unwritable) {
      throw unwritable.getCause();
    }
    write("</sheetData>" + around.substring(after, validations), packed);
    if (!tab.validations().isEmpty()) {
      write("<dataValidations count=\"" + tab.validations().size() + "\">", packed);
      write(String.join("", tab.validations()), packed);
      write("</dataValidations>", packed);
    }
    write(around.substring(validations), packed);
  }

  private static int firstOf(String around, int after) {
    return AFTER_VALIDATIONS.stream()
        .mapToInt(begin -> around.indexOf(begin, after))
        .filter(place -> place >= 0)
        .min()
        .orElseThrow();
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
