package sheathwright.job.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.JobTables;

/** What a firm keeps beside its jobs. */
class FirmTablesTest {

  private static final String HISTORY = "job,closed_on,sheets,bad,seen,seen_bad,hours\n";

  @TempDir Path firm;
  private Path job;

  @BeforeEach
  void aJob() throws IOException {
    job = Files.createDirectory(firm.resolve("a job"));
  }

  @Test
  void aFirmThatKeepsNothing_hasNoHistory() {
    assertThat(FirmTables.beside(job))
        .isEqualTo(new FirmTables(java.util.List.of(), java.util.List.of()));
  }

  @Test
  void tablesBesideAJob_areRead() throws IOException {
    Files.writeString(firm.resolve("history.csv"), HISTORY + "one,2027-05-14,60,5,18,1,31.5\n");
    Files.writeString(
        firm.resolve("callbacks.csv"),
        "job,on,sheet,was,cost_usd\none,2028-01-03,A-1-2,joint,120\n");
    FirmTables read = FirmTables.beside(job);
    assertThat(read.history())
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.of(FirmFields.JOB).value()).isEqualTo("one");
              assertThat(row.of(FirmFields.BAD).value()).isEqualTo(5);
              assertThat(row.of(FirmFields.HOURS).value()).isEqualTo(31.5);
            });
    assertThat(read.callbacks().get(0).of(FirmFields.WAS).value()).isEqualTo(FirmFields.Was.JOINT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "one,2027-05-14,60,61,,,|history.csv, line 2, column bad: 61 is given, but sheets is 60; no more is bad than is there: give at most that",
        "one,2027-05-14,60,5,61,,|history.csv, line 2, column seen: 61 is given, but sheets is 60; ",
        "one,2027-05-14,60,5,18,19,|history.csv, line 2, column seen_bad: 19 is given, but seen is 18; ",
        "one,2027-05-14,60,5,,,-1|history.csv, line 2, column hours: hours is -1; it must be from 0 to 20000",
        "one,soon,60,5,,,|history.csv, line 2, column closed_on: \"soon\" is not a date of this century; "
      })
  void aHistoryThatCannotBe_isSaid(String line, String said) throws IOException {
    Files.writeString(firm.resolve("history.csv"), HISTORY + line + "\n");
    assertThatThrownBy(() -> FirmTables.beside(job)).hasMessageStartingWith(said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"history.csv", "callbacks.csv"})
  void aTableOfTheFirm_isNotOneOfAJob(String name) throws IOException {
    Files.writeString(job.resolve(name), HISTORY);
    assertThatThrownBy(() -> JobTables.in(job))
        .hasMessageContaining(
            name
                + ": it is not a table of one job but of the firm, beside its jobs; move it to the folder above");
  }
}
