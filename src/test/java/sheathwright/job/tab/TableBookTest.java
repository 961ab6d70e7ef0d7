package sheathwright.job.tab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.table.ProblemsException;

/** Tables on a workbook's tabs, and workbooks that nobody should open. */
class TableBookTest {

  private static final List<String> COLUMNS = List.of("plane", "slope_length_ft", "looked_on");

  @TempDir private Path folder;

  @Test
  void aTable_isFoundBelowWhateverStandsAboveIt() throws IOException {
    SheetTable table = table(sheet -> line(sheet, 5, "N", 16.770833333333332, "x"));

    assertThat(table.header()).isEqualTo(COLUMNS);
    assertThat(table.lines())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.number()).isEqualTo(6);
              assertThat(line.cells()).containsExactly("N", "16.770833333333332", "x");
            });
  }

  @Test
  void whatIsWrongWithACell_namesTabAndCell() throws IOException {
    SheetTable table = table(sheet -> line(sheet, 5, "N", 1, "x"));

    assertThat(table.problem(6, "slope_length_ft", "it is short"))
        .hasToString("book.xlsx, tab planes, cell B6, column slope_length_ft: it is short");
  }

  @Test
  void aDateAndAPercentage_areReadAsTheyWereTyped() throws IOException {
    SheetTable table =
        table(
            sheet -> {
              Row row = line(sheet, 4, "N", 0.125, "");
              row.getCell(1).setCellStyle(style(sheet, "0.0%"));
              row.createCell(2).setCellValue(LocalDate.of(2027, 5, 4));
              row.getCell(2).setCellStyle(style(sheet, "[$-409]mmmm d, yyyy"));
            });

    assertThat(table.lines().get(0).cells()).containsExactly("N", "12.5 %", "2027-05-04");
  }

  @Test
  void aTrueWord_isYes() throws IOException {
    SheetTable table = table(sheet -> line(sheet, 4, "N", 1, "").createCell(2).setCellValue(true));

    assertThat(table.lines().get(0).cells()).endsWith("yes");
  }

  @Test
  void aFormula_isReadByItsValueAndSaidOnce() throws IOException {
    SheetTable table =
        table(
            sheet -> {
              for (int row = 4; row < 7; row++) {
                line(sheet, row, "N" + row, 1, "");
                sheet.getRow(row).getCell(1).setCellFormula("8+8");
              }
              sheet.getWorkbook().getCreationHelper().createFormulaEvaluator().evaluateAll();
            });

    assertThat(table.lines()).allSatisfy(line -> assertThat(line.cells().get(1)).isEqualTo("16"));
    assertThat(table.questions())
        .singleElement()
        .asString()
        .contains("tab planes", "B5 and 2 more cells held a formula");
  }

  @Test
  void aTabWithoutHeadings_isRefused() throws IOException {
    Path file = folder.resolve("book.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      book.createSheet("planes").createRow(0).createCell(0).setCellValue("roof");
      book.write(out);
    }

    assertRefused(() -> TableBook.in(file).table("planes", COLUMNS), "names the columns");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "xl/vbaProject.bin:macros",
        "xl/macrosheets/sheet1.xml:macros",
        "xl/externalLinks/externalLink1.xml:links to other workbooks",
        "xl/connections.xml:data elsewhere",
        "xl/embeddings/oleObject1.bin:other files",
        "xl/activeX/activeX1.xml:controls"
      })
  void whatRunsOrFetches_isRefusedInOneLine(String partAndWords) throws IOException {
    String[] both = partAndWords.split(":");
    Path file = with(both[0], "x".getBytes(StandardCharsets.UTF_8));

    assertRefused(() -> TableBook.in(file), both[1]);
  }

  @Test
  void aBomb_isRefused() throws IOException {
    Path file = with("xl/media/blank.bin", new byte[120_000_000]);

    assertThat(Files.size(file)).isLessThan(1_000_000);
    assertRefused(() -> TableBook.in(file), "unpacks to more than");
  }

  @Test
  void entities_areRefused() throws IOException {
    String entities =
        "<?xml version=\"1.0\"?><!DOCTYPE w [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>"
            + "<workbook><sheets><sheet name=\"&a;\"/></sheets></workbook>";
    Path file =
        zip(
            "xl/_rels/workbook.xml.rels",
            "<Relationships/>".getBytes(StandardCharsets.UTF_8),
            "xl/workbook.xml",
            entities.getBytes(StandardCharsets.UTF_8));

    assertRefused(() -> TableBook.in(file), "entities");
  }

  @Test
  void whatIsNoWorkbook_isRefused() throws IOException {
    Path text = folder.resolve("text.xlsx");
    Files.writeString(text, "key,value\n");

    assertRefused(() -> TableBook.in(text), "not an .xlsx workbook");
    assertRefused(() -> TableBook.in(folder.resolve("none.xlsx")), "no such file");
  }

  @Test
  void aDamagedWorkbook_isRefusedOrReadAndNeverFails() throws IOException {
    Path file = folder.resolve("book.xlsx");
    written(file, sheet -> line(sheet, 4, "N", 16.5, "x"));
    byte[] whole = Files.readAllBytes(file);
    Random random = new Random(17);
    for (int i = 0; i < 300; i++) {
      byte[] damaged = whole.clone();
      damaged[random.nextInt(damaged.length)] ^= (byte) (1 + random.nextInt(255));
      Files.write(file, damaged);
      try {
        TableBook.in(file).table("planes", COLUMNS);
      } catch (ProblemsException refused) {
        assertThat(refused.problems()).isNotEmpty();
      }
    }
  }

  private interface Filling {
    void into(XSSFSheet sheet);
  }

  private SheetTable table(Filling filling) throws IOException {
    Path file = folder.resolve("book.xlsx");
    written(file, filling);
    Optional<SheetTable> table = TableBook.in(file).table("planes", COLUMNS);
    return table.orElseThrow();
  }

  private static void written(Path file, Filling filling) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet sheet = book.createSheet("planes");
      sheet.createRow(0).createCell(0).setCellValue("A title above the table");
      Row head = sheet.createRow(3);
      for (int i = 0; i < COLUMNS.size(); i++) {
        head.createCell(i).setCellValue(COLUMNS.get(i));
      }
      filling.into(sheet);
      book.write(out);
    }
  }

  private static Row line(XSSFSheet sheet, int row, String plane, double length, String note) {
    Row line = sheet.createRow(row);
    line.createCell(0).setCellValue(plane);
    line.createCell(1).setCellValue(length);
    line.createCell(2).setCellValue(note);
    return line;
  }

  private static CellStyle style(XSSFSheet sheet, String format) {
    CellStyle style = sheet.getWorkbook().createCellStyle();
    style.setDataFormat(sheet.getWorkbook().createDataFormat().getFormat(format));
    return style;
  }

  /** A workbook and one part more. */
  private Path with(String part, byte[] content) throws IOException {
    return zip("xl/workbook.xml", "<workbook/>".getBytes(StandardCharsets.UTF_8), part, content);
  }

  private Path zip(String one, byte[] first, String other, byte[] second) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry(one));
      zip.write(first);
      zip.putNextEntry(new ZipEntry(other));
      zip.write(second);
    }
    Path file = folder.resolve("hostile.xlsx");
    return Files.write(file, bytes.toByteArray());
  }

  private static void assertRefused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable reading, String words) {
    assertThatThrownBy(reading)
        .isInstanceOfSatisfying(
            ProblemsException.class,
            refused ->
                assertThat(refused.problems())
                    .singleElement()
                    .asString()
                    .contains(words)
                    .doesNotContain("\n"));
  }
}
