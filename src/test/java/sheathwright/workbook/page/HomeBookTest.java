package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.JobText;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.home.HomeBook;

/** The homeowner's file: three sheets of paper, or four, and nothing that must not stand there. */
class HomeBookTest {

  private static final double LETTER_WIDE = (8.5 - 1.0) * 72;
  private static final double LETTER_TALL = (11 - 1.3) * 72;
  private static final double SMALLEST = 0.7;

  static List<String> jobs() {
    return Samples.everyJob();
  }

  private static XSSFWorkbook book(JobText job) {
    return Cells.opened(HomeBook.of(new Estimate(job.job())).bytes());
  }

  /** Each tab goes on one sheet of letter paper, at seven tenths of its size at least. */
  @ParameterizedTest
  @MethodSource("jobs")
  void itIsThreePages_fourWithStraightenedRafters(String job) throws Exception {
    Estimate estimate = new Estimate(Job.of(Samples.tables(job)));
    try (XSSFWorkbook workbook = Cells.opened(HomeBook.of(estimate).bytes())) {
      assertThat(workbook.getNumberOfSheets())
          .isEqualTo(estimate.rafterLeveling().isPresent() ? 4 : 3);
      for (Sheet each : workbook) {
        XSSFSheet sheet = (XSSFSheet) each;
        assertThat(sheet.getFitToPage()).isTrue();
        assertThat(sheet.getPrintSetup().getFitHeight()).isEqualTo((short) 1);
        assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
        assertThat(scale(sheet)).as(sheet.getSheetName()).isGreaterThan(SMALLEST);
      }
    }
  }

  /**
   * The invented house of the whole life has 60 places, 18 of them seen and 1 bad. With one bad
   * sheet to 15 sound ones before, further bad ones are beta-binomial (42 places, 2, 32): 1 or 2 in
   * 41 of 100, up to 7 in 94 of 100, worked out by a script of its own.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3-quoted | bad_alpha,1, | bad_beta,15, | Of houses like yours, by our records and what could be seen of your deck: 1 or 2 bad sheets in 2 houses of 5; more than 7 in 1 of 20.",
        "3-quoted | tax_pct,0, | waste_pct,0, |",
      })
  void howManyMayBeBad_isSaidInHouses_whereTheOfficeKnowsOfOthers(
      String stage, String alpha, String beta, String said) throws Exception {
    Map<String, RowSource> files =
        new LinkedHashMap<>(JobTables.in(Path.of("demo-data", "whole-life", stage)).files());
    RowSource rates = files.get("rates");
    List<RowSource.Line> lines = new ArrayList<>(rates.lines());
    List<String> own = rates.lines().stream().map(line -> line.cells().get(0)).toList();
    CsvFile.parse("rates.csv", "rate,value,note\n" + alpha + "\n" + beta + "\n").lines().stream()
        .filter(line -> !own.contains(line.cells().get(0)))
        .forEach(lines::add);
    files.put("rates", new CsvFile(rates.name(), ',', rates.header(), lines));

    try (XSSFWorkbook workbook =
        Cells.opened(HomeBook.of(new Estimate(Job.of(new JobTables(files)))).bytes())) {
      List<String> texts = new ArrayList<>();
      workbook
          .getSheet("What you get")
          .forEach(row -> row.forEach(cell -> texts.add(cell.toString())));
      if (said == null) {
        assertThat(texts).doesNotContain("How many may be bad");
      } else {
        assertThat(texts).contains("How many may be bad", said);
      }
    }
  }

  /** A firm that says everything, at length, leaves its price on one sheet of paper. */
  @ParameterizedTest
  @MethodSource("jobs")
  void aLetterhead_leavesPageOneOnePage(String job) throws Exception {
    Map<String, RowSource> files = new LinkedHashMap<>(Samples.tables(job).files());
    String long200 = "Words that an office says of what it does and does not do ".repeat(3).strip();
    files.put(
        "firm",
        CsvFile.parse(
            "firm.csv",
            """
            key,value
            name,"Corvane and Thrupp, deck repairs"
            address,"3 Foundry Row, Pemberly Flats"
            phone,555-0134
            license,PF-20817
            insurer,Harbor Mutual of Willowmere
            payment_words,%1$s
            cancel_words,%1$s
            warranty_words,%1$s
            """
                .formatted(long200)));
    Estimate estimate = new Estimate(Job.of(new JobTables(files)));
    try (XSSFWorkbook workbook = Cells.opened(HomeBook.of(estimate).bytes())) {
      assertThat(scale(workbook.getSheetAt(0))).isGreaterThan(SMALLEST);
    }
  }

  private static double scale(XSSFSheet sheet) {
    double wide = 0;
    for (int column = 0; column < 5; column++) {
      wide += sheet.getColumnWidthInPixels(column) * 0.75;
    }
    double tall = 0;
    for (int line = 0; line <= sheet.getLastRowNum(); line++) {
      tall +=
          sheet.getRow(line) == null
              ? sheet.getDefaultRowHeightInPoints()
              : sheet.getRow(line).getHeightInPoints();
    }
    return Math.min(LETTER_WIDE / wide, LETTER_TALL / tall);
  }

  /** Typed numbers may be changed by nobody, and each derived one is a formula. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyCell_isLocked(String job) throws Exception {
    Estimate estimate = new Estimate(Job.of(Samples.tables(job)));
    try (XSSFWorkbook workbook = Cells.opened(HomeBook.of(estimate).bytes())) {
      for (Sheet sheet : workbook) {
        assertThat(((XSSFSheet) sheet).isSheetLocked()).isTrue();
        for (Row row : sheet) {
          for (Cell cell : row) {
            boolean isSignature = cell.toString().endsWith(", date") || cell.toString().isEmpty();
            assertThat(cell.getCellStyle().getLocked() || isSignature)
                .as(Cells.address(cell))
                .isTrue();
          }
        }
      }
      assertThat(HomeCells.at(workbook, "quote_total_usd").getCellType())
          .isEqualTo(CellType.FORMULA);
      assertThat(HomeCells.number(workbook, "quote_total_usd")).isEqualTo(estimate.total().value());
    }
  }

  /**
   * An option that the homeowner ticks is in the price and in the most that it can come to: $10,873
   * and $16,372 of the gable, and $1,250 besides.
   */
  @Test
  void anOption_isInThePriceOnceItIsTicked() throws Exception {
    JobText job =
        JobText.demo("quince-hollow")
            .withTable(
                "options",
                """
                option,item,quantity,unit,usd,chosen,chosen_on
                thicker,Thicker panels all over,,,1250,,
                """);
    try (XSSFWorkbook workbook = book(job)) {
      assertThat(HomeCells.number(workbook, "quote_total_usd")).isEqualTo(10_873);
      Cell tick = HomeCells.at(workbook, "option_1_chosen");
      assertThat(tick.getStringCellValue()).isEqualTo("no");
      assertThat(tick.getCellStyle().getLocked()).isFalse();
      tick.setCellValue("yes");
      assertThat(HomeCells.number(workbook, "quote_total_usd")).isEqualTo(12_123);
      assertThat(HomeCells.number(workbook, "at_most_usd")).isEqualTo(17_622);
      assertThat(HomeCells.text(workbook, "sums_tie")).startsWith("The amounts add up");
    }
  }

  /** The gable's payments: $1,000, half at dry-in, and the rest; together $10,873. */
  @Test
  void payments_addUpToThePrice() throws Exception {
    JobText job =
        JobText.demo("quince-hollow")
            .withTable(
                "stages",
                """
                stage,part_pct,usd,when,paid_on,paid_usd
                Deposit,,1000,when you sign,,
                At dry-in,50,,when the roof is dry again,,
                Final,,4436.50,when all is done,,
                """);
    try (XSSFWorkbook workbook = book(job)) {
      assertThat(HomeCells.number(workbook, "payment_1_usd")).isEqualTo(1_000);
      assertThat(HomeCells.number(workbook, "payment_2_usd")).isEqualTo(5_436.50);
      assertThat(HomeCells.number(workbook, "payment_3_usd")).isEqualTo(4_436.50);
    }
  }

  /** What is overwritten in a file that was sent is seen on its first page. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "quote_total_usd",
        "extra_sheet_usd",
        "credit_usd",
        "all_extra_usd",
        "at_most_usd"
      })
  void anOverwrittenNumber_isSeen(String name) throws Exception {
    try (XSSFWorkbook workbook = book(JobText.demo("quince-hollow"))) {
      assertThat(HomeCells.text(workbook, "sums_tie")).startsWith("The amounts add up");
      HomeCells.at(workbook, name).setBlank();
      HomeCells.at(workbook, name).setCellValue(17);
      assertThat(HomeCells.text(workbook, "sums_tie")).startsWith("A number was changed");
    }
  }

  /** The same of each number in the lines. */
  @ParameterizedTest
  @CsvSource({"1", "3", "4"})
  void anOverwrittenLine_isSeen(int column) throws Exception {
    for (int item = 0; item < 3; item++) {
      try (XSSFWorkbook workbook = book(JobText.demo("quince-hollow"))) {
        Cell amounts = firstOf(workbook, "lines_amount_usd");
        Cell cell = amounts.getSheet().getRow(amounts.getRowIndex() + item).getCell(column);
        cell.setBlank();
        cell.setCellValue(17);
        assertThat(HomeCells.text(workbook, "sums_tie")).startsWith("A number was changed");
      }
    }
  }

  private static Cell firstOf(XSSFWorkbook workbook, String name) {
    String range = workbook.getName(name).getRefersToFormula();
    var area =
        new org.apache.poi.ss.util.AreaReference(
            range, org.apache.poi.ss.SpreadsheetVersion.EXCEL2007);
    var first = area.getFirstCell();
    return workbook.getSheet(first.getSheetName()).getRow(first.getRow()).getCell(first.getCol());
  }

  /** Nobody signs above what nobody has looked at, and its work is not sold. */
  @Test
  void whatNobodyLookedAt_isNeitherSignedNorSold() throws Exception {
    JobText unknown =
        JobText.demo("tallow-end").with("job", "span_known,measured", "span_known,unknown");
    try (XSSFWorkbook workbook = book(unknown)) {
      assertThat(HomeCells.texts(workbook))
          .anyMatch(
              text -> text.startsWith("Not inspected: ") && text.contains("not in this price"))
          .anyMatch(text -> text.startsWith("Nothing is signed yet"))
          .noneMatch(text -> text.startsWith("Homeowner, date"))
          .doesNotContain("Rafters straightened with new wood beside them");
    }
    try (XSSFWorkbook workbook = book(JobText.demo("tallow-end"))) {
      assertThat(HomeCells.texts(workbook))
          .contains("Homeowner, date", "Rafters straightened with new wood beside them")
          .noneMatch(text -> text.startsWith("Nothing is signed yet"));
    }
  }

  @Test
  void whatStops_isSaidInPlainWords() throws Exception {
    JobText job =
        JobText.demo("quince-hollow").with("reports", "F-2,nothing", "F-2,fire-retardant-panel");
    try (XSSFWorkbook workbook = book(job)) {
      assertThat(HomeCells.texts(workbook))
          .anyMatch(text -> text.startsWith("Stop: the building official has to decide"))
          .anyMatch(text -> text.startsWith("The panels beside the wall that you share"));
    }
  }

  /** What an agreement is held against stands in the file under the names that it goes by. */
  @ParameterizedTest
  @MethodSource("jobs")
  void whatIsAgreedTo_standsByItsName(String job) throws Exception {
    Estimate estimate = new Estimate(Job.of(Samples.tables(job)));
    try (XSSFWorkbook workbook = Cells.opened(HomeBook.of(estimate).bytes())) {
      estimate
          .quote()
          .told()
          .forEach(
              (name, figure) -> {
                if (figure.value() != 0) {
                  assertThat(HomeCells.number(workbook, name)).as(name).isEqualTo(figure.value());
                }
              });
    }
  }

  /** Each mark stands once, in words of somebody in the yard. */
  @Test
  void everyMark_isToldWithItsPlace() throws Exception {
    Estimate estimate = new Estimate(Job.of(Samples.tables("cinder-brook")));
    try (XSSFWorkbook workbook = Cells.opened(HomeBook.of(estimate).bytes())) {
      assertThat(HomeCells.texts(workbook))
          .contains("south side, plane S, at the gutter, left", "rotten wood")
          .anyMatch(text -> text.startsWith("We take this piece out and put in a new one."))
          .contains("1", "2", "3", "4", "5", "6", "7", "8");
    }
  }
}
