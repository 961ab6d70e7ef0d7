package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Letterheads by command: a plain one written, named by the firm or by hand, sent, and audited. */
class LetterheadCommandTest {

  private static final Path DEMO = Path.of("demo-data", "quince-hollow");

  @TempDir private Path folder;
  private LifeFolder job;
  private Path letter;

  @BeforeEach
  void aJobAndALetterhead() {
    job = LifeFolder.of(DEMO, folder.resolve("job"));
    letter = folder.resolve("our-quote.xlsx");
    CommandRun ran = CommandRun.of("letterhead", "quote", "-o", letter);
    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("next: restyle it, then ./sheathwright quote JOB --letterhead ");
  }

  private void firm(String file) throws IOException {
    Files.writeString(
        folder.resolve("firm.csv"),
        "key,value\nname,\"Fennimore roof decks\"\nquote_letterhead,%s\n".formatted(file));
  }

  private static String customer(Path quote) throws IOException {
    try (InputStream file = Files.newInputStream(quote);
        XSSFWorkbook workbook = new XSSFWorkbook(file)) {
      return workbook.getSheetAt(0).getRow(2).getCell(1).getStringCellValue();
    }
  }

  @Test
  void theOneThatIsNamed_standsInFront() throws IOException {
    job.done("quote", "--letterhead", letter);

    assertThat(customer(job.path().resolve("quote.xlsx"))).isEqualTo("Odalys Brackenridge-Plume");
  }

  @Test
  void theFirms_goesOut_isKept_andNothingInItDiffers() throws IOException {
    firm("our-quote.xlsx");

    job.done("quote", "--issue", "--on", "2027-05-04");

    Path sent = job.path().resolve("sent").resolve("QH-01-issue-1.xlsx");
    assertThat(customer(sent)).isEqualTo("Odalys Brackenridge-Plume");
    CommandRun audit = CommandRun.of("audit", sent, "--job", job.path());
    assertThat(audit.status()).as(audit.out() + audit.err()).isZero();
    job.done("agree", "--on", "2027-05-04");
    job.done("quote", "--force");
    assertThat(job.path().resolve("quote.xlsx")).hasSameBinaryContentAs(sent);
  }

  @Test
  void oneThatIsNotThere_isSaidByItsLine() throws IOException {
    firm("their-quote.xlsx");

    assertThat(job.refused("quote"))
        .endsWith(
            "\"their-quote.xlsx\": there is no such file beside the table; put it there, or leave the value blank")
        .contains("firm.csv, line 3");
    assertThat(job.refused("quote", "--letterhead", folder.resolve("none.xlsx")))
        .endsWith("none.xlsx: there is no such file");
    assertThat(job.refused("quote", "--letterhead", job.path().resolve("job.csv")))
        .startsWith("job.csv: it is no .xlsx workbook that can be read");
  }

  @Test
  void anotherDocument_isNone() {
    CommandRun ran = CommandRun.of("letterhead", "qoute", "-o", folder.resolve("x.xlsx"));

    assertThat(ran.status()).isNotZero();
    assertThat(ran.err())
        .contains("\"qoute\" is no document that has a letterhead (did you mean quote?)");
  }
}
