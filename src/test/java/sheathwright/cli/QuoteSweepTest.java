package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each cell of the demo jobs set to values at and beyond its edges: the job is quoted without a
 * single error in a cell, or it is refused with nothing written and the table named in every line.
 *
 * <p>A sample by default; {@code -Dsheathwright.sweep=all} sweeps every cell, and the name of a
 * demo job sweeps that one. A sweep takes many minutes: what is wrong is said as soon as it is
 * found, and how far it came, so that one that is stopped has told what it saw.
 */
class QuoteSweepTest {

  private static final String WHICH = System.getProperty("sheathwright.sweep", "");
  private static final int CELLS_IN_THE_SAMPLE = 6;
  private static final int VALUES_IN_THE_SAMPLE = 2;
  private static final long SEED = 20270504;

  private static final Duration MOST_TIME = Duration.ofSeconds(60);

  private static final List<String> BESIDES = List.of("0", "-1", "0.001", "1", "7", "100");
  private static final Pattern ENDS =
      Pattern.compile("must be (?:a whole number )?(?:from )?(-?[0-9][^ ]*) (?:to|or) ([^ ,;]+)");
  private static final Pattern WORDS =
      Pattern.compile("must be one of ([a-z0-9-]+(?:, [a-z0-9-]+)*)");
  private static final Pattern PLACED =
      Pattern.compile(
          "[a-z]+\\.csv(, line \\d+)?(, column \\w+)?: .+"
              + "|and [0-9,]+ more of (?:the same kind|other kinds) in [a-z]+\\.csv(, column \\w+)?");
  private static final String ERROR_CELL = "t=\"e\"";

  @TempDir private Path folder;
  private int made;

  @Test
  void everyCell_isAnsweredWithoutErrorOrRefusedWithItsPlace() throws IOException {
    Random random = new Random(SEED);
    List<String> wrong = new ArrayList<>();
    List<TableChange> cells = cells(random);
    for (TableChange cell : cells) {
      for (String value : values(cell, random)) {
        List<String> wrongHere = wrongWith(cell.to(value));
        wrong.addAll(wrongHere);
        if (!WHICH.isEmpty()) {
          wrongHere.forEach(System.out::println);
        }
      }
      if (!WHICH.isEmpty()) {
        System.out.printf(
            "%d of %d cells swept, %d jobs%n", 1 + cells.indexOf(cell), cells.size(), made);
      }
    }
    assertThat(wrong).as("seed " + SEED).isEmpty();
  }

  /**
   * A rafter that is read low beyond its bearings alone got a sister of no length. A plane that is
   * called otherwise than in its readings is said for some of them, and how many more there are.
   */
  @ParameterizedTest
  @CsvSource({"tallow-end, readings.csv, 33, 3, 1", "tallow-end, planes.csv, 1, 0, unlikely"})
  void whatASweepFound_staysRight(String job, String table, int line, int column, String value)
      throws IOException {
    TableChange found = new TableChange(Path.of("demo-data", job), table, line, column, value);
    assertThat(wrongWith(found)).isEmpty();
  }

  private static List<TableChange> cells(Random random) throws IOException {
    List<TableChange> cells = new ArrayList<>();
    try (Stream<Path> jobs = Files.list(Path.of("demo-data"))) {
      jobs.filter(job -> Files.exists(job.resolve("job.csv")))
          .filter(job -> !isNamed() || job.endsWith(WHICH))
          .sorted()
          .forEach(job -> cells.addAll(TableChange.of(job)));
    }
    Collections.shuffle(cells, random); // a sweep that is stopped has seen something of each table
    return WHICH.isEmpty() ? cells.subList(0, CELLS_IN_THE_SAMPLE) : cells;
  }

  private static boolean isNamed() {
    return !WHICH.isEmpty() && !WHICH.equals("all");
  }

  /** What the cell's own refusals say is allowed, and values that nobody would give. */
  private List<String> values(TableChange cell, Random random) throws IOException {
    Set<String> values = new LinkedHashSet<>(List.of(TableChange.UNLIKELY, TableChange.HUGE));
    for (String absurd : List.copyOf(values)) {
      String said = ran(cell.to(absurd)).err();
      Matcher ends = ENDS.matcher(said);
      while (ends.find()) {
        values.add(ends.group(1).replace(",", ""));
        values.add(ends.group(2).replace(",", ""));
      }
      Matcher words = WORDS.matcher(said);
      while (words.find()) {
        values.addAll(List.of(words.group(1).split(", ")));
      }
    }
    values.addAll(BESIDES);
    List<String> all = new ArrayList<>(values);
    if (WHICH.isEmpty()) {
      Collections.shuffle(all, random);
      return all.subList(0, VALUES_IN_THE_SAMPLE);
    }
    return all;
  }

  private record Quoted(int status, String err, Path out) {}

  private Quoted ran(TableChange change) throws IOException {
    Path job = Files.createDirectory(folder.resolve("job-" + ++made));
    change.write(job);
    Path out = job.resolve("out");
    CommandRun ran =
        assertTimeoutPreemptively(
            MOST_TIME, () -> CommandRun.of("quote", job, "-o", out), change::toString);
    return new Quoted(ran.status(), ran.err(), out);
  }

  private List<String> wrongWith(TableChange change) throws IOException {
    Quoted quoted = ran(change);
    List<String> wrong = new ArrayList<>();
    try (Stream<Path> left = Files.list(quoted.out().getParent())) {
      left.filter(file -> !file.equals(quoted.out()) && !file.toString().endsWith(".csv"))
          .forEach(file -> wrong.add(change + ": " + file.getFileName() + " was left behind"));
    }
    if (quoted.status() == 0) {
      for (String book : List.of("estimate.xlsx", "quote.xlsx")) {
        Path file = quoted.out().resolve(book);
        if (hasErrors(file)) {
          wrong.add(change + ": an error stands in a cell of " + book);
        }
        Files.delete(file);
      }
    } else {
      if (quoted.status() != Main.REFUSED) {
        wrong.add(change + ": exit " + quoted.status() + ": " + quoted.err().strip());
      }
      if (Files.exists(quoted.out())) {
        wrong.add(change + ": refused, but something was written");
      }
      quoted
          .err()
          .lines()
          .filter(line -> !PLACED.matcher(line).matches())
          .forEach(line -> wrong.add(change + ": no table is named: " + line));
    }
    return wrong;
  }

  private static boolean hasErrors(Path book) throws IOException {
    try (ZipFile zip = new ZipFile(book.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (entry.getName().startsWith("xl/worksheets/")) {
          byte[] sheet = zip.getInputStream(entry).readAllBytes();
          if (new String(sheet, StandardCharsets.UTF_8).contains(ERROR_CELL)) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
