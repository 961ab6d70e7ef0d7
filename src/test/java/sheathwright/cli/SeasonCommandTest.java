package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.cli.firm.SeasonFiles;
import sheathwright.job.table.CsvFile;

/**
 * The summary of a season, of the invented job of the whole life at its stages: its sums stand in
 * the documents that were sent ($10,873.00 quoted, at worst 47 more at $117.00, $248.70 approved,
 * $1,000.00 and $5,436.50 paid).
 */
class SeasonCommandTest {

  private static final Path LIFE = Path.of("demo-data", "whole-life");

  @TempDir private Path folder;

  private Path season(String... stages) throws IOException {
    for (String stage : stages) {
      copy(LIFE.resolve(stage), folder.resolve(stage));
    }
    return folder;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.toList()) {
        Path place = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(place);
        } else {
          Files.copy(each, place);
        }
      }
    }
  }

  private CsvFile table() throws IOException {
    return CsvFile.parse("season", Files.readString(folder.resolve("season.csv")));
  }

  /** One line of the table under some of its headings. */
  private List<String> cells(int line, String... headings) throws IOException {
    CsvFile table = table();
    return Stream.of(headings)
        .map(heading -> table.lines().get(line).cells().get(table.header().indexOf(heading)))
        .toList();
  }

  @Test
  void everyJob_isALineWithItsSums() throws IOException {
    season("3-quoted", "4-agreed", "5-opened", "6-closed");

    CommandRun ran = CommandRun.of("season", folder);

    assertThat(ran.status()).as(ran.err()).isZero();
    String[] sums = {"job", "stage", "total_usd", "worst_usd", "included", "price_until"};
    assertThat(cells(0, sums))
        .containsExactly("3-quoted", "quoted", "10873.00", "16372.00", "3", "2027-06-03");
    assertThat(cells(1, sums))
        .containsExactly("4-agreed", "agreed", "10873.00", "16372.00", "3", "");
    String[] found = {"stage", "total_usd", "found", "billed", "approved_usd", "unpaid_stage"};
    assertThat(cells(2, found))
        .containsExactly("opened", "11121.70", "4.5", "1.5", "248.70", "deposit");
    assertThat(cells(3, found))
        .containsExactly("closed", "11121.70", "4.5", "1.5", "248.70", "final");
    assertThat(cells(3, "unpaid_usd", "worst_usd", "p50_sheets", "p95_sheets", "refused"))
        .containsExactly("4685.20", "11121.70", "5", "5", "");
    assertThat(ran.out()).contains("3-quoted: quoted, $10,873.00, at worst $16,372.00");
  }

  /** 80 more on the lump: what was told stays, and today's total stands beside it. */
  @Test
  void aPriceThatChangedSinceItWasTold_standsBesideIt() throws IOException {
    season("3-quoted");
    LifeFolder job = new LifeFolder(folder.resolve("3-quoted"));
    job.replace("job.csv", "\"10,420.00\"", "\"10,500.00\"");

    CommandRun ran = CommandRun.of("season", folder);

    assertThat(cells(0, "total_usd", "now_usd")).containsExactly("10873.00", "10953.00");
    assertThat(ran.out()).contains("; by today's prices $10,953.00");
  }

  /**
   * A sheet at 58.50 above the job, which keeps its 38.50: (58.50 × 1.05 + 43 × 0.02) × 1.065 +
   * 0.55 × 46 + 1.755 is 93.39, × 1.18 ÷ 0.88 is 125.22, quoted $126 for $96, three times.
   */
  @Test
  void aPriceOfTheOfficeThatChanged_isHeldAgainstTheQuote() throws IOException {
    season("3-quoted");
    Files.writeString(folder.resolve("prices.csv"), "item,usd\nsheet,58.50\nnail,0.020\n");

    CommandRun.of("season", folder);

    assertThat(cells(0, "total_usd", "now_usd")).containsExactly("10873.00", "10963.00");
  }

  @Test
  void aJobThatCannotBeRead_isALineAndStopsNoOther() throws IOException {
    season("1-asked", "3-quoted");

    CommandRun ran = CommandRun.of("season", folder);

    assertThat(ran.status()).isEqualTo(3);
    assertThat(cells(0, "job", "total_usd")).containsExactly("1-asked", "");
    assertThat(cells(0, "refused").get(0)).contains("planes.csv: this table is missing");
    assertThat(cells(1, "job", "total_usd")).containsExactly("3-quoted", "10873.00");
    assertThat(ran.err()).contains("1-asked: ", "1 of 2 jobs not read; their lines say why");
  }

  @Test
  void theSeasonOfTheDemo_isReadWhole() throws IOException {
    CommandRun ran = CommandRun.of("season", Path.of("demo-data", "thistlewick"), "-o", folder);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(table().lines()).hasSize(7);
    assertThat(cells(0, "job", "stage", "unpaid_usd")).containsExactly("alder", "closed", "0.00");
  }

  @Test
  void howManyThreads_changesNoByte() throws IOException {
    season("3-quoted");
    for (int more = 1; more <= 8; more++) {
      copy(LIFE.resolve(more % 2 == 0 ? "5-opened" : "1-asked"), folder.resolve("job-" + more));
    }
    List<List<byte[]>> written =
        IntStream.of(1, 4).mapToObj(threads -> written(threads)).collect(Collectors.toList());

    assertThat(written.get(1).get(0)).isEqualTo(written.get(0).get(0));
    assertThat(written.get(1).get(1)).isEqualTo(written.get(0).get(1));
  }

  private List<byte[]> written(int threads) {
    try {
      Path place = Files.createDirectories(folder.resolve(".threads-" + threads));
      new SeasonFiles(folder, Optional.of(place), false, threads)
          .write(line -> {}, new PrintWriter(new StringWriter()));
      return List.of(
          Files.readAllBytes(place.resolve("season.csv")),
          Files.readAllBytes(place.resolve("season.xlsx")));
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  @Test
  void theWorkbooksSums_areFormulasAndItsPageLiesAcross() throws IOException {
    season("3-quoted", "6-closed");
    CommandRun.of("season", folder);

    try (XSSFWorkbook book = new XSSFWorkbook(folder.resolve("season.xlsx").toFile().getPath())) {
      XSSFSheet sheet = book.getSheet("Season");
      var total = sheet.getRow(6).getCell(2);
      assertThat(total.getCellType()).isEqualTo(CellType.FORMULA);
      assertThat(total.getCellFormula()).isEqualTo("SUM(jobs_total_usd)");
      assertThat(total.getNumericCellValue()).isEqualTo(10873.00 + 11121.70);
      assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
      assertThat(book.getSheet("What has held").createDrawingPatriarch().getCharts()).isEmpty();
    }
  }

  @Test
  void anOlderSummary_isKept() throws IOException {
    season("3-quoted");
    CommandRun.of("season", folder);

    CommandRun again = CommandRun.of("quote", folder, "--summary");

    assertThat(again.status()).isEqualTo(3);
    assertThat(again.err()).contains("season.csv: it exists and is kept; add --force");
    assertThat(CommandRun.of("quote", folder, "--summary", "--force").status()).isZero();
  }
}
