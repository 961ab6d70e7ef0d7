package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.workbook.audit.Returned;

/** A quote that the owner filled in, sent back, and agrees to. */
class ReturnedQuoteTest {

  private static final String QUOTE = "QH-01-issue-1.xlsx";

  @TempDir private static Path once;
  @TempDir private Path folder;
  private LifeFolder job;

  @BeforeEach
  void issue() throws IOException {
    job = IssuedJob.copy(once, folder.resolve("job"));
  }

  private Path returned(Consumer<XSSFWorkbook> change) throws IOException {
    return Files.write(
        folder.resolve("from-the-owner.xlsx"), Returned.with(job.bytes("sent/" + QUOTE), change));
  }

  private static void sign(XSSFWorkbook book) {
    for (Row row : book.getSheetAt(0)) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals("Homeowner, date")) {
        row.getCell(1).setCellValue("Ottoline Vasterby, May 12, 2027");
      }
    }
  }

  @Test
  void anHonestFile_isAgreedTo_withItsTicksAndItsSignature() throws IOException {
    Path file =
        returned(
            book -> {
              Returned.cell(book, "option_1_chosen", 0).setCellValue("yes");
              sign(book);
            });

    CommandRun ran = job.done("agree", "--on", "2027-05-12", "--returned", file);

    assertThat(ran.err()).isEmpty();
    // 10,873 as it was quoted and 640 for the gutter boards
    assertThat(ran.out())
        .startsWith("agreed on 2027-05-12: QH-01 issue 1, $11,513.00")
        .contains(
            "taken from what came back: options.csv, line 2, chosen: was blank, now yes",
            "signed, Homeowner, date: Ottoline Vasterby, May 12, 2027");
    assertThat(job.lines("options.csv")).contains("1,New gutter boards,640,yes");
    assertThat(job.text("agreed.csv")).contains("total,,11513.00");
    assertThat(job.bytes("sent/QH-01-issue-1-returned.xlsx")).isEqualTo(Files.readAllBytes(file));
  }

  @Test
  void aFileInWhichNothingWasFilledIn_isAgreedTo_andAsksAboutTheSignature() throws IOException {
    CommandRun ran = job.done("agree", "--on", "2027-05-12", "--returned", returned(book -> {}));

    assertThat(ran.err()).contains("nobody typed a name on the lines to sign on");
    assertThat(ran.out()).contains("$10,873.00");
  }

  @Test
  void changedPricesAndTerms_areRefused_aLineEach_andNothingIsWritten() throws IOException {
    Path file =
        returned(
            book -> {
              Returned.cell(book, "option_1_chosen", 0).setCellValue("yes");
              Returned.typed(Returned.cell(book, "extra_sheet_usd", 0), 17);
              Returned.typed(Returned.cell(book, "credit_usd", 0), 96);
              sign(book);
            });
    Map<String, String> before = job.bytes();

    CommandRun ran = job.run("agree", "--on", "2027-05-12", "--returned", file);

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .anySatisfy(line -> assertThat(line).contains("(extra_sheet_usd)", "now 17"))
        .anySatisfy(line -> assertThat(line).contains("(credit_usd)", "now 96"))
        .allSatisfy(line -> assertThat(line).startsWith("from-the-owner.xlsx: "))
        .noneSatisfy(line -> assertThat(line).contains("option_1_chosen"));
    assertThat(job.bytes()).isEqualTo(before);
  }

  @Test
  void aFileThatNobodyCanVouchFor_orOfAnotherIssue_isRefused() throws IOException {
    Path file = returned(book -> {});
    assertThat(
            job.refused(
                "agree", "--on", "2027-05-12", "--returned", file, "--document", "QH-01 issue 2"))
        .contains("it is QH-01 issue 1, not QH-01 issue 2");
    job.done("quote", "-o", folder.resolve("draft"));
    assertThat(
            job.refused(
                "agree",
                "--on",
                "2027-05-12",
                "--returned",
                folder.resolve("draft").resolve("quote.xlsx")))
        .startsWith("quote.xlsx: ");
    assertThat(
            job.refused("agree", "--on", "2027-05-12", "--returned", job.path().resolve("job.csv")))
        .startsWith("job.csv: ");
  }
}
