package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.table.CsvFile;

/** A job, and an office, as they begin; and a stranger who goes on by what is said alone. */
class NewCommandTest {

  private static final Pattern MISSING =
      Pattern.compile("(\\S+), line (\\d+), column (\\w+): (\\w+) is missing; give .*");

  @TempDir private Path disk;

  private static CommandRun begun(Object... arguments) {
    Object[] all = new Object[arguments.length + 1];
    all[0] = "new";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    CommandRun run = CommandRun.of(all);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run;
  }

  /** Fills a blank of a table with the example that stands in its note. */
  private static void fill(Path file, int line, String example) throws IOException {
    List<String> lines = new java.util.ArrayList<>(Files.readAllLines(file));
    String key = lines.get(line - 1).split(",")[0];
    lines.set(line - 1, "%s,\"%s\",".formatted(key, example));
    Files.write(file, lines);
  }

  private static String example(Path file, int line) throws IOException {
    String note =
        CsvFile.read(file).lines().stream()
            .filter(each -> each.number() == line)
            .map(each -> each.cells().get(2))
            .findFirst()
            .orElseThrow();
    Matcher such = Pattern.compile("such as (.*?)(; if known)?$").matcher(note);
    assertThat(such.find()).as(note).isTrue();
    return such.group(1);
  }

  /** Whoever knows nothing but what the last message said. */
  private static CommandRun asTheMessagesSay(Path job) throws IOException {
    for (int tries = 0; tries < 6; tries++) {
      CommandRun run = CommandRun.of("quote", job);
      if (run.status() == 0) {
        return run;
      }
      for (String line : run.err().lines().toList()) {
        Matcher missing = MISSING.matcher(line);
        if (missing.matches()) {
          Path file = job.resolve(missing.group(1)).normalize();
          int number = Integer.parseInt(missing.group(2));
          fill(file, number, example(file, number));
        } else if (line.startsWith("planes.csv, line") && line.contains("eave_ft")) {
          int number = Integer.parseInt(line.replaceAll("planes.csv, line (\\d+).*", "$1"));
          Path file = job.resolve("planes.csv");
          List<String> lines = new java.util.ArrayList<>(Files.readAllLines(file));
          lines.set(number - 1, lines.get(number - 1).replaceFirst(",,,", ",42-0,16-9,"));
          Files.write(file, lines);
        } else {
          assertThat(line).contains("write surveyed behind stage in job.csv");
          Path file = job.resolve("job.csv");
          Files.writeString(
              file, Files.readString(file).replace("stage,asked,", "stage,surveyed,"));
        }
      }
    }
    return CommandRun.of("quote", job);
  }

  @ParameterizedTest(name = "new JOB {0}")
  @ValueSource(strings = {"", "--hip", "--maker", "--seam", "--rafters", "--stations", "--trusses"})
  void aStranger_goesFromNewToAQuote(String option) throws IOException {
    Path job = disk.resolve("a job");
    if (option.isEmpty()) {
      begun(job);
    } else {
      begun(job, option);
    }
    CommandRun first = CommandRun.of("quote", job);
    assertThat(first.status()).isEqualTo(3);
    assertThat(first.err().lines()).hasSizeBetween(20, 40);
    CommandRun last = asTheMessagesSay(job);
    assertThat(last.status()).as(last.err()).isZero();
    assertThat(last.out()).contains("the homeowner pays");
    assertThat(job.resolve("quote.xlsx")).isRegularFile();
  }

  @Test
  void anOffice_isAskedOnceForWhatItKeeps() throws IOException {
    Path office = disk.resolve("office");
    begun(office, "--firm");
    CommandRun job = begun(office.resolve("a"));
    assertThat(job.out())
        .contains("from the office: ../prices.csv, ../rates.csv, ../lumber.csv, ../firm.csv");
    assertThat(office.resolve("a").resolve("prices.csv")).doesNotExist();
    CommandRun quoted = asTheMessagesSay(office.resolve("a"));
    assertThat(quoted.status()).as(quoted.err()).isZero();
    String firm = Files.readString(office.resolve("firm.csv"));
    Files.writeString(
        office.resolve("firm.csv"), firm.replace("next_quote_number,", "next_quote_number,1"));
    begun(office.resolve("b"));
    assertThat(Files.readString(office.resolve("b").resolve("job.csv")))
        .doesNotContain("prepared_by,")
        .doesNotContain("quote_number,");
  }

  /** Held against the fields, which read the tables: none of what a job may say is left out. */
  @Test
  void everyKey_standsThereWithItsRange() throws IOException {
    Path job = disk.resolve("job");
    begun(job, "--stations", "--trusses", "--seam", "--maker");
    Path office = disk.resolve("office");
    begun(office, "--firm");
    for (JobTable table : JobTable.values()) {
      Path file =
          (table == JobTable.RULES || table == JobTable.FIRM ? office : job).resolve(table.file());
      if (Files.exists(file)) {
        String text = Files.readString(file).replace("\"\"", "\"");
        TableGuide.parts(table).stream()
            .filter(part -> !part.when().startsWith("one reading a rafter"))
            .flatMap(part -> part.fields().stream())
            .forEach(
                field ->
                    assertThat(text)
                        .as(table.file())
                        .contains(field.name())
                        .contains(field.label() + "; " + field.allowed()));
      }
    }
  }

  @Test
  void nothing_isWrittenOver() throws IOException {
    Path job = Files.createDirectories(disk.resolve("job"));
    Files.writeString(job.resolve("planes.csv"), "mine");
    CommandRun run = CommandRun.of("new", job);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err().strip())
        .isEqualTo(
            job.resolve("planes.csv")
                + ": it is there already, and new writes over nothing; name a folder without it");
    try (var files = Files.list(job)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void anOffice_hasNoRoof() {
    CommandRun run = CommandRun.of("new", disk.resolve("office"), "--firm", "--hip");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--firm begins an office, which has no roof");
  }
}
