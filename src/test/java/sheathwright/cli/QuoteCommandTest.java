package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.JobTable;

class QuoteCommandTest {

  private static final Path GABLE = Path.of("demo-data", "quince-hollow");
  private static final Path COTTAGE = Path.of("demo-data", "mistwater-cottage");
  private static final Path HIP = Path.of("demo-data", "cinder-brook");

  @TempDir private Path folder;

  @Test
  void quote_writesTwoWorkbooks() throws IOException {
    CommandRun ran = CommandRun.of("quote", GABLE, "-o", folder);
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    // 10,420 + 165 + 3 × 96
    assertThat(ran.out()).contains("$10,873.00").contains("within the screening limits");
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
    for (String name : names()) {
      assertThat(Files.readAllBytes(folder.resolve(name))).startsWith((byte) 'P', (byte) 'K');
    }
  }

  @Test
  void quote_saysStopWhereRaftersScreenAboveTheirLimits() {
    CommandRun ran = CommandRun.of("quote", COTTAGE, "-o", folder);
    assertThat(ran.status()).isZero();
    // 5,480 + 450 + 165 + 28 × 101 + 18 × 118 + 7 × 17
    assertThat(ran.out())
        .contains("$8,923.00")
        .contains("STOP: a licensed engineer decides before any repair");
    assertThat(ran.err().lines())
        .contains(
            "STOP: a licensed engineer decides before any repair; until then nobody repairs the rafters"
                + " by this quote");
  }

  @Test
  void quote_makesTheFolderThatItWritesTo() {
    Path deep = folder.resolve("quotes").resolve("today");
    assertThat(CommandRun.of("quote", GABLE, "-o", deep).status()).isZero();
    assertThat(deep.resolve("quote.xlsx")).isNotEmptyFile();
  }

  @Test
  void quote_writesIntoTheJobsOwnFolderUnlessToldWhere() throws IOException {
    copy(GABLE);
    assertThat(CommandRun.of("quote", folder).status()).isZero();
    assertThat(names()).contains("job.csv", "estimate.xlsx", "quote.xlsx");
  }

  @Test
  void quote_keepsWorkbooksThatExistUnlessForced() throws IOException {
    Path estimate = Files.writeString(folder.resolve("estimate.xlsx"), "edited by hand");
    CommandRun kept = CommandRun.of("quote", GABLE, "-o", folder);
    assertThat(kept.status()).isEqualTo(3);
    assertThat(kept.out()).isEmpty();
    assertThat(kept.err()).startsWith(estimate + ": it exists and is kept").hasLineCount(1);
    assertThat(Files.readString(estimate)).isEqualTo("edited by hand");
    assertThat(names()).as("neither of the two is written").containsExactly("estimate.xlsx");

    assertThat(CommandRun.of("quote", GABLE, "-o", folder, "--force").status()).isZero();
    assertThat(Files.readAllBytes(estimate)).startsWith((byte) 'P', (byte) 'K');
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
  }

  @Test
  void quote_writesNeitherWorkbookWhereTheQuoteExists() throws IOException {
    Path quote = Files.writeString(folder.resolve("quote.xlsx"), "sent");
    assertThat(CommandRun.of("quote", GABLE, "-o", folder).status()).isEqualTo(3);
    assertThat(Files.readString(quote)).isEqualTo("sent");
    assertThat(names()).containsExactly("quote.xlsx");
  }

  @Test
  void quote_ofABrokenJobSaysEverythingThatIsWrongAndWritesNothing() throws IOException {
    copy(GABLE);
    spoil("job.csv", "valid_days,30", "valid_days,soon");
    spoil("job.csv", "permit_usd,165.00", "permit_usd,-165");
    spoil("prices.csv", "nail,", "nale,");
    spoil("planes.csv", "B,42-0", "B,");
    Path out = folder.resolve("out");
    CommandRun ran = CommandRun.of("quote", folder, "-o", out);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .hasSize(4) // nale is taken for nail, which is not missing besides
        .allSatisfy(
            line -> assertThat(line).matches("(job|prices|planes)\\.csv(, line \\d+)?[,:] .+"));
    assertThat(out).doesNotExist();
  }

  @Test
  void quote_ofAJobThatAFunctionRefusesSaysWhyAndWritesNothing() throws IOException {
    copy(COTTAGE);
    spoil("job.csv", "sister_size,2x8", "sister_size,2x4");
    spoil("readings.csv", "A,A-8,1-5/8", "A,A-8,3-1/2");
    Path out = folder.resolve("out");
    CommandRun ran = CommandRun.of("quote", folder, "-o", out);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .hasLineCount(1)
        .startsWith("job.csv, line ")
        .contains(
            ": sag_in is 3-1/2 in, not less than the depth of a 2x4 sister: set to the string it would"
                + " not lie against the old rafter at mid-length; use a deeper one; from sister_size (job.csv");
    assertThat(out).doesNotExist();
  }

  /** What the rafters' screening refuses, each in the table and line where it is said. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "job.csv|deflection_limit,180|deflection_limit,200|38|value|deflection_limit is 200; it must be 180 with no ceiling below, 240 with one",
        "job.csv|rise_in_12,5|rise_in_12,0|37|value|rise_in_12 is 0; it must be from 1 to 24",
        "layers.csv|plywood,1,|plywood,12,|3|layers|layers is 12; it must be a whole number from 1 to 10"
      })
  void quote_asksForEveryAnswerBeforeItWrites(
      String table, String text, String spoiled, int line, String column, String said)
      throws IOException {
    copy(HIP);
    spoil(table, text, spoiled);
    Path out = folder.resolve("out");
    CommandRun ran = CommandRun.of("quote", folder, "-o", out);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .hasLineCount(1)
        .startsWith("%s, line %d, column %s: %s".formatted(table, line, column, said));
    assertThat(out).doesNotExist();
  }

  @Test
  void quote_saysEveryRefusalOfWhatIsWorkedOut() throws IOException {
    copy(HIP);
    spoil("job.csv", "deflection_limit,180", "deflection_limit,200");
    spoil("layers.csv", "gypsum-board,1,", "gypsum-board,12,");
    spoil("openings.csv", "S,31-6,", "S,43-6,");
    CommandRun ran = CommandRun.of("quote", folder, "-o", folder.resolve("out"));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("openings.csv, line 2, column along_ft: the opening");
    spoil("openings.csv", "S,43-6,", "S,31-6,");
    assertThat(CommandRun.of("quote", folder, "-o", folder.resolve("out")).err().lines())
        .satisfiesExactlyInAnyOrder(
            line -> assertThat(line).startsWith("job.csv, line 38, column value: deflection_limit"),
            line -> assertThat(line).startsWith("layers.csv, line 5, column layers: layers is 12"));
  }

  /** What no firm means is taken as it stands, and asked about. */
  @Test
  void quote_asksAboutWhatIsHardlyMeant() throws IOException {
    copy(GABLE);
    spoil("rates.csv", "margin_pct,12", "margin_pct,0.15");
    spoil("prices.csv", "nail,0.020", "nail,0");
    CommandRun ran = CommandRun.of("quote", folder);
    assertThat(ran.status()).isZero();
    assertThat(ran.err().lines())
        .containsExactly(
            "question: prices.csv, line 3, column usd: nail: 0 is given, but from 0.001 to 1 $/nail"
                + " is usual; is that what you mean?",
            "question: rates.csv, line 4, column value: margin_pct: 0.15 is given, but from 3 to 60"
                + " % is usual; did you mean 15?");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS) // no file can be called so there
  void quote_neverSteersTheTerminal() throws IOException {
    Path odd = folder.resolve("a\u001b]0;b\u0007");
    CommandRun ran = CommandRun.of("quote", odd);
    assertThat(ran.err()).startsWith(folder + "/a\\u001b]0;b\\u0007: there is no such folder");
    assertThat(CommandRun.of("fill", "nails\u001b[2J", "t.csv").err()).doesNotContain("\u001b");
    assertThat(CommandRun.of("solve", "--odd\u001b[2J").err()).doesNotContain("\u001b");
    Path table = Files.writeString(folder.resolve("t.csv"), "length_in\n\u001b[2J\n");
    assertThat(CommandRun.of("solve", "cut_stock", table).err())
        .contains("t.csv, line 2, column length_in: it holds the character \\u001b")
        .doesNotContain("\u001b");
  }

  @Test
  void quote_ofAFolderThatIsNotThereSaysSo() {
    Path nowhere = folder.resolve("nowhere");
    CommandRun ran = CommandRun.of("quote", nowhere);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err().strip())
        .isEqualTo(nowhere + ": there is no such folder; a job is a folder of CSV files");
    assertThat(nowhere).doesNotExist();
  }

  @Test
  void quote_intoAFileSaysSo() throws IOException {
    Path file = Files.writeString(folder.resolve("quotes"), "a file");
    CommandRun ran = CommandRun.of("quote", GABLE, "-o", file);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).hasLineCount(1).contains(file.toString());
    assertThat(Files.readString(file)).isEqualTo("a file");
  }

  private void copy(Path job) throws IOException {
    try (Stream<Path> tables = Files.list(job)) {
      for (Path table : tables.filter(file -> file.toString().endsWith(".csv")).toList()) {
        Files.copy(table, folder.resolve(table.getFileName()));
      }
    }
  }

  private void spoil(String table, String text, String spoiled) throws IOException {
    Path file = folder.resolve(table);
    assertThat(Files.readString(file)).as("what the test spoils").contains(text);
    Files.writeString(file, Files.readString(file).replace(text, spoiled));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).toList();
    }
  }

  @Test
  void quote_helpNamesEachTableThatAJobMayHave() throws IOException {
    CommandRun ran = CommandRun.of("quote", "--help");
    assertThat(ran.out().lines())
        .filteredOn(line -> line.matches("  [* ] \\w+\\.csv  .+"))
        .hasSameSizeAs(JobTable.values());
    for (Path job : List.of(GABLE, COTTAGE, Path.of("demo-data", "cinder-brook"))) {
      try (Stream<Path> tables = Files.list(job)) {
        tables
            .map(table -> table.getFileName().toString())
            .filter(name -> name.endsWith(".csv"))
            .forEach(name -> assertThat(ran.out()).contains(" " + name + " "));
      }
    }
  }
}
