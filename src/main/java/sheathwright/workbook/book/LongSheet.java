package sheathwright.workbook.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import sheathwright.figure.Traced;

/**
 * A sheet with more lines than anyone would hold: the rest of the workbook is copied as it was
 * written, and below what stands on this sheet each further line goes out as text and is forgotten
 * (SpreadsheetML, ECMA-376, 18.3.1). Its styles are written last, when all lines have taken theirs.
 */
public final class LongSheet {

  private static final String END_OF_LINES = "</sheetData>";

  /** The first day that a packed file can bear: the same lines always make the same bytes. */
  private static final LocalDateTime FIXED_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final Tab tab;
  private final OutputStream out;
  private final StringBuilder xml = new StringBuilder();
  private final String[] letters;
  private List<String[]> formulas = List.of();

  private LongSheet(Tab tab, OutputStream out) {
    this.tab = tab;
    this.out = out;
    this.letters =
        IntStream.range(0, tab.columns())
            .mapToObj(CellReference::convertNumToColString)
            .toArray(String[]::new);
  }

  /**
   * Writes a workbook with more lines on one of its sheets.
   *
   * @param workbook as it is without them
   * @param lines writes them
   */
  static void write(byte[] workbook, Tab tab, OutputStream out, Consumer<LongSheet> lines)
      throws IOException {
    StylesTable styles = tab.sheet().getWorkbook().getStylesSource();
    ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(workbook));
    ZipOutputStream packed = new ZipOutputStream(out);
    packed.setLevel(
        Deflater.BEST_SPEED); // lines are much alike: a third of the time, little larger
    for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
      if (part.getName().equals(name(styles))) {
        continue;
      }
      begin(packed, part.getName());
      if (part.getName().equals(name(tab.sheet()))) {
        String around = new String(parts.readAllBytes(), StandardCharsets.UTF_8);
        int end = around.indexOf(END_OF_LINES);
        write(around.substring(0, end), packed);
        try {
          lines.accept(new LongSheet(tab, packed));
        } catch (UncheckedIOException unwritable) {
          throw unwritable.getCause();
        }
        write(around.substring(end), packed);
      } else {
        parts.transferTo(packed);
      }
    }
    begin(packed, name(styles));
    styles.writeTo(packed);
    packed.finish();
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

  /**
   * The formulas of all further lines.
   *
   * @param ofColumns with {@link CellNotation#ROW} for the row's number; empty where values stand
   *     by themselves
   */
  public void formulas(List<String> ofColumns) {
    formulas =
        ofColumns.stream().map(formula -> escaped(formula).split(CellNotation.ROW, -1)).toList();
  }

  /**
   * One more line.
   *
   * @param row counted from 0
   */
  public void line(int row, List<Traced> values) {
    String number = String.valueOf(row + 1);
    xml.setLength(0);
    xml.append("<row r=\"").append(number).append('"');
    if (tab.linesFor(values) > 1) {
      xml.append(" ht=\"").append(tab.height(values)).append("\" customHeight=\"1\"");
    }
    xml.append('>');
    for (int column = 0; column < values.size(); column++) {
      Traced value = values.get(column);
      xml.append("<c r=\"").append(letters[column]).append(number);
      xml.append("\" s=\"").append(tab.listedStyle(value, true).getIndex()).append('"');
      boolean isFormula = !value.step().isValueOnly();
      CellValue.write(value, new Cell(isFormula ? String.join(number, formulas.get(column)) : ""));
      xml.append("</c>");
    }
    xml.append("</row>");
    try {
      write(xml.toString(), out);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  /** One cell's content, its kind before it. */
  private final class Cell implements CellValue {

    private final String formula;

    Cell(String formula) {
      this.formula = formula;
    }

    @Override
    public void text(String text) {
      if (formula.isEmpty()) {
        xml.append(" t=\"inlineStr\"><is><t");
        xml.append(text.equals(text.strip()) ? ">" : " xml:space=\"preserve\">");
        xml.append(escaped(text)).append("</t></is>");
      } else {
        value(" t=\"str\"", escaped(text));
      }
    }

    @Override
    public void number(double number) {
      long whole = (long) number;
      value("", whole == number ? Long.toString(whole) : Double.toString(number));
    }

    @Override
    public void refused() {
      value(" t=\"e\"", FormulaError.NA.getString());
    }

    private void value(String kind, String shown) {
      xml.append(kind).append('>');
      if (!formula.isEmpty()) {
        xml.append("<f>").append(formula).append("</f>");
      }
      xml.append("<v>").append(shown).append("</v>");
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
