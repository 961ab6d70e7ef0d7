package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;

/**
 * Costs, overhead, margin and wages stand nowhere in the homeowner's file: not in a cell, a name or
 * a hidden part.
 */
class HomeownerFileTest {

  static List<String> jobs() {
    return Samples.JOBS;
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noPart_namesACost(String job) throws IOException {
    String everything = allParts(QuoteBook.bytes(estimate(job))).toLowerCase(Locale.ROOT);

    assertThat(everything)
        .contains("quoted")
        .doesNotContain(
            "overhead", "margin", "labour", "wage", "direct_usd", "exact_usd", "tax_pct");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noCell_holdsACost(String job) throws IOException {
    Estimate estimate = estimate(job);
    List<Double> costs =
        java.util.stream.Stream.of(
                estimate.plannedSheet().direct(),
                estimate.plannedSheet().exact(),
                estimate.extraSheet().direct(),
                estimate.extraSheet().exact(),
                (Figure<?>) estimate.job().labelledPrices().get("Sheet"),
                (Figure<?>) estimate.job().labelledPrices().get("Sheet nail"),
                (Figure<?>) estimate.job().labelledRates().get("Labour with its burden"),
                (Figure<?>) estimate.job().labelledRates().get("Sales tax on material"))
            .map(Figure::value)
            .toList();
    try (XSSFWorkbook workbook = Cells.opened(QuoteBook.bytes(estimate))) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            boolean isNumber =
                cell.getCellType() == CellType.NUMERIC
                    || cell.getCellType() == CellType.FORMULA
                        && cell.getCachedFormulaResultType() == CellType.NUMERIC;
            if (isNumber) {
              assertThat(costs)
                  .as(Cells.address(cell))
                  .noneMatch(cost -> Math.abs(cost - cell.getNumericCellValue()) < 1e-9);
            }
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theTrace_stopsAtTheQuotedPrices(String job) {
    Estimate estimate = estimate(job);
    Figure<?> total = estimate.quote().restated(estimate).total();

    assertThat(total.value()).isEqualTo(estimate.total().value());
    assertThat(named(estimate.total(), "labour_usd_per_h")).isTrue();
    assertThat(named(total, "labour_usd_per_h")).isFalse();
    assertThat(named(total, "planned_sheet_quoted_usd")).isTrue();
  }

  private static boolean named(Traced node, String name) {
    return node.name().equals(name)
        || node.step().operands().stream().anyMatch(operand -> named(operand, name));
  }

  private static Estimate estimate(String job) {
    return new Estimate(Job.of(Samples.tables(job)));
  }

  private static String allParts(byte[] file) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return all.toString();
  }
}
