package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;

class JobFolderTest {

  @TempDir private Path folder;

  @Test
  void jobFolder_isReadTableByTable() throws IOException {
    write(JobText.small());
    assertThat(Job.in(folder).fact(JobFields.JOB_NAME).value()).isEqualTo("A small roof");
  }

  @Test
  void jobFolder_mustExist() {
    Path nowhere = folder.resolve("nowhere");
    assertThat(problemsOf(nowhere))
        .isEqualTo(nowhere + ": there is no such folder; a job is a folder of CSV files");
  }

  @Test
  void jobFolder_isNotAFile() throws IOException {
    Path file = Files.writeString(folder.resolve("job.csv"), "key,value\n");
    assertThat(problemsOf(file)).startsWith(file + ": there is no such folder");
  }

  @Test
  void jobFolder_saysEveryTableThatIsMissingOrBroken() throws IOException {
    write(JobText.small());
    Files.delete(folder.resolve("planes.csv"));
    Files.delete(folder.resolve("rates.csv"));
    Files.writeString(folder.resolve("prices.csv"), "");
    assertThat(problemsOf(folder).lines())
        .containsExactlyInAnyOrder(
            "planes.csv: this table is missing from " + folder,
            "rates.csv: this table is missing from " + folder + " and from the folder above it",
            "prices.csv: it is empty; its first line names the columns");
  }

  @Test
  void jobFolder_mayHoldOtherFiles() throws IOException {
    write(JobText.small());
    Files.writeString(folder.resolve("notes.txt"), "ring the owner");
    assertThat(Job.in(folder).levelsRafters()).isFalse();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "report.csv, 'did you mean reports.csv? Rename it, or keep it elsewhere'",
    "mark.csv, 'did you mean marks.csv? Rename it, or keep it elsewhere'",
    "Readings.csv, 'did you mean readings.csv? Rename it, or keep it elsewhere'",
    "openings.CSV, 'did you mean openings.csv? Rename it, or keep it elsewhere'",
    "reports.csv.txt, 'did you mean reports.csv? Rename it, or keep it elsewhere'",
    "raf ters.csv, 'did you mean rafters.csv? Rename it, or keep it elsewhere'",
    "spans of another job.csv, './sheathwright tables lists those that there are; keep it elsewhere'"
  })
  void jobFolder_overlooksNoTable(String name, String asked) throws IOException {
    write(JobText.small());
    Files.writeString(folder.resolve(name), "report,seen,where\nF-1,split,rafter 3\n");
    assertThat(problemsOf(folder)).isEqualTo(name + ": no job table has that name; " + asked);
  }

  /** What other programs leave beside a table is not one: a lock, a second copy of the system's. */
  @Test
  void jobFolder_mayHoldWhatOtherProgramsLeave() throws IOException {
    write(JobText.small());
    Files.writeString(folder.resolve("._marks.csv"), "");
    Files.writeString(folder.resolve(".~lock.job.csv#"), "");
    assertThat(Job.in(folder).planes()).hasSize(2);
  }

  @Test
  void jobFolder_saysThatATableIsAFolder() throws IOException {
    write(JobText.small());
    Files.createDirectory(folder.resolve("marks.csv"));
    assertThat(problemsOf(folder))
        .isEqualTo("marks.csv: it cannot be read: it is a folder; name a CSV file");
  }

  private void write(JobText text) throws IOException {
    for (Map.Entry<String, String> table : text.tables().entrySet()) {
      Files.writeString(folder.resolve(table.getKey() + ".csv"), table.getValue());
    }
  }

  private static String problemsOf(Path folder) {
    return catchThrowableOfType(ProblemsException.class, () -> Job.in(folder)).getMessage();
  }
}
