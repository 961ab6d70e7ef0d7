package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.Samples;

/** Rules 18 and 34 of decision 031 over every column of every list of every workbook. */
class ListColumnsTest {

  private static final Pattern NUMBER = Pattern.compile("-?\\$?[0-9][0-9,]*(\\.[0-9]+)?");

  /**
   * What was solved for, and what it is now: words and numbers, as the question has them. A size
   * that is not on sale has no rank, and says so.
   */
  private static final Pattern SOLVED = Pattern.compile(".*_(now|solved_for|rank|now_pct)");

  /** A number that is a name: of a mark, of a line of the plan, of what an office typed. */
  private static final Pattern A_NAME = Pattern.compile(".*_(mark|number)|tab_.*");

  /** All but tables that are filled down, where a number that nobody measured is a word. */
  static List<String> names() {
    return Samples.all().keySet().stream().filter(name -> !name.startsWith("fill-")).toList();
  }

  /** What goes out of the house. */
  static List<String> papers() {
    return names().stream().filter(name -> name.matches("life-.*|.*-quote")).toList();
  }

  /** The cells of each column of a list, by its name. */
  private static Map<String, List<Cell>> columns(XSSFWorkbook workbook) {
    Map<String, List<Cell>> columns = new LinkedHashMap<>();
    workbook.getAllNames().stream()
        .filter(name -> !name.getNameName().startsWith("_"))
        .filter(name -> name.getRefersToFormula().contains(":"))
        .forEach(
            name -> {
              AreaReference area =
                  new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
              columns.put(name.getNameName(), cells(workbook, area));
            });
    return columns;
  }

  private static List<Cell> cells(XSSFWorkbook workbook, AreaReference area) {
    CellReference first = area.getFirstCell();
    XSSFSheet sheet = workbook.getSheet(first.getSheetName());
    List<Cell> cells = new ArrayList<>();
    for (int line = first.getRow(); line <= area.getLastCell().getRow(); line++) {
      XSSFRow row = sheet.getRow(line);
      Cell cell = row == null ? null : row.getCell(first.getCol());
      if (cell != null) {
        cells.add(cell);
      }
    }
    return cells;
  }

  private static CellType type(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule18_aColumn_holdsWordsOrNumbers_neverBoth(String name) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      List<String> mixed = new ArrayList<>();
      columns(workbook)
          .forEach(
              (column, cells) -> {
                Set<CellType> types = EnumSet.noneOf(CellType.class);
                cells.stream()
                    .filter(cell -> type(cell) != CellType.BLANK)
                    .filter(cell -> type(cell) != CellType.STRING || !words(cell).isEmpty())
                    .forEach(cell -> types.add(type(cell)));
                if (types.size() > 1 && !SOLVED.matcher(column).matches()) {
                  mixed.add(column);
                }
              });
      assertThat(mixed).as(name).isEmpty();
    }
  }

  private static String words(Cell cell) {
    return cell.getStringCellValue();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule34_noNumber_standsAsText(String name) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      List<String> texts = new ArrayList<>();
      columns(workbook)
          .forEach(
              (column, cells) -> {
                boolean isAName = A_NAME.matcher(column).matches();
                if (!isAName
                    && cells.stream()
                        .anyMatch(
                            cell ->
                                type(cell) == CellType.STRING
                                    && NUMBER.matcher(words(cell)).matches())) {
                  texts.add(column);
                }
              });
      assertThat(texts).as(name).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule34_money_isInDollarsAndCents(String name) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      List<String> bare = new ArrayList<>();
      columns(workbook)
          .forEach(
              (column, cells) -> {
                if (column.endsWith("_usd")
                    && cells.stream()
                        .filter(cell -> type(cell) == CellType.NUMERIC)
                        .anyMatch(
                            cell ->
                                !cell.getCellStyle()
                                    .getDataFormatString()
                                    .matches("\\$#,##0\\.000?"))) {
                  bare.add(column);
                }
              });
      assertThat(bare).as(name).isEmpty();
    }
  }

  /** Beside the headings of a list stands none that heads nothing of it. */
  @ParameterizedTest
  @MethodSource("papers")
  void rule18_aHeading_standsOverWhatItHeads(String name) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      Set<String> headed = new HashSet<>();
      Set<String> lines = new HashSet<>();
      columns(workbook)
          .values()
          .forEach(
              cells -> {
                if (!cells.isEmpty()) {
                  Cell first = cells.get(0);
                  String line = first.getSheet().getSheetName() + "!" + (first.getRowIndex() - 1);
                  lines.add(line);
                  headed.add(line + " " + first.getColumnIndex());
                }
              });
      List<String> alone = new ArrayList<>();
      workbook.forEach(
          sheet ->
              sheet.forEach(
                  row ->
                      row.forEach(
                          cell -> {
                            String line = sheet.getSheetName() + "!" + row.getRowNum();
                            if (lines.contains(line)
                                && type(cell) == CellType.STRING
                                && !headed.contains(line + " " + cell.getColumnIndex())) {
                              alone.add(Cells.address(cell) + " " + words(cell));
                            }
                          })));
      assertThat(alone).as(name).isEmpty();
    }
  }
}
