package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.Perturbed;
import sheathwright.workbook.home.HomeBook;

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
    String everything = allParts(HomeBook.of(estimate(job)).bytes()).toLowerCase(Locale.ROOT);

    assertThat(everything)
        .contains("quoted")
        .doesNotContain(
            "overhead", "margin", "labor", "wage", "direct_usd", "exact_usd", "tax_pct");
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
                (Figure<?>) estimate.job().labeledPrices().get("Sheet"),
                (Figure<?>) estimate.job().labeledPrices().get("Sheet nail"),
                (Figure<?>) estimate.job().labeledRates().get("Labor rate, burdened"),
                (Figure<?>) estimate.job().labeledRates().get("Sales tax on material"))
            .map(Figure::value)
            .toList();
    try (XSSFWorkbook workbook = Cells.opened(HomeBook.of(estimate).bytes())) {
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

  /** A demo job with costs that nothing else in it could equal. */
  private static Estimate estimate(String job) {
    Map<String, String> odd =
        Map.of(
            "sheet", "41.37",
            "nail", "0.0213",
            "labor_usd_per_h", "47.13",
            "overhead_pct", "18.71",
            "margin_pct", "12.93",
            "tax_pct", "6.17");
    Map<String, CsvFile> files = Perturbed.files(Samples.tables(job));
    files.replaceAll(
        (name, file) -> {
          CsvFile changed = file;
          for (RowSource.Line line : isOfCosts(name) ? file.lines() : List.<RowSource.Line>of()) {
            String cost = odd.get(line.cells().get(0));
            if (cost != null) {
              changed = Perturbed.with(changed, line.number(), 1, cost);
            }
          }
          return changed;
        });
    return new Estimate(Job.of(new JobTables(files)));
  }

  private static boolean isOfCosts(String table) {
    return table.equals("prices") || table.equals("rates");
  }

  private static String allParts(byte[] file) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String part = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        all.append(part.replaceAll("<(c:)?pageMargins[^>]*>", ""));
      }
    }
    return all.toString();
  }
}
