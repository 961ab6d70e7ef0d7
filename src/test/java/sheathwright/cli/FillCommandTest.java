package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.catalog.Catalog;
import sheathwright.cli.pipe.FillTally;
import sheathwright.cli.pipe.Watch;
import sheathwright.job.fill.FilledLines;
import sheathwright.job.table.CsvFile;

class FillCommandTest {

  /** 704.36 ÷ 32 = 22.01 and 766.78 ÷ 32 = 23.96 sheets. */
  private static final String FILLED =
      "deck_area_sf,waste_pct,sheets,error\n704.36,0,23,\n766.78,0,24,\n";

  @TempDir private Path folder;
  private Path cases;

  @BeforeEach
  void writeCases() throws IOException {
    cases = folder.resolve("cases.csv");
    Files.writeString(cases, "deck_area_sf,waste_pct\n704.36,0\n766.78,0\n");
  }

  @Test
  void fill_writesToStandardOutput() {
    assertThat(CommandRun.of("fill", "sheets_by_area", cases))
        .isEqualTo(new CommandRun(0, FILLED, ""));
  }

  @Test
  void fill_takesTheFunctionsJavaName() {
    assertThat(CommandRun.of("fill", "sheetsByArea", cases).out()).isEqualTo(FILLED);
  }

  @Test
  void fill_writesToACsvFile() throws IOException {
    Path out = folder.resolve("filled.csv");
    assertThat(CommandRun.of("fill", "sheets_by_area", cases, "-o", out))
        .isEqualTo(new CommandRun(0, "", ""));
    assertThat(Files.readString(out)).isEqualTo(FILLED);
  }

  @Test
  void fill_writesToAWorkbook() throws IOException {
    Path out = folder.resolve("filled.XLSX");
    assertThat(CommandRun.of("fill", "sheets_by_area", cases, "-o", out).status()).isZero();
    assertThat(Files.readAllBytes(out)).startsWith((byte) 'P', (byte) 'K');
  }

  @Test
  void fill_keepsAFileThatExistsUnlessForced() throws IOException {
    Path out = Files.writeString(folder.resolve("filled.csv"), "mine");
    CommandRun kept = CommandRun.of("fill", "sheets_by_area", cases, "-o", out);
    assertThat(kept.status()).isEqualTo(3);
    assertThat(kept.err()).startsWith(out + ": it exists and is kept").hasLineCount(1);
    assertThat(Files.readString(out)).isEqualTo("mine");
    assertThat(CommandRun.of("fill", "sheets_by_area", cases, "-o", out, "--force").status())
        .isZero();
    assertThat(Files.readString(out)).isEqualTo(FILLED);
  }

  @Test
  void fill_mayWriteOverItsOwnTable() throws IOException {
    assertThat(CommandRun.of("fill", "sheets_by_area", cases, "-o", cases, "--force").status())
        .isZero();
    assertThat(Files.readString(cases)).isEqualTo(FILLED);
  }

  @Test
  void fill_writesTheOtherRowsWhereOneIsRefused() throws IOException {
    Files.writeString(cases, "deck_area_sf,waste_pct\n704.36,0\n-1,0\n766.78,0\n");
    CommandRun ran = CommandRun.of("fill", "sheets_by_area", cases);
    assertThat(ran.status()).isEqualTo(3);
    String reason =
        "deck_area_sf is -1; it must be from 1 to 200000, measured on the slope; a house has 500"
            + " to 5000";
    assertThat(ran.out())
        .isEqualTo(
            "deck_area_sf,waste_pct,sheets,error\n704.36,0,23,\n-1,0,,\""
                + reason
                + "\"\n766.78,0,24,\n");
    assertThat(ran.err().lines())
        .containsExactly(
            "cases.csv, line 3, column deck_area_sf: " + reason, "1 of 3 rows refused");
  }

  @Test
  void fill_writesRefusedRowsIntoAFileToo() throws IOException {
    Files.writeString(cases, "deck_area_sf,waste_pct\n-1,0\n766.78,0\n");
    Path out = folder.resolve("filled.csv");
    CommandRun ran = CommandRun.of("fill", "sheets_by_area", cases, "-o", out);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).hasLineCount(2).endsWith("1 of 2 rows refused\n");
    assertThat(Files.readString(out)).contains("deck_area_sf is -1;").endsWith("766.78,0,24,\n");
  }

  @Test
  void fill_countsRefusedRowsInThousands() throws IOException {
    Files.writeString(cases, "deck_area_sf,waste_pct\n" + "704.36,0\n-1,0\n".repeat(1_000));
    assertThat(CommandRun.of("fill", "sheets_by_area", cases).err().lines())
        .hasSize(42)
        .endsWith(
            "and 960 more of the same kind in cases.csv, column deck_area_sf",
            "1,000 of 2,000 rows refused");
  }

  @Test
  void fill_showsItsProgressToNobodyButATerminal() throws IOException {
    Files.writeString(cases, "deck_area_sf,waste_pct\n" + "704.36,0\n".repeat(2_500));
    Path out = folder.resolve("filled.csv");
    assertThat(CommandRun.of("fill", "sheets_by_area", cases, "-o", out))
        .isEqualTo(new CommandRun(0, "", ""));

    FilledLines lines =
        FilledLines.of(Catalog.shipped().named("sheets_by_area"), CsvFile.read(cases));
    StringWriter terminal = new StringWriter();
    FillTally tally =
        new FillTally(
            lines, new PrintWriter(terminal), new Watch(new PrintWriter(terminal, true), true));
    lines.forEach(tally);
    tally.say();
    assertThat(terminal.toString()).matches("\r1,000 of 2,500 rows +\r2,000 of 2,500 rows +\r +\r");
  }

  @Test
  void fill_ofAnUnknownFunctionNamesTheNearest() {
    CommandRun ran = CommandRun.of("fill", "nails_per_shet", cases);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .startsWith("there is no function \"nails_per_shet\"; the nearest are nails_per_sheet, ");
  }

  @Test
  void fill_ofAFileThatIsNotThereSaysSo() {
    assertThat(CommandRun.of("fill", "sheets_by_area", folder.resolve("none.csv")))
        .isEqualTo(
            new CommandRun(3, "", "none.csv: there is no such file" + System.lineSeparator()));
  }

  @Test
  void fill_ofAFolderSaysSo() {
    CommandRun ran = CommandRun.of("fill", "sheets_by_area", folder);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).hasLineCount(1);
  }

  @Test
  void fill_intoAFolderThatIsNotThereSaysSo() {
    Path out = folder.resolve("nowhere").resolve("filled.csv");
    CommandRun ran = CommandRun.of("fill", "sheets_by_area", cases, "-o", out);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err().strip()).isEqualTo(out + ": its folder does not exist; make it first");
  }

  @Test
  void fill_intoAnUnknownKindOfFileIsWrongUse() {
    Path out = folder.resolve("filled.pdf");
    CommandRun ran = CommandRun.of("fill", "sheets_by_area", cases, "-o", out);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).startsWith(out + " must end in .csv, .json or .xlsx");
    assertThat(out).doesNotExist();
  }
}
