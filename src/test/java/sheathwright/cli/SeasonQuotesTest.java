package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.season.SeasonText;

/** Quoting all jobs of a season at once. */
class SeasonQuotesTest {

  @TempDir private Path folder;
  @TempDir private Path out;

  @Test
  void eachJobsWorkbooks_goIntoAFolderOfItsName() throws IOException {
    CommandRun ran = CommandRun.of("quote", SeasonText.two().in(folder), "-o", out);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.out().lines()).hasSize(2);
    assertThat(ran.out()).contains("Ash: the homeowner pays ", "Oak: the homeowner pays ");
    assertThat(written())
        .containsExactlyInAnyOrder(
            "Ash/estimate.xlsx", "Ash/quote.xlsx", "Oak/estimate.xlsx", "Oak/quote.xlsx");
  }

  @Test
  void anOfficeAboveTheSeason_lendsItsFirmAndItsPrices() throws IOException {
    Path season = Files.createDirectory(folder.resolve("2027"));
    SeasonText.two().in(season);
    for (String table : List.of("prices.csv", "rates.csv")) {
      Files.move(season.resolve(table), folder.resolve(table));
    }
    Files.writeString(folder.resolve("firm.csv"), "key,value\nname,Harrowgate Roofs\n");

    CommandRun ran = CommandRun.of("quote", season, "-o", out);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(CommandRun.of("quote", SeasonText.two().in(out.resolve("same"))).out().lines())
        .map(line -> line.substring(0, line.indexOf("; in ")))
        .containsExactlyElementsOf(
            ran.out().lines().map(line -> line.substring(0, line.indexOf("; in "))).toList());
    Files.delete(folder.resolve("rates.csv"));
    assertThat(CommandRun.of("quote", season, "-o", out, "--force").err())
        .startsWith("rates.csv: this table is missing from ")
        .contains("and from the folder above it");
  }

  @Test
  void aFirmBesideTheSeason_isTheirs() throws IOException {
    SeasonText.two().file("firm.csv", "key,value\nname,Harrowgate Roofs\n").in(folder);

    assertThat(CommandRun.of("quote", folder, "-o", out).err()).doesNotContain("firm.csv");
  }

  /** Three sheets are in the price of Oak, and its marks call for more than one of Ash's none. */
  @Test
  void whatIsHardlyMeant_isAskedOfEachJobByName() throws IOException {
    SeasonText.two()
        .with("jobs.csv", ",2000,0,3,50,", ",2000,0,0,0,")
        .with("rates.csv", "margin_pct,10", "margin_pct,0.1")
        .in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "-o", out);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.err())
        .contains("question: Ash: rates.csv", "question: Oak: rates.csv")
        .contains("but the marks call for 1 sheet already");
    assertThat(ran.err().lines())
        .filteredOn(line -> line.contains("the marks call for"))
        .singleElement()
        .asString()
        .startsWith("question: Oak: jobs.csv");
  }

  @Test
  void oneJobThatCannotBeRead_leavesNothingBehind() throws IOException {
    SeasonText.two().with("jobs.csv", ",2027-05-05,", ",soon,").in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "-o", out);

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).startsWith("jobs.csv, line 3, column quote_date: \"soon\" is not a date");
    assertThat(written()).isEmpty();
  }

  @Test
  void aJobThatWasOnlyAskedFor_isLeftOut() throws IOException {
    SeasonText.two()
        .with("jobs.csv", "blocked_edges,note", "blocked_edges,stage,note")
        .with("jobs.csv", ",no,invented", ",no,asked,invented")
        .in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "-o", out);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.err().lines()).contains("Ash: left out, it is at the stage asked");
    assertThat(written()).containsExactlyInAnyOrder("Oak/estimate.xlsx", "Oak/quote.xlsx");
  }

  @Test
  void issuing_takesOneJob() throws IOException {
    SeasonText.two().in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "--issue", "--on", "2027-05-04");

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("is a season; name the folder of one job");
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      return files.filter(Files::isRegularFile).map(out::relativize).map(Path::toString).toList();
    }
  }
}
