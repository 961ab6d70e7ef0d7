package sheathwright.workbook.book;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellReference;
import sheathwright.workbook.part.XmlText;

/** Lines of a sheet as they stand in the file (SpreadsheetML, ECMA-376, 18.3.1). */
final class SheetText {

  private final OutputStream out;
  private final Texts texts;
  private final StringBuilder xml = new StringBuilder();
  private final List<String> letters = new ArrayList<>();

  /** Where the text of a cell without a formula stands. */
  @FunctionalInterface
  private interface Texts {
    void write(StringBuilder xml, String text);
  }

  private SheetText(OutputStream out, Texts texts) {
    this.out = out;
    this.texts = texts;
  }

  /** Lines whose texts stand in a list of all of the workbook's. */
  static SheetText sharing(SharedTexts shared, OutputStream out) {
    return new SheetText(
        out,
        (xml, text) -> xml.append(" t=\"s\"><v>").append(shared.numberOf(text)).append("</v></c>"));
  }

  /** Lines that hold their texts, so that nothing is kept of a line which is written. */
  static SheetText holding(OutputStream out) {
    return new SheetText(
        out,
        (xml, text) -> {
          xml.append(" t=\"inlineStr\"><is>");
          appendText(xml, text);
          xml.append("</is></c>");
        });
  }

  /** Writes all lines of a tab. */
  void write(List<TabLine> lines) {
    for (int row = 0; row < lines.size(); row++) {
      if (lines.get(row) != null) {
        write(row, lines.get(row));
      }
    }
  }

  /**
   * Writes a line.
   *
   * @param row counted from 0
   */
  void write(int row, TabLine line) {
    String number = String.valueOf(row + 1);
    xml.setLength(0);
    xml.append("<row r=\"").append(number).append('"');
    line.height()
        .ifPresent(points -> xml.append(" ht=\"").append(points).append("\" customHeight=\"1\""));
    xml.append('>');
    for (int column = 0; column < line.cells().size(); column++) {
      TabCell cell = line.cells().get(column);
      if (cell != null) {
        write(cell, letters(column), number);
      }
    }
    xml.append("</row>");
    try {
      out.write(xml.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private String letters(int column) {
    while (letters.size() <= column) {
      letters.add(CellReference.convertNumToColString(letters.size()));
    }
    return letters.get(column);
  }

  private void write(TabCell cell, String letters, String number) {
    xml.append("<c r=\"").append(letters).append(number);
    xml.append("\" s=\"").append(cell.style().number()).append('"');
    switch (cell.kind()) {
      case EMPTY -> xml.append("/>");
      case TEXT -> {
        if (cell.formula().isEmpty()) {
          texts.write(xml, cell.text());
        } else {
          begin(cell, " t=\"str\"");
          XmlText.append(xml, cell.text());
          xml.append("</v></c>");
        }
      }
      case NUMBER -> {
        begin(cell, "");
        XmlText.append(xml, cell.number());
        xml.append("</v></c>");
      }
      case REFUSED -> {
        begin(cell, " t=\"e\"");
        xml.append(FormulaError.NA.getString()).append("</v></c>");
      }
    }
  }

  private void begin(TabCell cell, String kind) {
    xml.append(kind).append('>');
    if (!cell.formula().isEmpty()) {
      xml.append("<f>");
      XmlText.append(xml, cell.formula());
      xml.append("</f>");
    }
    xml.append("<v>");
  }

  /** A text of its own, its outer spaces kept. */
  static void appendText(StringBuilder xml, String text) {
    xml.append(text.equals(text.strip()) ? "<t>" : "<t xml:space=\"preserve\">");
    XmlText.append(xml, text);
    xml.append("</t>");
  }
}
