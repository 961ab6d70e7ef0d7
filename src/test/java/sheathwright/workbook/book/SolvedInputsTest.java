package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.workbook.page.EstimateBook;
import sheathwright.workbook.page.Samples;

/**
 * Whatever cell of the tables is changed in a written workbook, either a guard asks to solve again
 * or solving again gives the same.
 */
class SolvedInputsTest {

  /** Lines of one table are alike; those behind this one are not changed. */
  private static final long LAST_LINE = 2;

  static Stream<String> jobs() {
    return Samples.JOBS.stream().filter(job -> !job.equals("mistwater-cottage"));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void eachInput_isComparedOrHasNoPart(String job) throws Exception {
    JobTables tables = Samples.tables(job);
    Following.Made made = Following.made(EstimateBook::book, new Estimate(Job.of(tables)));
    Map<String, List<String>> before = solved(made);
    int compared = 0;
    try (XSSFWorkbook workbook = Cells.opened(made.bytes())) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      List<Cell> guards = guards(workbook, made.book());
      for (Map.Entry<Traced, Place> input : made.book().inputs().entrySet()) {
        Matcher place = Following.PLACE.matcher(input.getKey().source().text());
        boolean isKeyed = place.matches() && place.group(1).equals("job");
        boolean isOfOffice = place.matches() && place.group(1).matches("prices|rates|maker|layers");
        boolean isFreeText =
            isKeyed && input.getKey() instanceof Choice<?> word && word.options().isEmpty();
        if (!place.matches()
            || isOfOffice
            || isFreeText
            || !isKeyed && Long.parseLong(place.group(2)) > LAST_LINE) {
          continue;
        }
        String other = Perturbed.otherTexts(input.getKey()).get(0);
        if (changed(workbook, evaluator, guards, input, other)) {
          compared++;
        } else {
          Optional<Map<String, List<String>>> after =
              resolved(tables, place, input.getKey(), other);
          after.ifPresent(
              answer ->
                  assertThat(answer)
                      .as("%s of %s, which no guard compares", input.getKey().name(), place.group())
                      .isEqualTo(before));
        }
      }
    }
    assertThat(compared).isGreaterThan(6);
  }

  /** Whether any guard asks to solve again while the input's cell says something else. */
  private static boolean changed(
      XSSFWorkbook workbook,
      FormulaEvaluator evaluator,
      List<Cell> guards,
      Map.Entry<Traced, Place> input,
      String other) {
    Place place = input.getValue();
    Cell cell = workbook.getSheet(place.tab()).getRow(place.row()).getCell(place.column());
    boolean isNumber = input.getKey() instanceof Figure<?>;
    set(cell, other, isNumber);
    evaluator.clearAllCachedResultValues();
    boolean asks =
        guards.stream()
            .anyMatch(guard -> !"current".equals(evaluator.evaluate(guard).getStringValue()));
    set(cell, input.getKey().plain(), isNumber);
    return asks;
  }

  private static void set(Cell cell, String text, boolean isNumber) {
    if (isNumber) {
      cell.setCellValue(Double.parseDouble(text));
    } else {
      cell.setCellValue(text);
    }
  }

  private static List<Cell> guards(XSSFWorkbook workbook, Book book) {
    List<Cell> guards = new ArrayList<>();
    for (Solution solution : book.solutions()) {
      String name = Names.legal(solution.state().name());
      CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
      guards.add(workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol()));
    }
    return guards;
  }

  private static Optional<Map<String, List<String>>> resolved(
      JobTables tables, Matcher place, Traced input, String other) {
    CsvFile file = tables.files().get(place.group(1));
    CsvFile table = Following.changed(file, Long.parseLong(place.group(2)), input, other);
    return Following.made(EstimateBook::book, tables, place.group(1), table)
        .map(SolvedInputsTest::solved);
  }

  /** Everything that a solver found, as it stands in the cells. */
  private static Map<String, List<String>> solved(Following.Made made) {
    Map<String, List<String>> found = new LinkedHashMap<>();
    Map<String, List<String>> cells = SolvedCells.cellsByName(made.bytes());
    try (XSSFWorkbook workbook = Cells.opened(made.bytes())) {
      for (String name : made.book().solvedNames()) {
        List<String> values = new ArrayList<>();
        for (String address : cells.get(name)) {
          CellReference at = new CellReference("'" + address.replace("!", "'!"));
          Cell cell = workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
          values.add(String.valueOf(cell));
        }
        found.put(name, values);
      }
      return found;
    } catch (java.io.IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }
}
