package sheathwright.workbook.letterhead;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.file.LogProvider;

/** A letterhead with every word that a document offers, as plain as it can be, to restyle. */
public final class PlainLetterhead {

  static {
    LogProvider.settle();
  }

  private static final int WIDTH = 20;
  private static final int FIRST_WIDTH = 38;
  private static final int TITLE_POINTS = 16;
  private static final String MONEY = "$#,##0.00";

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final XSSFCellStyle title = workbook.createCellStyle();
  private final XSSFCellStyle heading = workbook.createCellStyle();
  private final XSSFCellStyle plain = workbook.createCellStyle();
  private final XSSFCellStyle money = workbook.createCellStyle();
  private final XSSFCellStyle told = workbook.createCellStyle();
  private final LetterKind kind;

  private PlainLetterhead(LetterKind kind) {
    this.kind = kind;
    XSSFFont large = workbook.createFont();
    large.setFontHeightInPoints((short) TITLE_POINTS);
    large.setBold(true);
    title.setFont(large);
    XSSFFont bold = workbook.createFont();
    bold.setBold(true);
    heading.setFont(bold);
    heading.setBorderBottom(BorderStyle.THIN);
    heading.setWrapText(true);
    plain.setWrapText(true);
    told.setAlignment(HorizontalAlignment.LEFT);
    money.setDataFormat(workbook.createDataFormat().getFormat(MONEY));
  }

  /** The bytes of an .xlsx file; the same each time. */
  public static byte[] bytes(LetterKind kind) {
    return new PlainLetterhead(kind).written();
  }

  private byte[] written() {
    Map<Boolean, List<Word>> words =
        kind.words().values().stream()
            .collect(Collectors.partitioningBy(word -> word.kind() == Word.Kind.LIST));
    Map<String, List<Word>> lists =
        words.get(true).stream()
            .collect(Collectors.groupingBy(Word::list, LinkedHashMap::new, Collectors.toList()));
    XSSFSheet letter = sheet("Letter", lists);
    cell(row(letter), 0, "Name and address of the firm", title);
    row(letter);
    for (Word word : words.get(false)) {
      XSSFRow row = row(letter);
      cell(row, 0, word.meaning(), plain);
      cell(row, 1, "{" + word.text() + "}", style(word, told));
    }
    lists.values().forEach(list -> write(letter, list));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (workbook) {
      workbook.getProperties().getCoreProperties().setTitle("Letterhead of " + kind.spoken());
      workbook.getProperties().getCoreProperties().setCreated(Optional.empty());
      workbook.write(bytes);
      OfficeFile office = OfficeFile.of(kind.document(), bytes.toByteArray());
      return OfficeLetterhead.packed(office);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private XSSFSheet sheet(String name, Map<String, List<Word>> lists) {
    XSSFSheet sheet = workbook.createSheet(name);
    int columns = lists.values().stream().mapToInt(List::size).max().orElse(2);
    for (int column = 0; column < columns; column++) {
      sheet.setColumnWidth(column, (column == 0 ? FIRST_WIDTH : WIDTH) * 256);
    }
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    return sheet;
  }

  private void write(XSSFSheet sheet, List<Word> list) {
    row(sheet);
    XSSFRow top = row(sheet);
    for (int column = 0; column < list.size(); column++) {
      cell(top, column, list.get(column).meaning(), heading);
    }
    for (int line = 0; line < list.get(0).rows(); line++) {
      XSSFRow row = row(sheet);
      for (int column = 0; column < list.size(); column++) {
        cell(row, column, "{" + list.get(column).text() + "}", style(list.get(column), plain));
      }
    }
  }

  private XSSFCellStyle style(Word word, XSSFCellStyle otherwise) {
    return word.text().endsWith("_usd") ? money : otherwise;
  }

  private static XSSFRow row(XSSFSheet sheet) {
    return sheet.createRow(sheet.getPhysicalNumberOfRows());
  }

  private static void cell(XSSFRow row, int column, String text, XSSFCellStyle style) {
    XSSFCell cell = row.createCell(column);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }
}
