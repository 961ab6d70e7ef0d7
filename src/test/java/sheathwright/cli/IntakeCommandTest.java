package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.table.CsvFile;

/** An empty survey, filled in on a phone and quoted. */
class IntakeCommandTest {

  private static final Path GABLE = Path.of("demo-data", "quince-hollow");

  @TempDir private Path folder;

  @Test
  void aSurveyFilledInAsTheTablesOfAJob_isQuotedAtItsTotal() throws IOException {
    Path survey = folder.resolve("survey.xlsx");
    assertThat(CommandRun.of("intake", folder).status()).isZero();
    for (String table : List.of("prices.csv", "rates.csv")) {
      Files.copy(GABLE.resolve(table), folder.resolve(table));
    }
    try (XSSFWorkbook book =
            new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(survey)));
        OutputStream out = Files.newOutputStream(survey)) {
      fillJob(book.getSheet("job"), CsvFile.read(GABLE.resolve("job.csv")));
      for (String table : List.of("planes", "reports")) {
        fill(book.getSheet(table), CsvFile.read(GABLE.resolve(table + ".csv")));
      }
      book.write(out);
    }

    CommandRun quoted = CommandRun.of("quote", survey);
    CommandRun same = CommandRun.of("quote", GABLE, "-o", folder.resolve("same"));

    assertThat(quoted.err()).isEmpty();
    assertThat(quoted.out()).contains("the homeowner pays");
    assertThat(line(same)).isEqualTo(line(quoted));
  }

  private static String line(CommandRun run) {
    return run.out()
        .lines()
        .filter(line -> line.startsWith("the homeowner pays"))
        .findFirst()
        .orElseThrow();
  }

  private static void fillJob(XSSFSheet sheet, CsvFile job) {
    job.lines()
        .forEach(
            line -> {
              for (Row row : sheet) {
                if (row.getCell(0) != null
                    && row.getCell(0).toString().equals(line.cells().get(0))) {
                  row.getCell(1).setCellValue(line.cells().get(1));
                }
              }
            });
  }

  private static void fill(XSSFSheet sheet, CsvFile table) {
    Row heads = sheet.getRow(3);
    for (int i = 0; i < table.lines().size(); i++) {
      for (int column = 0; column < table.header().size(); column++) {
        for (int at = 0; at < heads.getLastCellNum(); at++) {
          if (heads.getCell(at).toString().equals(table.header().get(column))) {
            sheet.getRow(4 + i).getCell(at).setCellValue(table.lines().get(i).cells().get(column));
          }
        }
      }
    }
  }

  @Test
  void anEmptySurvey_isRefusedWithWhatIsMissing() {
    assertThat(CommandRun.of("intake", folder).status()).isZero();

    CommandRun quoted = CommandRun.of("quote", folder.resolve("survey.xlsx"));

    assertThat(quoted.status()).isEqualTo(3);
    assertThat(quoted.err()).contains("the tab prices is missing");
  }

  @Test
  void everyCellToFillIn_hasALineOfHelp() throws IOException {
    assertThat(CommandRun.of("intake", folder).status()).isZero();
    try (XSSFWorkbook book =
        new XSSFWorkbook(
            new ByteArrayInputStream(Files.readAllBytes(folder.resolve("survey.xlsx"))))) {
      for (String name : List.of("planes", "marks", "readings", "reports", "photos")) {
        XSSFSheet sheet = book.getSheet(name);
        Row line = sheet.getRow(4);
        for (int column = 0; column < line.getLastCellNum(); column++) {
          int at = column;
          assertThat(
                  sheet.getDataValidations().stream()
                      .filter(held -> held.getRegions().getCellRangeAddresses()[0].isInRange(4, at))
                      .map(held -> held.getPromptBoxText()))
              .as(name + " " + at)
              .singleElement()
              .asString()
              .isNotBlank();
        }
      }
    }
  }

  @Test
  void twoPlaces_areWrongUse() {
    assertThat(CommandRun.of("intake").status()).isEqualTo(2);
    assertThat(CommandRun.of("intake", folder, "-o", folder.resolve("x.xlsx")).status())
        .isEqualTo(2);
  }
}
