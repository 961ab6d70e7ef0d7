package sheathwright.workbook.letterhead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.file.Manifest;
import sheathwright.job.life.Item;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.audit.PackedParts;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.paper.LifeBooks;
import sheathwright.workbook.told.Photos;

/** A letterhead comes back with everything that was in it, and with what the document says. */
class OfficeLetterheadTest {

  /** Parts that say what a workbook has; the document's are listed there behind the office's. */
  private static final Set<String> LISTS =
      Set.of(
          "[Content_Types].xml",
          "xl/workbook.xml",
          "xl/_rels/workbook.xml.rels",
          "xl/styles.xml",
          "xl/sharedStrings.xml");

  private static final Path FOLDER = Path.of("demo-data", "whole-life", "6-closed");
  private static final Path QUOTED = Path.of("demo-data", "quince-hollow");

  private static Job job;
  private static byte[] document;

  @BeforeAll
  static void quoteIsMade() {
    job = Job.of(JobTables.in(QUOTED));
    document = HomeBook.of(new Estimate(job)).bytes();
  }

  private static byte[] filled(byte[] template) {
    return new OfficeLetterhead(LetterKind.QUOTE, "ours.xlsx", template)
        .filled(document, Told.ofDraft(job), () -> Photos.of(Job.of(JobTables.in(FOLDER)), FOLDER));
  }

  private static XSSFWorkbook opened(byte[] bytes) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  @Test
  void words_becomeWhatTheDocumentSays_andFormulasFollow() throws IOException {
    try (XSSFWorkbook workbook = opened(filled(OfficeTemplate.with(Map.of())))) {
      XSSFSheet sheet = workbook.getSheetAt(0);

      assertThat(sheet.getSheetName()).isEqualTo(OfficeTemplate.TAB);
      assertThat(sheet.getRow(2).getCell(0).getStringCellValue())
          .isEqualTo("Odalys Brackenridge-Plume");
      assertThat(sheet.getRow(3).getCell(0).getStringCellValue()).isEqualTo("June 3, 2027");
      assertThat(sheet.getRow(2).getCell(1).getCellFormula()).isEqualTo("quote_total_usd");
      assertThat(sheet.getRow(11).getCell(4).getCellFormula())
          .isEqualTo("INDEX(lines_amount_usd,3)");
      assertThat(sheet.getRow(12).getCell(4).getCellType()).isEqualTo(CellType.BLANK);
      // 3 sheets at 96 $; and what is stored is what the formulas give
      assertThat(sheet.getRow(11).getCell(4).getNumericCellValue()).isEqualTo(288);
      assertThat(sheet.getRow(11).getCell(3).getNumericCellValue()).isEqualTo(288);
      double total = workbook.getSheet("Your quote").getRow(4).getCell(0).getNumericCellValue();
      for (XSSFCell sum :
          List.of(
              sheet.getRow(2).getCell(1),
              sheet.getRow(3).getCell(1),
              sheet.getRow(15).getCell(4))) {
        assertThat(sum.getNumericCellValue()).isEqualTo(total).isGreaterThan(288);
      }
      assertThat(sheet.getRow(16).getCell(4).getNumericCellValue()).isEqualTo(total / 2);
      assertThat(sheet.getRow(14).getCell(5).getNumericCellValue()).isEqualTo(6);
    }
  }

  @Test
  void everyFormula_isRecalculatedToWhatIsStored() throws IOException {
    try (XSSFWorkbook workbook = opened(filled(OfficeTemplate.with(Map.of())))) {
      var evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      int formulas = 0;
      for (var sheet : workbook) {
        for (var row : sheet) {
          for (var cell : row) {
            if (cell.getCellType() == CellType.FORMULA
                && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
              assertThat(evaluator.evaluate(cell).getNumberValue())
                  .as(sheet.getSheetName() + cell.getAddress())
                  .isEqualTo(cell.getNumericCellValue());
              formulas++;
            }
          }
        }
      }
      assertThat(formulas).isGreaterThan(20);
    }
  }

  @Test
  void everyPartOfTheOffices_isWhatItWas() throws IOException {
    byte[] template = OfficeTemplate.with(Map.of());
    Map<String, byte[]> before = PackedParts.of("before", template);
    Map<String, byte[]> after = PackedParts.of("after", filled(template));

    String sheet = "xl/worksheets/sheet1.xml";
    assertThat(before).containsKeys("xl/charts/chart1.xml", "xl/drawings/vmlDrawing9.vml", sheet);
    before.forEach(
        (part, bytes) -> {
          if (!LISTS.contains(part) && !part.equals(sheet)) {
            assertThat(after.get(part)).as(part).isEqualTo(bytes);
          }
        });
    assertThat(new String(Xml.bytes(bare(after.get(sheet))), StandardCharsets.UTF_8))
        .isEqualTo(new String(Xml.bytes(bare(before.get(sheet))), StandardCharsets.UTF_8));
  }

  /** A sheet without what its filled cells hold and what its formulas come to. */
  private static Element bare(byte[] part) {
    Element root = Xml.root("sheet", part);
    for (Element cell : Xml.all(root, "c")) {
      Optional<Element> formula = Xml.child(cell, "f");
      boolean isTheirs =
          formula
              .filter(each -> !each.getTextContent().startsWith("INDEX(lines_"))
              .filter(each -> !each.getTextContent().equals("quote_total_usd"))
              .isPresent();
      boolean isNumber = !cell.hasAttribute("t") && formula.isEmpty();
      boolean isPlain = cell.getAttribute("r").matches("A1|G1");
      if (isTheirs) {
        cell.removeAttribute("t");
        Xml.children(cell, "v").forEach(cell::removeChild);
      } else if (!isPlain || !(isNumber || cell.getAttribute("t").equals("s"))) {
        cell.removeAttribute("t");
        Xml.children(cell).forEach(cell::removeChild);
      }
    }
    return root;
  }

  @Test
  void listsOfTheOffices_beginAsTheyWere() throws IOException {
    byte[] template = OfficeTemplate.with(Map.of());
    Map<String, byte[]> before = PackedParts.of("before", template);
    Map<String, byte[]> after = PackedParts.of("after", filled(template));

    for (String part : LISTS) {
      Element was = Xml.root(part, before.get(part));
      Element is = Xml.root(part, after.get(part));
      assertBegins(part, was, is);
    }
  }

  private static void assertBegins(String where, Element was, Element is) {
    List<Element> now = Xml.children(is);
    if (where.matches(".*(Types|rels|fonts|fills|borders|Xfs|numFmts|sharedStrings).*")
        && !where.endsWith("styles.xml")) {
      List<Element> then = Xml.children(was);
      for (int i = 0; i < then.size(); i++) {
        assertThat(now.get(i).isEqualNode(then.get(i))).as(where + " " + i).isTrue();
      }
      return;
    }
    for (Element each : Xml.children(was)) {
      Element same = Xml.child(is, each.getLocalName()).orElseThrow();
      String name = where + "/" + each.getLocalName();
      if (each.getLocalName().matches("fonts|fills|borders|cellStyleXfs|cellXfs|numFmts|dxfs")) {
        assertBegins(name, each, same);
      } else if (each.getLocalName().matches("sheets|definedNames")) {
        assertThat(Xml.children(same).subList(0, Xml.children(each).size()))
            .as(name)
            .allMatch(now2 -> Xml.children(each).stream().anyMatch(now2::isEqualNode));
      } else if (!each.getLocalName().equals("calcPr")) {
        assertThat(same.isEqualNode(each)).as(name).isTrue();
      }
    }
  }

  @Test
  void everyCellOfTheOffices_looksAsItDid() throws IOException {
    byte[] template = OfficeTemplate.with(Map.of());
    try (XSSFWorkbook before = opened(template);
        XSSFWorkbook after = opened(filled(template))) {
      XSSFSheet was = before.getSheetAt(0);
      XSSFSheet is = after.getSheetAt(0);
      for (var row : was) {
        assertThat(is.getRow(row.getRowNum()).getHeight()).isEqualTo(row.getHeight());
        for (var cell : row) {
          XSSFCellStyle now =
              is.getRow(cell.getRowIndex()).getCell(cell.getColumnIndex()).getCellStyle();
          assertThat(look(now)).isEqualTo(look((XSSFCellStyle) cell.getCellStyle()));
        }
      }
      for (int column = 0; column < 10; column++) {
        assertThat(is.getColumnWidth(column)).isEqualTo(was.getColumnWidth(column));
      }
      assertThat(is.getMergedRegions()).isEqualTo(was.getMergedRegions());
      assertThat(is.getProtect()).isTrue();
      assertThat(is.validateSheetPassword("grouse")).isTrue();
      assertThat(after.getPrintArea(0)).isEqualTo(before.getPrintArea(0));
      assertThat(is.getRepeatingRows()).isEqualTo(was.getRepeatingRows());
    }
  }

  private static List<Object> look(XSSFCellStyle style) {
    return List.of(
        style.getFont().getCTFont().toString(),
        style.getFillForegroundColor(),
        style.getFillPattern(),
        style.getBorderBottom(),
        style.getBorderTop(),
        style.getAlignment(),
        style.getVerticalAlignment(),
        style.getWrapText(),
        style.getDataFormatString());
  }

  @Test
  void everyCellOfTheDocument_looksAndSaysWhatItDid() throws IOException {
    try (XSSFWorkbook alone = opened(document);
        XSSFWorkbook behind = opened(filled(OfficeTemplate.with(Map.of())))) {
      for (var sheet : alone) {
        for (var row : sheet) {
          for (var cell : row) {
            XSSFCell now =
                behind
                    .getSheet(sheet.getSheetName())
                    .getRow(cell.getRowIndex())
                    .getCell(cell.getColumnIndex());
            assertThat(now.toString()).isEqualTo(cell.toString());
            XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
            assertThat(withoutFont(look(now.getCellStyle()))).isEqualTo(withoutFont(look(style)));
            assertThat(now.getCellStyle().getFont().getFontName()).isEqualTo("Arial");
            assertThat(now.getCellStyle().getFont().getBold()).isEqualTo(style.getFont().getBold());
          }
        }
      }
      assertThat(Manifest.hashIn(filled(OfficeTemplate.with(Map.of()))))
          .isEqualTo(Manifest.hashIn(document));
    }
  }

  private static List<Object> withoutFont(List<Object> look) {
    return look.subList(1, look.size());
  }

  @Test
  void photograph_isLaidUponItsCell() throws IOException {
    byte[] template = OfficeTemplate.with(Map.of("B20", "{photo R-1 before}"));
    try (XSSFWorkbook workbook = opened(filled(template))) {
      assertThat(workbook.getSheetAt(0).getRow(19).getCell(1).getCellType())
          .isEqualTo(CellType.BLANK);
      assertThat(workbook.getSheetAt(0).getDrawingPatriarch().getShapes())
          .filteredOn(shape -> shape instanceof XSSFPicture)
          .hasSize(2);
    }
  }

  @Test
  void mapsAndCharts_areDrawnOnceMore() throws IOException {
    Path folder = Path.of("demo-data", "mistwater-cottage");
    Job rafters = Job.of(JobTables.in(folder));
    byte[] template = OfficeTemplate.with(Map.of("B20", "{map roof}", "A21", "{sag}"));
    byte[] whole =
        new OfficeLetterhead(LetterKind.QUOTE, "ours.xlsx", template)
            .filled(HomeBook.of(new Estimate(rafters)).bytes(), Told.ofDraft(rafters), () -> null);
    try (XSSFWorkbook workbook = opened(whole)) {
      var drawing = workbook.getSheetAt(0).getDrawingPatriarch();
      var behind = workbook.getSheet("What we found").getDrawingPatriarch();
      int shapes = ((XSSFShapeGroup) behind.getShapes().get(0)).getCTGroupShape().sizeOfSpArray();

      assertThat(drawing.getShapes())
          .filteredOn(shape -> shape instanceof XSSFShapeGroup)
          .singleElement()
          .satisfies(
              map ->
                  assertThat(((XSSFShapeGroup) map).getCTGroupShape().sizeOfSpArray())
                      .isEqualTo(shapes)
                      .isGreaterThan(3));
      assertThat(drawing.getCharts()).hasSize(2);
      Map<String, byte[]> parts = PackedParts.of("whole", whole);
      assertThat(parts.get("xl/charts/letterhead_chart1.xml"))
          .isEqualTo(parts.get("xl/charts/document_chart1.xml"))
          .isNotEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "quince-hollow,     map roof",
    "mistwater-cottage, sag",
    "mistwater-cottage, sag A",
    "tallow-end,        sag S",
    "tallow-end,        build-up S",
  })
  void aDrawing_isAskedForByWhatItIsOf(String folder, String word) throws IOException {
    Job of = Job.of(JobTables.in(Path.of("demo-data", folder)));
    byte[] template = OfficeTemplate.with(Map.of("B20", "{" + word + "}"));
    int there = shapes(OfficeTemplate.with(Map.of()));

    byte[] whole =
        new OfficeLetterhead(LetterKind.QUOTE, "ours.xlsx", template)
            .filled(HomeBook.of(new Estimate(of)).bytes(), Told.ofDraft(of), () -> null);

    assertThat(shapes(whole)).isEqualTo(there + 1);
  }

  @Test
  void theMapOfAPlane_isAskedForByIt() throws IOException {
    byte[] template = OfficeTemplate.with(Map.of("B20", "{map B}"));
    byte[] order = LifeBooks.all().get("change-order");

    byte[] whole =
        new OfficeLetterhead(LetterKind.CHANGE_ORDER, "ours.xlsx", withoutWordsOfAQuote(template))
            .filled(order, Told.ofDraft(job), () -> null);

    assertThat(shapes(whole)).isEqualTo(shapes(template) + 1);
  }

  private static byte[] withoutWordsOfAQuote(byte[] template) throws IOException {
    OfficeFile office = OfficeFile.of("t", template);
    office.blanks().stream()
        .filter(blank -> !LetterKind.CHANGE_ORDER.words().containsKey(blank.word()))
        .filter(blank -> !blank.word().startsWith("map"))
        .forEach(
            blank -> {
              blank.cell().empty();
              office.put(blank.sheet().part(), blank.sheet().root());
            });
    return OfficeLetterhead.packed(office);
  }

  private static int shapes(byte[] file) throws IOException {
    try (XSSFWorkbook workbook = opened(file)) {
      return workbook.getSheetAt(0).getDrawingPatriarch().getShapes().size();
    }
  }

  /** 23 joints of the sample's change order are sawn open: one on one sheet, the rest on others. */
  @Test
  void aListInParts_isFilledToItsEnd() throws IOException {
    byte[] order = Files.readAllBytes(Path.of("workbooks/kettle-reach/change-order-01.xlsx"));
    byte[] whole =
        new OfficeLetterhead(
                LetterKind.CHANGE_ORDER, "p.xlsx", PlainLetterhead.bytes(LetterKind.CHANGE_ORDER))
            .filled(order, Told.ofDraft(job), () -> null);

    Set<String> joints = new HashSet<>();
    try (XSSFWorkbook workbook = opened(whole)) {
      for (var row : workbook.getSheet("Letter")) {
        row.forEach(
            cell -> {
              if (cell.getCellType() == CellType.FORMULA
                  && cell.getCellFormula().matches("INDEX\\(asked_relief(_\\d)?_number,\\d+\\)")) {
                joints.add(cell.getStringCellValue());
              }
            });
      }
    }
    assertThat(joints).hasSize(23).allMatch(number -> number.matches("\\d+"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = true,
      textBlock =
          """
          {quote_totl_usd}     | ours.xlsx, cell Our letter!B22: {quote_totl_usd} is no word of a quote
          {quote_totl_usd}     | a quote (did you mean quote_total_usd?)
          {cost_total_usd}     | cell Our letter!B22: {cost_total_usd} is for the office only, and a quote never shows it; take it out
          {margin_pct}         | is for the office only
          {forecast_mean}      | is for the office only
          Total: {lines_usd}   | "Total: {lines_usd}": braces stand inside other text; write the words in the cell beside it
          {map Z}              | {map Z}: this document has no such drawing; it has {map roof}
          {photo Z-9 before}   | the job has no such photograph; it has B-5-3 before, R-1 before
          {rafters_rafter}     | {rafters_rafter} is no word of a quote
          """)
  void whatCannotBeFilled_isRefusedByItsCell(String text, String said) {
    assertThatThrownBy(() -> filled(OfficeTemplate.with(Map.of("B22", text, "B23", "{nonsense}"))))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(said)
        .hasMessageContaining("cell Our letter!B23: {nonsense} is no word of a quote");
  }

  @Test
  void headingOfATable_isRefused() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet("Letter");
      for (int row = 0; row < 3; row++) {
        sheet.createRow(row).createCell(0).setCellValue(row == 0 ? "{customer}" : "{site}");
      }
      sheet.createTable(new AreaReference("A1:A3", SpreadsheetVersion.EXCEL2007));
      workbook.write(bytes);
    }

    assertThatThrownBy(() -> filled(bytes.toByteArray()))
        .hasMessage(
            "ours.xlsx, cell Letter!A1: {customer} stands in the heading of a table, which must be a text; write it into a cell outside");
  }

  @Test
  void moreLinesThanRows_isRefusedWithBothNumbers() throws IOException {
    byte[] template = OfficeTemplate.with(twoRowsOnly());

    assertThatThrownBy(() -> filled(template))
        .hasMessageContaining(
            "cell Our letter!A10: {lines.…} stands in 2 rows, and this document has 3 lines; copy the row until there are at least 3");
  }

  private static Map<String, String> twoRowsOnly() {
    Map<String, String> plain = new HashMap<>();
    for (int row = OfficeTemplate.FIRST_LINE + 3;
        row <= OfficeTemplate.FIRST_LINE + OfficeTemplate.LINES;
        row++) {
      for (String column : List.of("A", "B", "C", "E")) {
        plain.put(column + row, "-");
      }
    }
    return plain;
  }

  @Test
  void whatRuns_isElsewhere_orIsOursAlready_isRefusedAtOnce() throws IOException {
    OfficeFile file = OfficeFile.of("t", OfficeTemplate.with(Map.of()));
    file.put("xl/vbaProject.bin", "x");
    file.put("xl/externalLinks/externalLink1.xml", "<x/>");
    Element workbook = file.root(OfficeFile.WORKBOOK);
    Element name = Xml.made(workbook, "definedName");
    name.setAttribute("name", "Lines_Item");
    name.setTextContent("1");
    Xml.child(workbook, "definedNames").orElseThrow().appendChild(name);
    Xml.all(workbook, "sheet").get(0).setAttribute("name", "your quote");
    file.put(OfficeFile.WORKBOOK, workbook);

    assertThatThrownBy(() -> filled(OfficeLetterhead.packed(file)))
        .hasMessageContaining("it has macros (xl/vbaProject.bin); save it without them")
        .hasMessageContaining(
            "it has links to other workbooks (xl/externalLinks/externalLink1.xml)")
        .hasMessageContaining("its tab \"your quote\" is called as one of our document")
        .hasMessageContaining("its name Lines_Item is one of our document's");
  }

  /** Found by spoiled input: a cell's text has a number that is none of the list's. */
  @Test
  void aCellWithoutItsText_isDamage() throws IOException {
    OfficeFile file = OfficeFile.of("t", OfficeTemplate.with(Map.of()));
    file.put("xl/sharedStrings.xml", "<sst xmlns=\"%s\"/>".formatted(Xml.MAIN));

    assertThatThrownBy(() -> filled(OfficeLetterhead.packed(file)))
        .hasMessage("ours.xlsx: it is damaged; save it anew as .xlsx");
  }

  @ParameterizedTest
  @EnumSource
  void plainOne_hasEveryWord(LetterKind kind) {
    OfficeFile plain = OfficeFile.of("plain", PlainLetterhead.bytes(kind));

    assertThat(plain.problems()).isEmpty();
    assertThat(plain.blanks().stream().map(OfficeFile.Blank::word).collect(Collectors.toSet()))
        .isEqualTo(kind.words().keySet());
    assertThat(PlainLetterhead.bytes(kind)).isEqualTo(PlainLetterhead.bytes(kind));
  }

  @ParameterizedTest
  @CsvSource({
    "QUOTE,   quote-letterhead.xlsx",
    "INVOICE, invoice-letterhead.xlsx",
  })
  void plainOneAmongTheSamples_isCurrent(LetterKind kind, String file) throws IOException {
    Path sample = Path.of("workbooks", "templates").resolve(file);

    assertThat(PackedParts.of(file, Files.readAllBytes(sample)))
        .as("src/build/samples.sh makes it anew")
        .containsExactlyEntriesOf(PackedParts.of(file, PlainLetterhead.bytes(kind)));
  }

  @ParameterizedTest
  @CsvSource({
    "QUOTE,        workbooks/*/quote.xlsx",
    "CHANGE_ORDER, workbooks/*/change-order-01.xlsx",
    "INVOICE,      demo-data/whole-life/6-closed/invoice.xlsx",
  })
  void everyWord_isOneOfADocument(LetterKind kind, String samples) throws IOException {
    Set<String> names = new HashSet<>();
    PathMatcher wanted = FileSystems.getDefault().getPathMatcher("glob:" + samples);
    try (Stream<Path> files =
        Stream.of("workbooks", "demo-data").map(Path::of).flatMap(OfficeLetterheadTest::walked)) {
      for (Path file : files.filter(wanted::matches).toList()) {
        names.addAll(new Ours(Files.readAllBytes(file)).names());
      }
    }
    List<String> words =
        kind.words().values().stream()
            .filter(word -> word.kind() != Word.Kind.TOLD)
            .map(Word::name)
            .filter(name -> !isOfAnItem(name) && !name.startsWith("chosen")) // no sample has them
            .toList();

    assertThat(words).isNotEmpty();
    assertThat(names).containsAll(words);
  }

  private static boolean isOfAnItem(String name) {
    return Arrays.stream(Item.values())
        .map(item -> item.word())
        .anyMatch(
            item ->
                name.matches(
                    "(asked_%1$s_.*|%1$s_(ordered|amount_usd)|agreed_%1$s_usd)".formatted(item)));
  }

  private static Stream<Path> walked(Path folder) {
    try {
      return Files.walk(folder);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "QUOTE,        demo-data/quince-hollow,  workbooks/quince-hollow/quote.xlsx",
    "QUOTE,        demo-data/tallow-end,     workbooks/tallow-end/quote.xlsx",
    "CHANGE_ORDER, demo-data/kettle-reach,   workbooks/kettle-reach/change-order-01.xlsx",
    "INVOICE,      demo-data/whole-life/6-closed, demo-data/whole-life/6-closed/invoice.xlsx",
  })
  void plainOne_isFilledForEveryDocument(LetterKind kind, Path of, Path sample) throws IOException {
    byte[] bytes = Files.readAllBytes(sample);
    Ours ours = new Ours(bytes);
    byte[] whole =
        new OfficeLetterhead(kind, "plain.xlsx", PlainLetterhead.bytes(kind))
            .filled(bytes, Told.ofDraft(Job.of(JobTables.in(of))), () -> null);

    try (XSSFWorkbook workbook = opened(whole)) {
      assertThat(workbook.getNumberOfSheets()).isEqualTo(ours.sheets().size() + 1);
    }
    assertThat(kind.words().values().stream().filter(word -> ours.lines(word) > 0))
        .hasSizeGreaterThan(8);
  }
}
