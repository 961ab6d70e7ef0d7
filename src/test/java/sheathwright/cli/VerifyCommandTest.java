package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was checked, as whoever asks for it sees it in a window of 80 columns. */
class VerifyCommandTest {

  private static final String HEADINGS =
      "function,source,tolerance,rise_in_12,slope_factor,specific_gravity,diameter_in,shank,withdrawal_lb_per_in\n";

  /** The triangle of 3, 4 and 5; NDS 12.2C at G 0.42 and 0.131 in, 1380 G^2.5 D = 20.67. */
  private static final String RIGHT =
      HEADINGS
          + "slopeFactor,hand,1e-9,9,1.25,,,,\nnail withdrawal,hand,0.001,,,0.42,0.131,smooth,20.67\n";

  @TempDir Path folder;

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("mine.csv"), text);
  }

  private void office() throws IOException {
    Files.writeString(folder.resolve("firm.csv"), "key,value\nname,Two Ladders\n");
  }

  private static void assertThatItFits(String text) {
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @ParameterizedTest
  @ValueSource(strings = {"slope_factor", "slopeFactor", "SLOPE-FACTOR", "slope factor"})
  void aFunction_isTold_howeverItIsSpelled(String spelled) {
    CommandRun ran = CommandRun.of("verify", spelled);
    assertThat(ran.status()).isZero();
    assertThat(ran.out()).startsWith("slope_factor: ").contains("certified cases (", "all hold");
    assertThat(ran.out()).contains("where they lie: ", "expected by: ");
    assertThatItFits(ran.out());
  }

  @Test
  void aFunctionsDisagreements_areTold() {
    CommandRun ran = CommandRun.of("verify", "rafter_max_span");
    assertThat(ran.out()).contains("4,334 printed cells", "known disagreement: IRC 2021");
    assertThatItFits(ran.out());
  }

  @Test
  void aFunctionThatIsNone_isWrongUse() {
    CommandRun ran = CommandRun.of("verify", "slope_facter");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .startsWith("there is no function \"slope_facter\"; the nearest are slope_factor");
  }

  @Test
  void casesOfOnesOwn_areRun_andKeptWhereThereIsAnOffice() throws IOException {
    office();
    CommandRun ran = CommandRun.of("verify", table(RIGHT));
    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isZero();
    assertThat(ran.out())
        .startsWith("slope_factor: 1 case, all hold, none is off by anything\n")
        .contains("nail_withdrawal: 1 case, all hold, largest difference 0.00")
        .contains("verify runs it from now on");
    assertThat(folder.resolve("checked").resolve("mine.csv")).hasContent(RIGHT);
    CommandRun again = CommandRun.of("verify", folder.resolve("mine.csv"));
    assertThat(again.status()).isEqualTo(3);
    assertThat(again.err()).contains("mine.csv: it exists and is kept; add --force to replace it");
    assertThat(CommandRun.of("verify", folder.resolve("mine.csv"), "--force", "--quiet").out())
        .doesNotContain("kept as");
    assertThat(CommandRun.of("verify", folder.resolve("checked").resolve("mine.csv")).out())
        .doesNotContain("kept as");
  }

  @Test
  void withoutAnOffice_nothingIsKept() throws IOException {
    CommandRun ran = CommandRun.of("verify", table(RIGHT));
    assertThat(ran.status()).isZero();
    assertThat(ran.out()).contains("not kept: there is no firm.csv");
    assertThat(folder.resolve("checked")).doesNotExist();
  }

  @Test
  void aCaseThatDoesNotHold_isToldWhereItStands() throws IOException {
    CommandRun ran = CommandRun.of("verify", table(HEADINGS + "slope_factor,hand,1e-9,9,1.3\n"));
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains("1 NOT HELD");
    assertThat(ran.err())
        .startsWith("mine.csv, line 2, column slope_factor: 1.25 was given, 1.3 is expected;");
  }

  @Test
  void whatCannotBeRead_isToldLineByLine_andNothingIsKept() throws IOException {
    office();
    CommandRun ran =
        CommandRun.of(
            "verify",
            table(
                HEADINGS
                    + "slope_facter,hand,1e-9,9,1.25\n"
                    + "slope_factor,hand,1e-9,9,1.25,0.42\n"
                    + "slope_factor,,2,9,1.25\n"
                    + "nail_withdrawal,hand,0,,,0.42,0.131,smoth,20\n"));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err().lines())
        .satisfiesExactly(
            line -> assertThat(line).startsWith("mine.csv, line 2, column function: there is no"),
            line ->
                assertThat(line)
                    .startsWith(
                        "mine.csv, line 3, column specific_gravity: slope_factor has no such column"),
            line ->
                assertThat(line).startsWith("mine.csv, line 4, column tolerance: tolerance is 2"),
            line -> assertThat(line).startsWith("mine.csv, line 4, column source: it is blank"),
            line ->
                assertThat(line).startsWith("mine.csv, line 5, column shank: shank is \"smoth\""));
    assertThat(folder.resolve("checked")).doesNotExist();
  }

  @Test
  void aTableCalledAsItsFunction_needsNoColumn() throws IOException {
    Path file = folder.resolve("slope_factor.csv");
    Files.writeString(file, "source,tolerance,rise_in_12,slope_factor\nhand,1e-9,9,1.25\n");
    assertThat(CommandRun.of("verify", file).out()).startsWith("slope_factor: 1 case, all hold");
    Files.writeString(
        folder.resolve("own.csv"), "source,tolerance,rise_in_12,slope_factor\nhand,1e-9,9,1.25\n");
    assertThat(CommandRun.of("verify", folder.resolve("own.csv")).err())
        .startsWith("own.csv, line 1: no column function says which function each case is of");
  }

  @Test
  void json_hasARowForEachFunction() throws IOException {
    CommandRun ran = CommandRun.of("verify", table(RIGHT), "--json");
    assertThat(ran.out())
        .startsWith(
            "[\n{\"function\": \"slope_factor\", \"table\": \"mine.csv\", \"cases\": 1, \"hold\": 1, \"column\": \"slope_factor\"");
  }

  @Test
  void everything_isChecked_withTheOfficesOwn_andARecordIsWritten() throws IOException {
    office();
    CommandRun.of("verify", table(RIGHT));
    Path record = folder.resolve("record.xlsx");
    CommandRun ran = CommandRun.of("verify", "--office", folder, "--report", record);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isZero();
    assertThatItFits(ran.out());
    assertThat(ran.out())
        .contains("\nprogram    ", "\ntables     ", "\nroof ", "estimate.xlsx", ": found\n")
        .contains("your own   checked/mine.csv: 2 cases, all hold")
        .contains("\nall holds: ");
    assertThat(record).isNotEmptyFile();
  }

  @Test
  void aRecord_isOfEverything_andAWorkbook() {
    assertThat(CommandRun.of("verify", "slope_factor", "--report", "a.xlsx").err())
        .startsWith("--report is of everything; leave slope_factor away");
    CommandRun ran = CommandRun.of("verify", "--report", folder.resolve("a.pdf"));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("must end in .xlsx");
  }
}
