package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An office that keeps its letterhead, its price book and its numbers above its jobs. */
class OfficeTest {

  private static final String FIRM =
      """
      key,value,note
      name,"Corvane and Thrupp, deck repairs",
      address,"3 Foundry Row, Pemberly Flats",
      phone,555-0134,
      license,PF-20817,
      insurer,Harbor Mutual of Willowmere,
      next_quote_number,2027-099,
      payment_words,A third on the day the material comes,
      cancel_words,"Within three business days, in writing",
      warranty_words,Five years on what we replace,
      """;

  @TempDir private Path disk;
  private Path office;

  @BeforeEach
  void anOffice() throws IOException {
    office = Files.createDirectories(disk.resolve("office"));
    Files.writeString(office.resolve("firm.csv"), FIRM);
    Path demo = Path.of("demo-data", "quince-hollow");
    Files.copy(demo.resolve("prices.csv"), office.resolve("prices.csv"));
    Files.copy(demo.resolve("rates.csv"), office.resolve("rates.csv"));
  }

  /** A job two folders below the office, which says only what is its own. */
  private LifeFolder job(String name) throws IOException {
    LifeFolder job =
        LifeFolder.of(
            Path.of("demo-data", "quince-hollow"), office.resolve("season").resolve(name));
    Files.delete(job.path().resolve("prices.csv"));
    Files.delete(job.path().resolve("rates.csv"));
    job.write(
        "job.csv",
        job.lines("job.csv").stream()
            .filter(line -> !line.startsWith("quote_number,") && !line.startsWith("prepared_by,"))
            .reduce("", (all, line) -> all + line + "\n"));
    return job;
  }

  private static List<String> words(byte[] workbook, int page) throws IOException {
    List<String> words = new ArrayList<>();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      for (Row row : book.getSheetAt(page)) {
        for (Cell cell : row) {
          words.add(cell.toString());
        }
      }
    }
    return words;
  }

  @Test
  void priceBook_isFoundAboveTheJob_andTheEstimateSaysWhere() throws IOException {
    LifeFolder job = job("plume");
    job.done("quote");
    assertThat(words(job.bytes("estimate.xlsx"), 0))
        .contains(
            "From above the job's folder, for all jobs of the office: ../../prices.csv, ../../rates.csv, ../../firm.csv.");
  }

  @Test
  void priceBook_nearestWins_tableByTable() throws IOException {
    LifeFolder job = job("plume");
    String far = job.done("quote").out();
    Files.writeString(
        office.resolve("season").resolve("prices.csv"), "item,usd\nsheet,140\nnail,0.02\n");
    String near = job.done("quote", "--force").out();
    assertThat(near).isNotEqualTo(far);
    assertThat(words(job.bytes("estimate.xlsx"), 0))
        .contains(
            "From above the job's folder, for all jobs of the office: ../prices.csv, ../../rates.csv, ../../firm.csv.");
    Files.writeString(
        office.resolve("season").resolve("prices.csv"), "item,usd\nsheet,oak\nnail,0.02\n");
    assertThat(job.refused("quote", "--force"))
        .isEqualTo("../prices.csv, line 2, column usd: sheet: \"oak\" is not a number");
  }

  @Test
  void nothingAboveTheOffice_isLookedAt() throws IOException {
    Files.move(office.resolve("rates.csv"), disk.resolve("rates.csv"));
    LifeFolder job = job("plume");
    assertThat(job.refused("quote"))
        .isEqualTo(
            "rates.csv: this table is missing from %s and from the 2 folders above it"
                .formatted(job.path()));
  }

  @Test
  void withoutAFirm_onlyTheFolderAboveIsLookedAt() throws IOException {
    Files.delete(office.resolve("firm.csv"));
    LifeFolder far = job("plume");
    far.fact("quote_number", "QH-01");
    far.fact("prepared_by", "A test");
    assertThat(far.run("quote").err().lines())
        .allMatch(line -> line.contains("is missing from " + far.path() + " and from the folder"));
    Files.move(office.resolve("prices.csv"), far.path().resolveSibling("prices.csv"));
    Files.move(office.resolve("rates.csv"), far.path().resolveSibling("rates.csv"));
    far.done("quote");
  }

  @Test
  void letterhead_standsOnPageOne() throws IOException {
    ImageIO.write(
        new BufferedImage(60, 20, BufferedImage.TYPE_INT_RGB),
        "png",
        office.resolve("logo.png").toFile());
    Files.writeString(office.resolve("firm.csv"), FIRM + "logo,logo.png,\n");
    LifeFolder job = job("plume");
    job.done("quote");
    assertThat(words(job.bytes("quote.xlsx"), 0))
        .contains(
            "Corvane and Thrupp, deck repairs",
            "3 Foundry Row, Pemberly Flats · 555-0134",
            "License PF-20817 · Insured by Harbor Mutual of Willowmere",
            "A third on the day the material comes",
            "Within three business days, in writing",
            "Five years on what we replace",
            "Corvane and Thrupp, deck repairs · draft of a quote, not numbered yet · May 4, 2027");
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(job.bytes("quote.xlsx")))) {
      XSSFSheet first = book.getSheetAt(0);
      assertThat(first.getDrawingPatriarch().getShapes()).hasSize(1);
    }
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource({
    "logo.gif,     GIF89a,  'it is neither a JPEG nor a PNG; save it as PNG or JPEG, and name that file'",
    "logo.svg,     '<svg>', 'it is neither a JPEG nor a PNG; save it as PNG or JPEG, and name that file'",
    "elsewhere.png, '',     'there is no such file beside the table; put it there, or leave the value blank'",
  })
  void logo_thatCannotBeRead_isRefused(String name, String text, String message)
      throws IOException {
    if (!text.isEmpty()) {
      Files.writeString(office.resolve(name), text);
    }
    Files.writeString(office.resolve("firm.csv"), FIRM + "logo," + name + ",\n");
    assertThat(job("plume").refused("quote"))
        .isEqualTo(
            "../../firm.csv, line 11, column value: logo: \"%s\": %s".formatted(name, message));
  }

  @Test
  void issuing_takesTheNextNumber_andWritesItOn() throws IOException {
    LifeFolder job = job("plume");
    assertThat(job.done("quote", "--issue", "--on", "2027-05-04").out())
        .contains("issued 2027-099 issue 1");
    assertThat(job.lines("job.csv")).contains("quote_number,2027-099,");
    assertThat(Files.readAllLines(office.resolve("firm.csv")))
        .contains("next_quote_number,2027-100,", "phone,555-0134,");
    assertThat(job("second").done("quote", "--issue", "--on", "2027-05-04").out())
        .contains("issued 2027-100 issue 1");
    assertThat(job.done("quote", "--issue", "--on", "2027-05-06").out())
        .as("an issue more of the first keeps its number")
        .contains("issued 2027-099 issue 2");
    assertThat(Files.readAllLines(office.resolve("firm.csv")))
        .contains("next_quote_number,2027-101,");
  }

  /** What plywood costs next week changes nothing of a quote that is out. */
  @Test
  void issuing_keepsThePriceBookThatTheQuoteWasMadeFrom() throws IOException {
    LifeFolder job = job("plume");
    job.done("quote", "--issue", "--on", "2027-05-04");
    assertThat(job.text("prices.csv")).isEqualTo(Files.readString(office.resolve("prices.csv")));
    Files.writeString(office.resolve("prices.csv"), "item,usd\nsheet,140\nnail,0.02\n");
    job.done("agree", "--on", "2027-05-12");
  }

  @Test
  void issuing_isRefusedWhileAnotherRunTakesANumber() throws IOException {
    LifeFolder job = job("plume");
    Path lock = office.resolve(".firm.lock");
    try (FileChannel channel =
            FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      assertThat(held.isValid()).isTrue();
      assertThat(job.refused("quote", "--issue", "--on", "2027-05-04"))
          .endsWith(
              "next_quote_number: another run takes a number at this moment; run the command again");
    }
    assertThat(Files.readString(office.resolve("firm.csv"))).isEqualTo(FIRM);
  }

  @Test
  void manyAtOnce_neverGetOneNumber() throws IOException {
    List<LifeFolder> jobs = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      jobs.add(job("job-" + i));
    }
    List<CommandRun> ran =
        jobs.stream()
            .map(
                job ->
                    CompletableFuture.supplyAsync(
                        () -> job.run("quote", "--issue", "--on", "2027-05-04")))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();
    List<String> numbers =
        ran.stream()
            .filter(run -> run.status() == 0)
            .map(run -> run.out().lines().findFirst().orElseThrow().split(" ")[1])
            .toList();
    assertThat(numbers).isNotEmpty().doesNotHaveDuplicates();
    assertThat(Files.readAllLines(office.resolve("firm.csv")))
        .contains("next_quote_number,2027-%03d,".formatted(99 + numbers.size()));
    assertThat(ran)
        .filteredOn(run -> run.status() != 0)
        .allSatisfy(run -> assertThat(run.err()).contains("run the command again"));
  }

  @Test
  void nextNumber_endsInDigits() throws IOException {
    Files.writeString(office.resolve("firm.csv"), FIRM.replace("2027-099", "spring"));
    assertThat(job("plume").refused("quote"))
        .isEqualTo(
            "../../firm.csv, line 7, column value: next_quote_number: \"spring\" does not end in digits, so nobody knows which number comes behind it; write one such as 2027-041");
  }
}
