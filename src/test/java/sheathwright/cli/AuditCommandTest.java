package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.file.Manifest;
import sheathwright.workbook.audit.Returned;

/** A workbook that came back, held against its job from the command line. */
class AuditCommandTest {

  private static final String QUOTE = "QH-01-issue-1.xlsx";
  private static final String ESTIMATE = "QH-01-issue-1-estimate.xlsx";

  @TempDir private static Path once;
  @TempDir private Path folder;
  private LifeFolder job;

  @BeforeEach
  void issue() throws IOException {
    job = IssuedJob.copy(once, folder.resolve("job"));
  }

  private Path returned(String file, Consumer<XSSFWorkbook> change) throws IOException {
    byte[] sent = Files.readAllBytes(job.path().resolve("sent").resolve(file));
    return Files.write(folder.resolve("returned.xlsx"), Returned.with(sent, change));
  }

  private CommandRun audit(Path file, Object... options) {
    Object[] arguments = new Object[options.length + 4];
    arguments[0] = "audit";
    arguments[1] = file;
    arguments[2] = "--job";
    arguments[3] = job.path();
    System.arraycopy(options, 0, arguments, 4, options.length);
    return CommandRun.of(arguments);
  }

  @Test
  void anAmountTypedOver_isHeldAgainstTheFileThatWasKept() throws IOException {
    Path file =
        returned(QUOTE, book -> Returned.typed(Returned.cell(book, "lines_amount_usd", 2), 100));
    Path told = folder.resolve("audit.xlsx");

    CommandRun ran = audit(file, "-o", told);

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out().lines().findFirst().orElse(""))
        .contains("(lines_amount_usd), formula, was =ROUND(", "now 100: overwritten")
        .endsWith("the formula gives 288; -$188.00");
    assertThat(ran.out())
        .contains(
            "QH-01 issue 1, held against QH-01 issue 1 as it went out", "-$188.00 on the total");
    assertThat(told).isNotEmptyFile();
  }

  @Test
  void aTickedOption_isTakenIntoTheTables() throws IOException {
    Path file =
        returned(QUOTE, book -> Returned.cell(book, "option_1_chosen", 0).setCellValue("yes"));

    CommandRun ran = audit(file, "--take");

    assertThat(ran.status()).isZero();
    assertThat(ran.out())
        .contains("follow; $640.00", "options.csv, line 2, chosen: was blank, now yes")
        .endsWith("written: options.csv\n");
    assertThat(job.lines("options.csv")).contains("1,New gutter boards,640,yes");
    job.done("agree", "--on", "2027-05-12");
  }

  @Test
  void inputsOfAnEstimate_areTakenByTheirNames() throws IOException {
    Path file =
        returned(
            ESTIMATE,
            book -> {
              Returned.typed(Returned.cell(book, "price_sheet_usd", 0), 41);
              Returned.typed(Returned.cell(book, "overhead_pct", 0), 20);
              Returned.typed(Returned.cell(book, "planned_sheets", 0), 5);
              Returned.typed(Returned.cell(book, "tab_planes_eave_ft", 1), 40.5);
            });

    CommandRun ran = audit(file, "--take");

    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("job.csv, line ", "planned_sheets: was 3, now 5", "eave_ft: was ", ", now 40.5");
    assertThat(job.text("prices.csv")).contains("sheet,41");
    assertThat(job.text("rates.csv")).contains("overhead_pct,20");
    assertThat(job.text("planes.csv")).contains("40.5");
    // the tables say now what the workbook says: nothing is left to take from it
    assertThat(audit(file, "--take").err()).contains("and the workbook was made from");
  }

  @Test
  void nothingIsTaken_fromAFileThatIsNotClear() throws IOException {
    Path file =
        returned(
            QUOTE,
            book -> {
              Returned.cell(book, "option_1_chosen", 0).setCellValue("yes");
              Returned.typed(Returned.cell(book, "extra_sheet_usd", 0), 90);
            });
    String before = job.text("options.csv");

    assertThat(audit(file, "--take").status()).isEqualTo(3);
    assertThat(job.text("options.csv")).isEqualTo(before);
  }

  @Test
  void whatWasAgreed_isNotTakenAnyMore() throws IOException {
    Path file =
        returned(QUOTE, book -> Returned.cell(book, "option_1_chosen", 0).setCellValue("yes"));
    job.done("agree", "--on", "2027-05-12");

    CommandRun ran = audit(file, "--take");

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("the job is at the stage agreed");
  }

  @Test
  void withoutTheKeptFile_theManifestCounts() throws IOException {
    Path file = returned(QUOTE, same -> {});
    Files.delete(job.path().resolve("sent").resolve(QUOTE));

    CommandRun ran = audit(file);

    assertThat(ran.status()).isZero();
    assertThat(ran.out())
        .contains("held against its manifest, whose SHA-256 is in sent.csv")
        .endsWith("nothing differs from what was written\n");
  }

  @Test
  void withoutManifestAndKeptFile_theTablesAreWrittenAnew() throws IOException {
    Path file = returned(QUOTE, same -> {});
    Files.write(file, Returned.part(Files.readAllBytes(file), Manifest.PART, gone -> "<gone/>"));
    Files.delete(job.path().resolve("sent").resolve(QUOTE));

    CommandRun ran = audit(file);

    assertThat(ran.out()).contains("cannot vouch", "held against the job's tables, written anew");
  }

  @Test
  void aForgedManifest_isNotBelieved() throws IOException {
    Path file =
        returned(QUOTE, book -> Returned.typed(Returned.cell(book, "lines_price_usd", 2), 20));
    Files.write(
        file,
        Returned.part(Files.readAllBytes(file), Manifest.PART, xml -> xml.replace(">96<", ">20<")));

    assertThat(audit(file).out()).contains("was 96, now 20: changed terms");
    Files.delete(job.path().resolve("sent").resolve(QUOTE));
    assertThat(audit(file).out()).contains("cannot vouch", "was 96, now 20: changed terms");
  }

  @Test
  void theFileOfAnotherJob_isRefused() throws IOException {
    Path file = returned(QUOTE, same -> {});
    job.fact("quote_number", "ZZ-09");

    CommandRun ran = audit(file);

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .startsWith("returned.xlsx: it is QH-01 issue 1, which is no document of ")
        .endsWith("name its own job with --job\n")
        .hasLineCount(1);
  }

  /** Lists of before there were manifests have no column for their hash. */
  @Test
  void anOlderListOfWhatWasSent_isWrittenOn() {
    String head = "document,file,file_sha256,record_sha256,total_usd,on";
    String row = job.lines("sent.csv").get(1);
    job.write("sent.csv", head + "\n" + row.substring(0, row.lastIndexOf(',')) + "\n");
    job.replace("job.csv", "planned_sheets,3", "planned_sheets,4");

    job.done("quote", "--issue", "--on", "2027-05-09");

    assertThat(job.lines("sent.csv")).first().isEqualTo(head);
    assertThat(job.lines("sent.csv").get(2)).startsWith("QH-01 issue 2,").endsWith(",2027-05-09");
  }

  @Test
  void wrongUse_isOneLine() throws IOException {
    Path file = returned(QUOTE, same -> {});

    CommandRun alone = CommandRun.of("audit", file, "--take");
    assertThat(alone.status()).isEqualTo(2);
    assertThat(alone.err()).startsWith("--take writes into a job's tables");
    CommandRun missing = audit(folder.resolve("none.xlsx"));
    assertThat(missing.status()).isEqualTo(3);
    assertThat(missing.err().lines()).hasSize(1);
  }

  @Test
  void twoIssues_areToldApartInWords() throws IOException {
    job.replace("job.csv", "planned_sheets,3", "planned_sheets,6");
    job.done("quote", "--issue", "--on", "2027-05-09");

    CommandRun ran =
        CommandRun.of(
            "compare",
            job.path().resolve("sent").resolve(QUOTE),
            job.path().resolve("sent/QH-01-issue-2.xlsx"));

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.out()) // three sheets more at $96.00
        .startsWith("The price: $10,873.00 before, $11,161.00 now, $288.00 more\n")
        .contains(
            "Deck sheets taken out and replaced: amount $288.00 before, $576.00 now, $288.00 more; quantity 3 before, 6 now, 3 more")
        .containsPattern("The price +\\$10,873\\.00 +\\$11,161\\.00 +\\$288\\.00");
    CommandRun foreign =
        CommandRun.of(
            "compare", folder.resolve("job/sent/" + QUOTE), job.path().resolve("job.csv"));
    assertThat(foreign.status()).isEqualTo(3);
    assertThat(foreign.err())
        .startsWith("job.csv: it is no .xlsx workbook that can be read")
        .hasLineCount(1);
  }
}
