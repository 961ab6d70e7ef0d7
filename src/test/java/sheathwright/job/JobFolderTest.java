package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobFolderTest {

  @TempDir private Path folder;

  @Test
  void jobFolder_isReadTableByTable() throws IOException {
    write(JobText.small());
    assertThat(Job.in(folder).text("job_name").value()).isEqualTo("A small roof");
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
            "rates.csv: this table is missing from " + folder,
            "prices.csv: it is empty; its first line names the columns");
  }

  @Test
  void jobFolder_mayHoldOtherFiles() throws IOException {
    write(JobText.small());
    Files.writeString(folder.resolve("notes.txt"), "ring the owner");
    assertThat(Job.in(folder).levelsRafters()).isFalse();
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
