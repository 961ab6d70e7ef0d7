package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.workbook.page.FillBook;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/** What every workbook that leaves the house keeps to, by the numbers of decision 031. */
class WorkbookRulesTest {

  private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"|'[^']*'!");
  private static final Pattern FUNCTION = Pattern.compile("([A-Z][A-Z0-9.]*)\\(");
  private static final Pattern LITERAL =
      Pattern.compile("(?<![A-Za-z0-9_$.])(\\d+(?:\\.\\d+)?)(?![A-Za-z0-9_.])");
  private static final Pattern ADDRESS =
      Pattern.compile("(?i)[a-z]{1,3}\\d+|r\\d*c\\d*|[rc]|true|false");
  private static final Set<String> FUNCTIONS =
      Set.of(
          "SUM",
          "ROUND",
          "ROUNDUP",
          "ROUNDDOWN",
          "MAX",
          "MIN",
          "IF",
          "AND",
          "OR",
          "INDEX",
          "MATCH",
          "SQRT",
          "LOG10",
          "ATAN",
          "ISNUMBER", // whether a number that may be left open is there
          "NA");
  private static final Set<String> LITERALS =
      Set.of("0", "1", "2", "12", "100", "144", "1728", "2000", "14400");

  private static Map<String, byte[]> books;
  private static Map<String, byte[]> again;

  static Iterable<String> names() {
    books = Samples.all();
    return Samples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rules6To12_formulas_areShortPlainAndOfSafeFunctions(String name) {
    Cells.formulas(books.get(name))
        .forEach(
            (address, formula) -> {
              String bare = TEXT.matcher(formula).replaceAll("");
              assertThat(formula.length()).as(address + formula).isLessThanOrEqualTo(255);
              assertThat(depth(bare)).as(address + formula).isLessThanOrEqualTo(5);
              assertThat(matches(FUNCTION, bare)).as(address + formula).isSubsetOf(FUNCTIONS);
              assertThat(asked(bare).split("\\bIF\\(", -1))
                  .as(address + formula)
                  .hasSizeLessThanOrEqualTo(2);
              assertThat(matches(LITERAL, bare.replace(",6),0)", "")))
                  .as(address + formula)
                  .isSubsetOf(LITERALS);
              assertThat(formula).doesNotContain("\"\"");
            });
  }

  /** What is asked where something is there; whether it is may be asked before. */
  private static String asked(String formula) {
    return formula.replaceFirst("^IF\\(ISNUMBER\\([$A-Z0-9]+\\),", "");
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule14_names_areLegalAndUnique(String name) throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(books.get(name))) {
      Set<String> seen = new HashSet<>();
      workbook.getAllNames().stream()
          .filter(defined -> !defined.getNameName().startsWith("_xlnm"))
          .forEach(
              defined -> {
                assertThat(defined.getNameName()).matches("[a-z][a-z0-9_]*").doesNotMatch(ADDRESS);
                assertThat(seen.add(defined.getNameName().toLowerCase(Locale.ROOT))).isTrue();
                assertThat(defined.getSheetIndex()).isEqualTo(-1);
              });
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rules13_15_31_32_formulas_areLockedAndTabsAreReadyToPrint(String name) throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(books.get(name))) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        assertThat(sheet.isSheetLocked()).isTrue();
        assertThat(workbook.isSheetHidden(i)).isFalse();
        assertThat(workbook.getPrintArea(i)).isNotBlank();
        assertThat(sheet.getPrintSetup().getFitWidth()).isPositive();
        assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
        for (Row row : sheet) {
          assertThat(row.getZeroHeight()).isFalse();
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              assertThat(cell.getCellStyle().getLocked()).as(Cells.address(cell)).isTrue();
            }
          }
        }
      }
      assertThat(
              workbook
                  .getPackagePart()
                  .getPackage()
                  .getPartsByName(Pattern.compile(".*(externalLink|vbaProject).*")))
          .isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void rules29_31_inputs_areUnlockedAndSayWhatTheyMayBe(String job) throws Exception {
    JobBook made = JobBook.estimate(new Estimate(Job.of(Samples.tables(job))));
    byte[] bytes = made.bytes();
    Book book = made.book();
    try (XSSFWorkbook workbook = Cells.opened(bytes)) {
      for (Map.Entry<Traced, Place> input : book.inputs().entrySet()) {
        Place place = input.getValue();
        XSSFSheet sheet = workbook.getSheet(place.tab());
        Cell cell = sheet.getRow(place.row()).getCell(place.column());
        assertThat(cell.getCellStyle().getLocked()).as(place.toString()).isFalse();
        boolean isFree = input.getKey() instanceof Choice<?> choice && choice.options().isEmpty();
        assertThat(isFree || hasValidation(sheet, place)).as(input.getKey().name()).isTrue();
      }
    }
  }

  static List<String> jobs() {
    return Samples.JOBS;
  }

  @ParameterizedTest
  @MethodSource("functions")
  void rule8_aFilledColumn_hasOneFormula(String function) {
    byte[] bytes = FillBook.bytes(Samples.filled(function, Samples.tablesToFill().get(function)));
    Map<String, Set<String>> formulas = new HashMap<>();
    Cells.formulas(bytes)
        .forEach(
            (address, formula) -> {
              if (address.startsWith("Filled!")) {
                String row = address.replaceAll("\\D", "");
                formulas
                    .computeIfAbsent(address.replaceAll("\\d", ""), key -> new HashSet<>())
                    .add(formula.replaceAll("(?<=[A-Z])" + row + "\\b(?!\\()", "#"));
              }
            });
    assertThat(formulas).isNotEmpty();
    formulas.forEach((column, kinds) -> assertThat(kinds).as(column).hasSize(1));
  }

  static Iterable<String> functions() {
    return Samples.tablesToFill().keySet();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule36_theSameInput_givesTheSameBytes(String name) {
    again = again == null ? Samples.made() : again;
    assertThat(again.get(name)).isEqualTo(books.get(name));
  }

  private static boolean hasValidation(XSSFSheet sheet, Place place) {
    return sheet.getDataValidations().stream()
        .anyMatch(
            validation ->
                java.util.Arrays.stream(validation.getRegions().getCellRangeAddresses())
                    .anyMatch(range -> range.isInRange(place.row(), place.column())));
  }

  private static List<String> matches(Pattern pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  private static int depth(String formula) {
    int depth = 0;
    int deepest = 0;
    boolean[] isCall = new boolean[formula.length() + 1];
    for (int i = 0; i < formula.length(); i++) {
      if (formula.charAt(i) == '(') {
        boolean call = i > 0 && Character.isLetterOrDigit(formula.charAt(i - 1));
        isCall[++depth] = call;
        int calls = 0;
        for (int level = 1; level <= depth; level++) {
          calls += isCall[level] ? 1 : 0;
        }
        deepest = Math.max(deepest, calls);
      } else if (formula.charAt(i) == ')') {
        depth--;
      }
    }
    return deepest;
  }
}
