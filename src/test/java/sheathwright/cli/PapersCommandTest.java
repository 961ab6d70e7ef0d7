package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The papers for others than the owner are written as far as the job's stage allows them. */
class PapersCommandTest {

  @TempDir private Path folder;

  @Test
  void whileTheRoofIsOpen_allAreWritten_andNothingOfTheJobChanges() {
    LifeFolder job = LifeFolder.of(Path.of("demo-data", "whole-life", "5-opened"), folder);
    String before = job.text("job.csv");

    CommandRun ran = job.done("papers");

    assertThat(ran.out()).contains("order-list.xlsx", "inspection-record.xlsx");
    assertThat(folder.resolve("order-list.xlsx")).exists();
    assertThat(folder.resolve("inspection-record.xlsx")).exists();
    assertThat(folder.resolve("maker-record.xlsx")).doesNotExist();
    assertThat(job.text("job.csv")).isEqualTo(before);
    assertThat(job.run("papers").status()).isEqualTo(3);
    job.done("papers", "--force");
  }

  @Test
  void beforeTheRoofIsOpen_thereIsNothingToInspect() {
    LifeFolder job = LifeFolder.of(Path.of("demo-data", "whole-life", "4-agreed"), folder);

    assertThat(job.done("papers").out())
        .contains("inspection-record.xlsx is written once the covering is off: opened_on");
    assertThat(folder.resolve("inspection-record.xlsx")).doesNotExist();
  }

  @Test
  void aJobThatIsNotQuoted_orIsClosed_isRefused() {
    LifeFolder surveyed = LifeFolder.of(Path.of("demo-data", "quince-hollow"), folder.resolve("2"));
    surveyed.fact("stage", "surveyed");
    assertThat(surveyed.refused("papers"))
        .contains("an order list takes quoted or agreed or opened", "run ./sheathwright quote");
    LifeFolder closed =
        LifeFolder.of(Path.of("demo-data", "whole-life", "6-closed"), folder.resolve("6"));
    assertThat(closed.refused("papers")).contains("nothing more is bought for it");
  }
}
