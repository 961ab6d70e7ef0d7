package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableColumns;

/** The page on a job's tables says what reads them today. */
class TableGuideTest {

  private static final List<String> JOBS =
      List.of(
          "cinder-brook",
          "tallow-end",
          "mistwater-cottage",
          "quince-hollow",
          "whole-life/6-closed",
          "gannet-spit",
          "kettle-reach",
          "dunmarrow-hall");

  /** What no demo job has. */
  private static final Path FURTHER = Path.of("src", "test", "resources", "examples");

  /** The first value of each key and column in the demo's jobs. */
  private static Map<String, String> examples() {
    Map<String, String> examples = new TreeMap<>();
    List<Map<String, RowSource>> all = new ArrayList<>();
    JOBS.forEach(job -> all.add(JobTables.in(Path.of("demo-data", job)).files()));
    for (JobTable table : JobTable.values()) {
      Path further = FURTHER.resolve(table.file());
      if (Files.exists(further)) {
        all.add(Map.of(table.word(), CsvFile.read(further)));
      }
    }
    for (Map<String, RowSource> files : all) {
      files.forEach(
          (table, file) -> {
            boolean isKeyed = List.of("job", "prices", "rates", "firm").contains(table);
            for (RowSource.Line line : file.lines()) {
              for (int i = 0; i < file.header().size(); i++) {
                String name = isKeyed ? line.cells().get(0) : file.header().get(i);
                String value = line.cells().get(isKeyed ? 1 : i);
                if (!value.isBlank() && !TableColumns.isNote(name)) {
                  examples.putIfAbsent(table + "." + name, value);
                }
              }
            }
          });
    }
    return examples;
  }

  @Test
  void thePage_isCurrent() throws IOException {
    String current = TableGuide.document(examples());
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target", "job-tables.md"), current);
    assertThat(Files.readString(Path.of("docs", "job-tables.md")))
        .as("copy target/job-tables.md to docs")
        .isEqualTo(current);
  }

  /** What a new job's tables give as examples is what the page gives. */
  @Test
  void theExamplesOfNewTables_areCurrent() throws IOException {
    StringBuilder current = new StringBuilder("field,example\n");
    examples()
        .forEach(
            (name, value) ->
                current
                    .append(name)
                    .append(',')
                    .append('"')
                    .append(value.replace("\"", "\"\""))
                    .append("\"\n"));
    Path kept =
        Path.of("src", "main", "resources", "sheathwright", "life", "start", "examples.csv");
    Files.writeString(Path.of("target", "examples.csv"), current);
    assertThat(Files.readString(kept))
        .as("copy target/examples.csv to " + kept)
        .isEqualTo(current.toString());
  }

  /** Whatever the demo's jobs give is something that the page tells of. */
  @Test
  void thePage_tellsOfEverythingThatTheDemoGives() {
    String page = TableGuide.document(Map.of());
    assertThat(examples().keySet())
        .map(name -> name.substring(name.indexOf('.') + 1))
        .filteredOn(name -> !name.startsWith("note"))
        .hasSizeGreaterThan(80)
        .allSatisfy(name -> assertThat(page).contains("| `" + name + "` |"));
  }

  @Test
  void everyTable_hasItsPageForATerminal() {
    for (JobTable table : JobTable.values()) {
      assertThat(TableGuide.list()).contains(table.file());
      assertThat(TableGuide.page(table)).startsWith(table.file() + ": ").contains("\n  ");
    }
  }
}
