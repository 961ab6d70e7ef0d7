package sheathwright.workbook.book;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.part.Chart;
import sheathwright.workbook.part.DrawingLayer;
import sheathwright.workbook.part.FilePart;
import sheathwright.workbook.part.Ooxml;
import sheathwright.workbook.part.PartFile;
import sheathwright.workbook.part.Pasted;
import sheathwright.workbook.part.Picture;
import sheathwright.workbook.part.Properties;
import sheathwright.workbook.part.Sheet;
import sheathwright.workbook.part.Styles;
import sheathwright.workbook.part.Theme;
import sheathwright.workbook.part.WorkbookPart;

/**
 * A workbook's file: each of its parts is written as text, so that no cell is ever an object of its
 * own in a tree of XML (decision 051). The looks and the texts that cells share come last, when all
 * lines have taken theirs.
 */
final class PackedBook {

  private final Particulars particulars;
  private final Styles styles;
  private final DefinedNames names;
  private final List<Tab> tabs;
  private final ManifestPart manifest;
  private final SharedTexts texts = new SharedTexts();
  private final Map<Tab, Consumer<OutputStream>> further = new HashMap<>();
  private final PartFile file = new PartFile();
  private final Map<ByteBuffer, FilePart> pictures = new HashMap<>();
  private int layers;
  private int charts;

  PackedBook(
      Particulars particulars,
      Styles styles,
      DefinedNames names,
      List<Tab> tabs,
      ManifestPart manifest) {
    this.particulars = particulars;
    this.styles = styles;
    this.names = names;
    this.tabs = tabs;
    this.manifest = manifest;
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
    List<Sheet> sheets = tabs.stream().map(Tab::sheet).toList();
    List<String> links = new ArrayList<>();
    FilePart workbook =
        file.add(
            "xl/workbook.xml",
            Ooxml.WORKBOOK,
            to -> write(WorkbookPart.text(sheets, links, names.xml()), to));
    file.whole().link(Ooxml.LINKS + "/officeDocument", workbook);
    Properties.add(file, particulars);
    for (Tab tab : tabs) {
      links.add(workbook.link(Ooxml.LINKS + "/worksheet", sheet(tab, links.size() + 1)));
    }
    workbook.link(
        Ooxml.LINKS + "/theme", file.add("xl/theme/theme1.xml", Ooxml.THEME, Theme::writeTo));
    manifest.addTo(file, workbook, further.keySet());
    workbook.link(
        Ooxml.LINKS + "/styles",
        file.add("xl/styles.xml", Ooxml.STYLES, to -> write(styles.text(), to)));
    workbook.link(
        Ooxml.LINKS + "/sharedStrings",
        file.add("xl/sharedStrings.xml", Ooxml.TEXTS, texts::writeTo));
    file.writeTo(out);
  }

  private FilePart sheet(Tab tab, int number) {
    FilePart part =
        file.add(
            "xl/worksheets/sheet" + number + ".xml",
            Ooxml.SHEET,
            to -> write(tab, number == 1, to));
    DrawingLayer layer = tab.sheet().layer();
    if (!layer.isEmpty()) {
      FilePart drawing =
          file.add(
              "xl/drawings/drawing" + ++layers + ".xml",
              Ooxml.DRAWING,
              FilePart.Content.of(layer.text()));
      part.link(Ooxml.LINKS + "/drawing", drawing);
      layer.pasted().forEach(each -> drawing.link(each.link(), pasted(each)));
    }
    return part;
  }

  private FilePart pasted(Pasted what) {
    if (what instanceof Chart chart) {
      return file.add(
          "xl/charts/chart" + ++charts + ".xml", Ooxml.CHART, FilePart.Content.of(chart.text()));
    }
    byte[] bytes = ((Picture) what).bytes();
    // a photograph that is shown twice stands in the file once
    return pictures.computeIfAbsent(
        ByteBuffer.wrap(bytes),
        none ->
            file.add(
                "xl/media/image" + (pictures.size() + 1) + ".jpeg",
                Ooxml.JPEG,
                to -> to.write(bytes)));
  }

  private void write(Tab tab, boolean isFirst, OutputStream out) throws IOException {
    write(tab.sheet().head(isFirst), out);
    try {
      SheetText.sharing(texts, out).write(tab.lines());
      further.getOrDefault(tab, none -> {}).accept(out);
    } catch (UncheckedIOException unwritable) {
      throw unwritable.getCause();
    }
    write(tab.sheet().tail(tab.validations()), out);
  }

  private static void write(String text, OutputStream out) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
