package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.workbook.audit.Audit;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.Samples;

/**
 * Rules of a workbook that are about what it tells, by their numbers in decision 031, which says
 * whose books do not follow one.
 */
class BookRulesTest {

  private static final int CHECKS = 10;
  private static final double HALF_A_CENT = 0.005;

  /** A formula over names alone, which means the same wherever it stands, and reckons. */
  private static final Pattern RECKONS = Pattern.compile(".*[a-z_]{3,}.*[-+*/(].*");

  /**
   * Beyond the plan for the hours, beyond what was sold for the bill: one until somebody agrees.
   */
  private static final Set<String> THE_SAME_UNTIL_AGREED =
      Set.of("MAX(found_sheets-planned_sheets,0)");

  private static final Pattern ADDRESS = Pattern.compile("\\$?\\b[A-Z]{1,3}\\$?\\d+\\b");

  static Iterable<String> names() {
    return Samples.names();
  }

  static List<String> estimates() {
    return Samples.all().keySet().stream().filter(name -> name.endsWith("-estimate")).toList();
  }

  static List<String> quotes() {
    return Samples.all().keySet().stream().filter(name -> name.endsWith("-quote")).toList();
  }

  private static XSSFWorkbook opened(String name) {
    return Cells.opened(Samples.all().get(name));
  }

  private static String text(Cell cell) {
    DataFormatter shown = new DataFormatter();
    shown.setUseCachedValuesForFormulaCells(true);
    return cell == null ? "" : shown.formatCellValue(cell);
  }

  private static List<String> texts(XSSFSheet sheet, int column) {
    List<String> texts = new ArrayList<>();
    sheet.forEach(row -> texts.add(text(row.getCell(column))));
    return texts;
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void rule1_theFirstTab_saysWhatTheWorkbookIsOf(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      XSSFSheet first = workbook.getSheetAt(0);
      assertThat(first.getSheetName()).isEqualTo("Read me first");
      assertThat(texts(first, 0)).contains("Job", "For", "Site", "Prepared by", "Quote number");
      for (Row row : first) {
        if (List.of("Job", "For", "Site", "Prepared by").contains(text(row.getCell(0)))) {
          assertThat(text(row.getCell(1))).as(text(row.getCell(0))).isNotBlank();
        }
      }
    }
  }

  /**
   * What the file says of its cells is what stands in them: inputs, formulas, and nothing typed.
   */
  @ParameterizedTest
  @MethodSource("names")
  void rules3_7_whatItsManifestSays_isWhatStandsInIt(String name) {
    byte[] book = Samples.all().get(name);

    assertThat(Audit.between(book, book).lines()).isEmpty();
  }

  /** One look for what may be changed, and for nothing else. */
  @ParameterizedTest
  @MethodSource("names")
  void rule5_inputs_haveOneLook_andOnlyTheyHaveIt(String name) throws Exception {
    Set<String> open = new HashSet<>();
    Map<String, String> lockedNumbers = new HashMap<>();
    try (XSSFWorkbook workbook = opened(name)) {
      workbook.forEach(
          sheet ->
              sheet.forEach(
                  row ->
                      row.forEach(
                          cell -> {
                            XSSFColor fill =
                                (XSSFColor) cell.getCellStyle().getFillForegroundColorColor();
                            String color = fill == null ? "none" : fill.getARGBHex();
                            boolean isLine = color.equals("none"); // to write on by hand
                            if (!cell.getCellStyle().getLocked() && !isLine) {
                              open.add(color);
                            } else if (cell.getCellType() == CellType.NUMERIC) {
                              lockedNumbers.put(color, Cells.address(cell));
                            }
                          })));
    }
    assertThat(open).hasSizeLessThanOrEqualTo(1);
    open.forEach(color -> assertThat(lockedNumbers).doesNotContainKey(color));
  }

  /** What several tabs need is worked out on one; the others point there. */
  @ParameterizedTest
  @MethodSource("estimates")
  void rule21_aQuantity_isWorkedOutOnce(String name) throws Exception {
    Map<String, List<String>> places = new HashMap<>();
    Cells.formulas(Samples.all().get(name))
        .forEach(
            (address, formula) -> {
              String bare = formula.replaceAll("\"[^\"]*\"", "");
              if (RECKONS.matcher(bare).matches() && !ADDRESS.matcher(bare).find()) {
                places.computeIfAbsent(formula, none -> new ArrayList<>()).add(address);
              }
            });
    assertThat(places).isNotEmpty();
    places.keySet().removeAll(THE_SAME_UNTIL_AGREED);
    places.forEach(
        (formula, cells) ->
            assertThat(cells.stream().map(cell -> cell.replaceAll("!.*", "")).distinct())
                .as(formula)
                .hasSize(1));
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void rule22_besideEachRoundedPrice_standsTheExactOne(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      XSSFSheet costs = workbook.getSheet("What it costs");
      int quoted = 0;
      for (Row row : costs) {
        if (text(row.getCell(0)).equals("Quoted")) {
          Row exact = costs.getRow(row.getRowNum() - 1);
          assertThat(text(exact.getCell(0))).isEqualTo("With overhead and margin");
          assertThat(row.getCell(1).getNumericCellValue())
              .isGreaterThanOrEqualTo(exact.getCell(1).getNumericCellValue());
          quoted++;
        }
      }
      assertThat(quoted).isPositive();
    }
  }

  @ParameterizedTest
  @MethodSource("quotes")
  void rule23_theAmountsAsTheyArePrinted_addUpToTheirSum(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      double sum = 0;
      for (CellReference at : area(workbook, "lines_amount_usd").getAllReferencedCells()) {
        sum += Math.rint(cell(workbook, at).getNumericCellValue() * 100) / 100; // as it is printed
      }
      CellReference whole = area(workbook, "lines_usd").getFirstCell();
      assertThat(cell(workbook, whole).getNumericCellValue())
          .isCloseTo(sum, org.assertj.core.api.Assertions.within(HALF_A_CENT));
    }
  }

  private static AreaReference area(XSSFWorkbook workbook, String name) {
    return new AreaReference(
        workbook.getName(name).getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
  }

  private static Cell cell(XSSFWorkbook workbook, CellReference at) {
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void rule24_tenThingsAtLeast_areCheckedOnAPageOfTheirOwn(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      int checks = 0;
      for (Row row : workbook.getSheet("Self-check")) {
        Cell verdict = row.getCell(1);
        boolean isCheck = row.getRowNum() > 2 && verdict != null;
        checks += isCheck && verdict.getCellType() == CellType.FORMULA ? 1 : 0;
      }
      assertThat(checks).isGreaterThanOrEqualTo(CHECKS);
    }
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void rule25_everyTab_showsTheStateOfTheChecks_whereItStaysInSight(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        boolean isThere = false;
        for (Cell cell : sheet.getRow(1)) {
          isThere |=
              cell.getCellType() == CellType.FORMULA
                  && cell.getCellFormula().equals("self_check_state");
        }
        assertThat(isThere).as(sheet.getSheetName()).isTrue();
        assertThat((int) sheet.getPaneInformation().getHorizontalSplitPosition())
            .as(sheet.getSheetName())
            .isGreaterThanOrEqualTo(2);
      }
    }
  }

  /** Each published table says where it is from, and how that was read. */
  @ParameterizedTest
  @MethodSource("estimates")
  void rule33_whatWasAssumed_hasItsSourceAndItsMark(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      List<String> texts = texts(workbook.getSheet("Tables"), 0);
      long sources = texts.stream().filter(text -> text.startsWith("source: ")).count();
      long marks = texts.stream().filter(text -> text.startsWith("mark: ")).count();
      assertThat(sources).isPositive().isEqualTo(marks);
      assertThat(texts(workbook.getSheet("Working"), 0)).isNotEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("estimates")
  void rule37_everyIssue_isListed(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      XSSFSheet history = workbook.getSheet("History");
      Row heads = history.getRow(3);
      assertThat(List.of(text(heads.getCell(0)), text(heads.getCell(1)), text(heads.getCell(2))))
          .containsExactly("Issue", "Date", "Total, $");
      assertThat(text(history.getRow(4).getCell(0))).isEqualTo("1");
    }
  }

  /** Beside a cell that has a name, or over it, stands in words what it is. */
  @ParameterizedTest
  @MethodSource("estimates")
  void rule38_everyNumberThatHasAName_canBeTracedByItsLabel(String name) throws Exception {
    try (XSSFWorkbook workbook = opened(name)) {
      for (Name each : workbook.getAllNames()) {
        if (each.getNameName().startsWith("_") || each.getRefersToFormula().contains(":")) {
          continue;
        }
        CellReference at = area(workbook, each.getNameName()).getFirstCell();
        XSSFSheet sheet = workbook.getSheet(at.getSheetName());
        boolean isBeside = false;
        for (int column = 0; column < at.getCol(); column++) {
          isBeside |= !text(sheet.getRow(at.getRow()).getCell(column)).isBlank();
        }
        boolean isOver = at.getRow() > 0 && !text(over(sheet, at)).isBlank();
        assertThat(isBeside || isOver).as(each.getNameName()).isTrue();
      }
    }
  }

  private static Cell over(XSSFSheet sheet, CellReference at) {
    Row row = sheet.getRow(at.getRow() - 1);
    return row == null ? null : row.getCell(at.getCol());
  }
}
