package sheathwright.workbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.file.Manifest;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.page.CrewBook;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/** What an audit says of each thing that can have happened to a file. */
class AuditTest {

  private static final String PAGE = "Your quote";

  private static byte[] quote;
  private static byte[] estimate;

  @BeforeAll
  static void write() {
    Map<String, RowSource> files = new HashMap<>(Samples.tables("quince-hollow").files());
    files.put(
        "options",
        CsvFile.parse("options.csv", "option,item,usd\n1,New gutter boards,640\n2,A vent,95\n"));
    Estimate job = new Estimate(Job.of(new JobTables(files)));
    quote = HomeBook.of(job).bytes();
    estimate = JobBook.estimate(job).bytes();
  }

  private static Audit audit(byte[] file) {
    return Audit.between(quote, file);
  }

  private static List<String> told(Audit audit) {
    return audit.findings().stream()
        .map(finding -> finding.name() + ": " + finding.verdict())
        .toList();
  }

  @Test
  void anUntouchedFile_isAsItWasWritten() {
    assertThat(audit(quote).findings()).isEmpty();
    assertThat(audit(Returned.with(quote, same -> {})).findings()).isEmpty();
    assertThat(audit(quote).stops()).isFalse();
  }

  /** 3 sheets at $96.00 are $288.00; $100.00 is $188.00 less. */
  @Test
  void anAmountTypedOver_isFoundWithWhatTheFormulaGives() {
    Audit audit =
        audit(
            Returned.with(
                quote, book -> Returned.typed(Returned.cell(book, "lines_amount_usd", 2), 100)));

    assertThat(told(audit)).containsExactly("lines_amount_usd: OVERWRITTEN");
    Finding finding = audit.findings().get(0);
    assertThat(finding.effect()).hasValue(-188);
    assertThat(finding.words()).endsWith("the formula gives 288");
    assertThat(audit.lines().get(0)).contains("now 100").endsWith("-$188.00");
    assertThat(audit.stops()).isTrue();
  }

  @Test
  void anOptionThatIsTicked_isFollowed() {
    Audit audit =
        audit(
            Returned.with(
                quote, book -> Returned.cell(book, "option_1_chosen", 0).setCellValue("yes")));

    assertThat(told(audit)).containsExactly("option_1_chosen: FOLLOW");
    assertThat(audit.findings().get(0).kind()).isEqualTo("choice");
    assertThat(audit.joint()).hasValue(640);
    assertThat(audit.stops()).isFalse();
    assertThat(audit.taken())
        .singleElement()
        .hasToString("Input[name=option_1_chosen, line=0, isListed=false, was=no, now=yes]");
  }

  @Test
  void aNameTypedOnTheSignatureLine_isFollowedAndNotTaken() {
    Audit audit =
        audit(
            Returned.with(
                quote,
                book -> {
                  for (Row row : book.getSheet(PAGE)) {
                    if (row.getCell(0) != null
                        && row.getCell(0).toString().equals("Homeowner, date")) {
                      row.getCell(1).setCellValue("Ottoline Vasterby, +1 555 0100");
                    }
                  }
                }));

    assertThat(told(audit)).containsExactly(": FOLLOW");
    assertThat(audit.taken()).isEmpty();
  }

  @Test
  void anInputOutsideItsRange_isNotFollowed() {
    Audit audit =
        audit(
            Returned.with(
                quote, book -> Returned.cell(book, "option_1_chosen", 0).setCellValue("maybe")));

    assertThat(told(audit)).containsExactly("option_1_chosen: OVERWRITTEN");
    assertThat(audit.findings().get(0).words()).contains("one of yes, no");
  }

  /** One extra sheet more at $117.00 instead of $120.00, of which none is in the price. */
  @Test
  void aPriceOrAWordThatIsChanged_isReadAloudFirst() {
    Audit audit =
        audit(
            Returned.with(
                quote,
                book -> {
                  Returned.typed(Returned.cell(book, "extra_sheet_usd", 0), 90);
                  Returned.cell(book, "lines_unit", 2).setCellValue("bundles");
                }));

    assertThat(told(audit))
        .containsExactly("extra_sheet_usd: CHANGED_TERMS", "lines_unit: CHANGED_TERMS");
    assertThat(audit.joint()).hasValue(0);
    assertThat(audit.stops()).isTrue();
  }

  static Stream<Consumer<XSSFWorkbook>> structures() {
    return Stream.of(
        book -> book.setSheetHidden(1, true),
        book -> book.setSheetName(1, "Elsewhere"),
        book -> book.removeSheetAt(2),
        book -> book.setSheetOrder(PAGE, 2),
        book -> book.createSheet("Mine"),
        book -> book.getSheet(PAGE).getCTWorksheet().unsetSheetProtection(),
        book -> book.getSheet(PAGE).setColumnHidden(4, true),
        book -> book.getSheet(PAGE).getRow(4).setZeroHeight(true),
        book -> book.removeName(book.getName("quote_total_usd")),
        book -> Returned.cell(book, "lines_amount_usd", 0).setBlank(),
        book -> open(Returned.cell(book, "lines_price_usd", 0)),
        AuditTest::inserted,
        AuditTest::deleted);
  }

  private static void open(org.apache.poi.ss.usermodel.Cell cell) {
    var style = cell.getSheet().getWorkbook().createCellStyle();
    style.cloneStyleFrom(cell.getCellStyle());
    style.setLocked(false);
    cell.setCellStyle(style);
  }

  private static void inserted(XSSFWorkbook book) {
    XSSFSheet sheet = book.getSheet(PAGE);
    int row = Returned.cell(book, "lines_item", 1).getRowIndex();
    sheet.shiftRows(row, sheet.getLastRowNum(), 1);
    Row line = sheet.createRow(row);
    line.createCell(0).setCellValue("Coffee");
    line.createCell(4).setCellValue(12);
  }

  private static void deleted(XSSFWorkbook book) {
    XSSFSheet sheet = book.getSheet(PAGE);
    int row = Returned.cell(book, "lines_item", 1).getRowIndex();
    sheet.removeRow(sheet.getRow(row));
    sheet.shiftRows(row + 1, sheet.getLastRowNum(), -1);
  }

  @ParameterizedTest
  @MethodSource("structures")
  void whatIsGoneMovedHiddenOrUnlocked_isStructure(Consumer<XSSFWorkbook> change) {
    Audit audit = audit(Returned.saved(quote, change));

    assertThat(audit.findings())
        .isNotEmpty()
        .anyMatch(finding -> finding.verdict() == Verdict.STRUCTURE);
    assertThat(audit.stops()).isTrue();
  }

  @Test
  void aLineThatIsPutIn_isOneFindingAndNotOneForEachLineBelow() {
    assertThat(audit(Returned.saved(quote, AuditTest::inserted)).lines())
        .hasSizeLessThan(4)
        .anyMatch(line -> line.contains("was put in") && line.contains("Coffee"));
  }

  /** A column before the amounts: every formula that points at them still does. */
  @Test
  void aColumnThatIsPutIn_isOneFindingAndNotOneForEachCellBesideIt() {
    Audit audit =
        audit(
            Returned.saved(
                quote,
                book -> {
                  XSSFSheet sheet = book.getSheet(PAGE);
                  var amount = Returned.cell(book, "lines_amount_usd", 0);
                  sheet.shiftColumns(amount.getColumnIndex(), sheet.getRow(0).getLastCellNum(), 1);
                  sheet.getRow(amount.getRowIndex()).createCell(4).setCellValue("Coffee");
                }));

    assertThat(audit.lines())
        .filteredOn(line -> line.contains("column E was put in"))
        .singleElement()
        .asString()
        .startsWith(PAGE + ", column, now Coffee");
    assertThat(audit.lines()).as(String.join("\n", audit.lines())).hasSizeLessThan(4);
    assertThat(audit.stops()).isTrue();
  }

  /** The amounts taken out: the names that stood for them are told with the column. */
  @Test
  void aColumnThatIsTakenOut_isToldOnceWithWhatPointedAtIt() {
    Audit audit = audit(Returned.with(quote, book -> takenOut(book, "lines_amount_usd")));

    assertThat(audit.lines())
        .singleElement()
        .asString()
        .startsWith(PAGE + ", column, was ")
        .contains("column E is gone, and what points at it: ", "lines_amount_usd", "lines_usd")
        .endsWith("the total cannot be worked out with it");
    assertThat(audit.stops()).isTrue();
  }

  /** What nothing points at costs nothing, and the columns after it are where they belong. */
  @Test
  void aColumnOfWordsThatIsTakenOut_doesNothingToTheTotal() {
    Audit audit = audit(Returned.with(quote, book -> takenOut(book, "lines_unit")));

    assertThat(audit.lines().get(0)).startsWith(PAGE + ", column, was ").contains("lines_unit");
    assertThat(audit.lines()).as(String.join("\n", audit.lines())).hasSize(1);
    assertThat(audit.joint()).hasValue(0);
  }

  /** As a program takes a column out: what stood behind it and what pointed there moves along. */
  private static void takenOut(XSSFWorkbook book, String name) {
    var gone = Returned.cell(book, name, 0);
    XSSFSheet sheet = book.getSheet(gone.getSheet().getSheetName());
    Returned.withoutColumn(book, sheet, gone.getColumnIndex());
  }

  @Test
  void aColumnThatIsEmptied_isToldOnce() {
    Audit audit =
        audit(
            Returned.with(
                quote,
                book -> {
                  int column = Returned.cell(book, "lines_unit", 0).getColumnIndex();
                  book.getSheet(PAGE)
                      .forEach(
                          row -> {
                            if (row.getCell(column) != null) {
                              row.getCell(column).setBlank();
                            }
                          });
                }));

    assertThat(audit.lines())
        .singleElement()
        .asString()
        .contains("column C was emptied, and what points at it");
  }

  /** The lines with their heading and their sum, cut out and put beside the page. */
  @Test
  void aBlockThatIsMoved_isToldOnceAndWhatPointsAtItFollows() {
    byte[] file = Returned.with(quote, book -> Returned.moveBlock(book, PAGE, "A21:E25", 6, 2));

    assertThat(audit(file).lines())
        .singleElement()
        .asString()
        .startsWith(PAGE + ", block, was A21:E25, now G23:K27: structure; cells were moved");
  }

  /** What a crew is told beside a cell holds it to nothing: an audit read it as a range once. */
  @Test
  void aCellWithALineOfHelpAlone_takesAnything() {
    byte[] crew = CrewBook.bytes(new Estimate(Job.of(Samples.tables("quince-hollow"))));
    byte[] file =
        Returned.with(
            crew,
            book ->
                book.getSheet("start")
                    .forEach(
                        row -> {
                          if (row.getCell(0) != null && row.getCell(0).toString().equals("by")) {
                            row.getCell(1).setCellValue("IC");
                          }
                        }));

    assertThat(Audit.between(crew, file).findings())
        .singleElement()
        .matches(finding -> finding.verdict() == Verdict.FOLLOW);
  }

  @Test
  void somethingFarBelow_isSeen() {
    Audit audit =
        audit(
            Returned.saved(
                quote,
                book -> book.getSheet(PAGE).createRow(900_000).createCell(3).setCellValue("x")));

    assertThat(audit.lines()).singleElement().asString().contains(PAGE + "!D900001");
  }

  @Test
  void linesInAnotherOrder_areOneFinding() {
    Audit audit =
        audit(
            Returned.saved(
                quote,
                book -> {
                  XSSFSheet sheet = book.getSheet(PAGE);
                  int first = Returned.cell(book, "lines_item", 0).getRowIndex();
                  sheet.copyRows(
                      first, first, first + 30, new org.apache.poi.ss.usermodel.CellCopyPolicy());
                  sheet.copyRows(
                      first + 1,
                      first + 1,
                      first,
                      new org.apache.poi.ss.usermodel.CellCopyPolicy());
                  sheet.copyRows(
                      first + 30,
                      first + 30,
                      first + 1,
                      new org.apache.poi.ss.usermodel.CellCopyPolicy());
                  sheet.removeRow(sheet.getRow(first + 30));
                }));

    assertThat(audit.lines()).anyMatch(line -> line.contains("lines stand in another order"));
  }

  /** 640 and 95 chosen together are 735 more, and neither rests on the other. */
  @Test
  void effectsAreToldOneByOneAndTogether() {
    Audit audit =
        audit(
            Returned.with(
                quote,
                book -> {
                  Returned.cell(book, "option_1_chosen", 0).setCellValue("yes");
                  Returned.cell(book, "option_2_chosen", 0).setCellValue("yes");
                }));

    assertThat(audit.joint()).hasValue(735);
    assertThat(audit.single()).hasValue(735);
  }

  /** Quantity 3 → 5 alone: 2 × 96; price 96 → 90 alone: -3 × 6; both: 5 × 90 - 288. */
  @Test
  void effectsThatRestOnEachOther_addUpToAnotherSum() {
    Audit audit =
        audit(
            Returned.with(
                quote,
                book -> {
                  Returned.typed(Returned.cell(book, "lines_quantity", 2), 5);
                  Returned.typed(Returned.cell(book, "lines_price_usd", 2), 90);
                }));

    assertThat(audit.single()).hasValue(192 - 18);
    assertThat(audit.joint()).hasValue(162);
  }

  @Test
  void aValueThatNoFormulaGives_isUntrue() {
    byte[] file =
        Returned.part(
            quote,
            "xl/worksheets/sheet1.xml",
            xml ->
                xml.replace(
                    "<f>lines_usd+chosen_usd</f><v>10873</v>",
                    "<f>lines_usd+chosen_usd</f><v>9000</v>"));

    Audit audit = audit(file);

    assertThat(told(audit)).containsExactly("quote_total_usd: UNTRUE");
    assertThat(audit.findings().get(0).words())
        .isEqualTo("stored 9000; recalculated 10873; ours 10873");
    assertThat(audit.stops()).isTrue();
  }

  @Test
  void whatAProgramDidNotRecalculate_isStaleAndStopsNobody() {
    Audit audit =
        audit(
            Returned.saved(
                quote, book -> Returned.cell(book, "option_1_chosen", 0).setCellValue("yes")));

    assertThat(told(audit)).startsWith("option_1_chosen: FOLLOW", "quote_total_usd: STALE");
    assertThat(audit.findings().get(1).words())
        .isEqualTo("stored 10873; recalculated 11513; ours 10873");
    assertThat(audit.stops()).isFalse();
  }

  @Test
  void whatWasSolvedForSomethingElse_isToBeSolvedAgain() {
    Audit audit =
        Audit.between(
            estimate,
            Returned.saved(
                estimate,
                book -> Returned.typed(Returned.cell(book, "support_spacing_in", 0), 12)));

    assertThat(audit.findings())
        .anyMatch(
            finding ->
                finding.verdict() == Verdict.SOLVE_AGAIN
                    && finding.words().startsWith("solve again: "));
    assertThat(audit.stops()).isFalse();
  }

  @Test
  void macrosLinksNamesAndComments_areNamedAndNotOpened() {
    byte[] file =
        Returned.part(
            Returned.part(quote, "xl/vbaProject.bin", none -> "anything"),
            "xl/externalLinks/externalLink1.xml",
            none -> "<externalLink/>");
    byte[] named =
        Returned.saved(
            quote,
            book -> {
              var name = book.createName();
              name.setNameName("mine");
              name.setRefersToFormula("'Your quote'!$A$1");
            });

    assertThat(audit(named).findings())
        .extracting(Finding::verdict, Finding::now)
        .contains(org.assertj.core.groups.Tuple.tuple(Verdict.NOT_OPENED, "mine"));
    assertThat(audit(file).findings())
        .extracting(Finding::now)
        .containsExactlyInAnyOrder("macros", "links to other workbooks");
  }

  @ParameterizedTest
  @CsvSource({"=1+1", "@SUM(A1)", "+A1"})
  void aFormulaAmongWords_isNotTaken(String typed) {
    Audit audit =
        audit(
            Returned.saved(
                quote, book -> Returned.cell(book, "option_1_chosen", 0).setCellValue(typed)));

    assertThat(told(audit)).first().isEqualTo("option_1_chosen: NOT_OPENED");
    assertThat(audit.taken()).isEmpty();
  }

  @Test
  void aFileWithoutManifestOrJob_isRefused() {
    byte[] bare = Returned.part(quote, Manifest.PART, xml -> "<none/>");

    assertThatThrownBy(() -> Audit.of("bare.xlsx", bare, Optional.empty(), false))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "bare.xlsx: it carries no manifest, so it can only be held against its job; give --job JOB, the job's folder");
    assertThat(Audit.of("quote.xlsx", quote, Optional.empty(), true).findings())
        .extracting(Finding::verdict)
        .containsExactly(Verdict.CANNOT_VOUCH);
  }

  /** Found by spoiled input: what stands on no sheet, or nowhere on one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<n r='A1'>1</n>",
        "<dataValidation sqref='A1'/>",
        "<sheet n='A'><n>1</n></sheet>",
        "<sheet n='A'><n r='A1'>one</n></sheet>"
      })
  void aBrokenManifest_isNone(String held) {
    byte[] broken =
        Returned.part(
            quote,
            Manifest.PART,
            xml ->
                "<manifest xmlns='%s' reader='office'>%s</manifest>"
                    .formatted(Manifest.NAMESPACE, held));

    assertThatThrownBy(() -> Audit.of("broken.xlsx", broken, Optional.empty(), false))
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith("broken.xlsx: it carries no manifest");
  }

  @ParameterizedTest
  @CsvSource({
    "xl/workbook.xml, <!DOCTYPE x [<!ENTITY e SYSTEM 'file:///etc/hostname'>]><workbook>&e;</workbook>, file: its part xl/workbook.xml declares entities of its own",
    "xl/worksheets/sheet1.xml, <worksheet><sheetData><row r='9999999999'>, file: it is broken inside and cannot be read",
    "xl/sharedStrings.xml, nothing, file: it is broken inside and cannot be read",
  })
  void aBrokenFile_isRefusedInOneLine(String part, String text, String said) {
    assertThatThrownBy(() -> audit(Returned.part(quote, part, old -> text)))
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith(said);
    assertThatThrownBy(() -> audit("no workbook".getBytes()))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("it is no .xlsx workbook");
  }

  @Test
  void anAuditIsAWorkbookOfOurs() {
    Audit audit =
        audit(
            Returned.with(
                quote, book -> Returned.typed(Returned.cell(book, "lines_amount_usd", 2), 100)));
    byte[] book = AuditBook.of(audit, "returned.xlsx");

    Reading reading = BookReading.of("audit.xlsx", book);
    Pane rows = reading.panes().get("Line by line");
    assertThat(rows.at(4, 6).number()).isEqualTo(-188);
    assertThat(rows.at(4, 1).value()).isEqualTo(audit.findings().get(0).cell());
    assertThat(Audit.between(book, book).findings()).isEmpty();
  }
}
