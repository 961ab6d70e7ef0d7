package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody types is a text wherever it is written, also where it begins as a formula does. */
class TextIsNoFormulaTest {

  private static final String WORD = "zzmark";
  private static final List<String> BEGINNINGS = List.of("=", "+", "-", "@", "\t=", "=1+");

  @TempDir private Path folder;

  @Test
  void whatIsTyped_isATextInEveryFileOfAJob() throws IOException {
    Path job = Sent.copied(Path.of("demo-data", "quince-hollow"), folder.resolve("job"));
    List<String> facts = List.of("customer", "site", "job_name", "prepared_by");
    for (int i = 0; i < facts.size(); i++) {
      String text = BEGINNINGS.get(i) + WORD + i + "(1)";
      changed(job.resolve("job.csv"), facts.get(i) + ",.*", facts.get(i) + "," + text + ",");
    }
    Sent.done("quote", job, "--issue", "--on", "2027-05-04");
    Sent.done("crew", job, "-o", job.resolve("crew.xlsx"));
    Sent.done("papers", job);
    Sent.done("season", folder);

    int cells = 0;
    for (Path file : files(".xlsx")) {
      cells += texts(file);
    }
    assertThat(cells).as("cells that show what was typed").isGreaterThan(facts.size());
    for (Path file : files(".csv")) {
      if (!file.startsWith(job) || file.endsWith("sent.csv")) {
        assertThat(Files.readString(file)).doesNotContainPattern("(?m)(^|,)\"?[=+@\t-]+1?" + WORD);
      }
    }
  }

  private static void changed(Path table, String pattern, String other) throws IOException {
    String text = Files.readString(table);
    assertThat(text.replaceFirst("(?m)^" + pattern, other)).isNotEqualTo(text);
    Files.writeString(table, text.replaceFirst("(?m)^" + pattern, other));
  }

  private List<Path> files(String end) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(end)).toList();
    }
  }

  /** How many cells of a workbook show what was typed; none of them works it out. */
  private static int texts(Path file) throws IOException {
    int texts = 0;
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              assertThat(cell.getCellFormula().replaceAll("\"[^\"]*\"", "\"\""))
                  .as("%s %s", file.getFileName(), cell.getAddress())
                  .doesNotContain(WORD);
            } else if (cell.toString().contains(WORD)) {
              texts++;
            }
          }
        }
      }
    }
    return texts;
  }
}
