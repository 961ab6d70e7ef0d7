package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalculatorsCommandTest {

  @TempDir private Path folder;

  @Test
  void calculators_writesTheNamedFunctions_andKeepsAFileThatIsThere() throws Exception {
    Path file = folder.resolve("two.xlsx");

    CommandRun ran = CommandRun.of("calculators", "sheets_by_area", "rafterCheck", "-o", file);
    CommandRun again = CommandRun.of("calculators", "sheets_by_area", "-o", file);

    assertThat(ran.status()).isZero();
    assertThat(ran.out()).isEqualTo("wrote " + file + "\n");
    assertThat(Files.size(file)).isGreaterThan(10_000);
    assertThat(again.status()).isEqualTo(3);
    assertThat(again.err())
        .isEqualTo(file + ": it exists and is kept; add --force to replace it, or name another\n");
    assertThat(CommandRun.of("calculators", "slope_factor", "-o", file, "--force").status())
        .isZero();
  }

  @Test
  void anUnknownFunction_isAnsweredWithTheNearest_andNothingIsWritten() {
    Path file = folder.resolve("none.xlsx");

    CommandRun ran = CommandRun.of("calculators", "rafter_chek", "-o", file);

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .contains("there is no function \"rafter_chek\"; the nearest are rafter_check");
    assertThat(file).doesNotExist();
  }

  @Test
  void whatNoCellCanDo_andAnotherEnding_areWrongUse() {
    CommandRun solved = CommandRun.of("calculators", "fail_rate", "-o", folder.resolve("a.xlsx"));
    CommandRun ending = CommandRun.of("calculators", "-o", folder.resolve("a.csv"));

    assertThat(solved.status()).isEqualTo(2);
    assertThat(solved.err()).startsWith("fail_rate is solved, which no cell can do; run");
    assertThat(ending.status()).isEqualTo(2);
    assertThat(ending.err()).contains("a.csv must end in .xlsx: a workbook is written");
    assertThat(folder).isEmptyDirectory();
  }
}
