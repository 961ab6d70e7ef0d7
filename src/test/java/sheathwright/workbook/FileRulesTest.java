package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.Samples;

/**
 * Rules of a workbook that are about the file as a whole, by their numbers in decision 031;
 * WorkbookRulesTest holds those about formulas and inputs.
 */
class FileRulesTest {

  /** A number that is 1 where something is so and 0 where not. */
  private static final Pattern FLAG = Pattern.compile("IF\\(.*,(1,0|0,1)\\)");

  private static final Set<String> SAID_IN_WORDS =
      Set.of("\"yes\";\"yes\";\"no\"", "\"LOOK\";\"LOOK\";\"holds\"");

  /** Lines of a list that surely fill more than a page. */
  static Iterable<String> names() {
    return Samples.names();
  }

  private static XSSFWorkbook opened(String name) {
    return Cells.opened(Samples.all().get(name));
  }

  @ParameterizedTest
  @CsvSource({
    "quince-hollow-estimate, 175",
    "mistwater-cottage-estimate, 165",
    "cinder-brook-estimate, 185",
    "tallow-end-estimate, 245"
  })
  void rule14_fewCellsHaveNames_andStepsHaveNone(String name, int most) throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      List<Name> cells =
          named(workbook).stream()
              .filter(each -> !each.getRefersToFormula().contains(":"))
              .toList();
      assertThat(cells).hasSizeLessThan(most);
      assertThat(cells)
          .filteredOn(each -> area(each).getFirstCell().getSheetName().equals("Working"))
          .allMatch(
              each ->
                  isInput(workbook, each)
                      || each.getNameName().matches(".*_(state|input|now|solved_for|changed)"),
              "an input, or the guard of what was solved and its list");
      assertThat(cells).extracting(Name::getNameName).contains("quote_total_usd", "margin_pct");
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule14_everyName_isListedWithWhatItIs(String name) throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      XSSFSheet list = workbook.getSheet("Names");
      if (list == null) {
        assertThat(name).matches(".*-quote|life-.*");
        return;
      }
      Set<String> listed = new TreeSet<>();
      for (Row row : list) {
        if (row.getCell(2) != null && !row.getCell(2).toString().isEmpty()) {
          listed.add(row.getCell(0).toString());
          assertThat(row.getCell(1).toString()).as(row.getCell(0).toString()).isNotEmpty();
        }
      }
      assertThat(listed)
          .containsAll(named(workbook).stream().map(Name::getNameName).collect(Collectors.toSet()));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule28_nobodysComments_standInIt(String name) {
    assertThat(Samples.parts(Samples.all().get(name)).keySet())
        .noneMatch(part -> part.contains("comment") || part.contains("person"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule32_aLongList_repeatsItsHeadings_andPagesAreNumbered(String name) throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        assertThat(sheet.getFooter().getRight()).contains("&A, page &P of &N");
        boolean isOnePage = sheet.getPrintSetup().getFitHeight() == 1;
        boolean isOneOfMany = name.equals("calculators") && i > 0;
        if (PrintedLists.isKeptBack(workbook, i) || isOnePage || isOneOfMany) {
          continue;
        }
        assertThat(sheet.getRepeatingRows()).as(sheet.getSheetName()).isNotNull();
        assertThat(PrintedLists.wrong(workbook, sheet)).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule32_nothingStandsBesideThePage(String name) throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        if (PrintedLists.isKeptBack(workbook, i)) {
          continue;
        }
        int last =
            new AreaReference(workbook.getPrintArea(i), SpreadsheetVersion.EXCEL2007)
                .getLastCell()
                .getCol();
        for (Row row : workbook.getSheetAt(i)) {
          for (Cell cell : row) {
            assertThat(cell.getCellType() == CellType.BLANK || cell.getColumnIndex() <= last)
                .as(Cells.address(cell))
                .isTrue();
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule32_aLineOfNoHeightOfItsOwn_isAsTallAsDrawingsReckon(String name) throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        var ordinary = workbook.getSheetAt(i).getCTWorksheet().getSheetFormatPr();
        assertThat(ordinary.getDefaultRowHeight()).isEqualTo(15);
        assertThat(ordinary.getCustomHeight()).as(workbook.getSheetName(i)).isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule34_whatIsSoOrNot_saysYesOrNo(String name) throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      Cells.formulas(Samples.all().get(name))
          .forEach(
              (address, formula) -> {
                if (FLAG.matcher(formula).matches()) {
                  assertThat(format(workbook, address)).as(address).isIn(SAID_IN_WORDS);
                }
              });
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule34_inchesThatTheCrewCutsAndMarks_areInTheFractionsOfATape(String name)
      throws IOException {
    try (XSSFWorkbook workbook = opened(name)) {
      List<String> decimals = new ArrayList<>();
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        if (workbook.getSheetName(i).startsWith("Crew")) {
          for (Row row : workbook.getSheetAt(i)) {
            for (Cell cell : row) {
              if (cell.getCellStyle().getDataFormatString().equals("#,##0.000")) {
                decimals.add(Cells.address(cell));
              }
            }
          }
        }
      }
      assertThat(decimals).isEmpty();
    }
  }

  private static List<Name> named(XSSFWorkbook workbook) {
    return workbook.getAllNames().stream()
        .filter(each -> !each.getNameName().startsWith("_"))
        .map(Name.class::cast)
        .toList();
  }

  private static boolean isInput(XSSFWorkbook workbook, Name name) {
    CellReference at = area(name).getFirstCell();
    return !workbook
        .getSheet(at.getSheetName())
        .getRow(at.getRow())
        .getCell(at.getCol())
        .getCellStyle()
        .getLocked();
  }

  private static AreaReference area(Name name) {
    return new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
  }

  private static String format(XSSFWorkbook workbook, String address) {
    int end = address.lastIndexOf('!');
    var at = new org.apache.poi.ss.util.CellAddress(address.substring(end + 1));
    return workbook
        .getSheet(address.substring(0, end))
        .getRow(at.getRow())
        .getCell(at.getColumn())
        .getCellStyle()
        .getDataFormatString();
  }
}
