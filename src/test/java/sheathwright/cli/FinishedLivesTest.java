package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.workbook.page.Samples;

/**
 * The invented jobs that go on beyond their quote, walked by the commands once more: what they
 * write is what lies in the samples, and comes to what independent scripts worked out.
 */
class FinishedLivesTest {

  private static final Path DEMO = Path.of("demo-data");

  @TempDir private Path folder;

  /**
   * Beyond 3 sheets in the price: 6 × 117 + 31 × 8 + 148 × 1.05 + 8 × 22; 2 × 118. Of 36 that are
   * bad, 6 are in the price and 21 may be billed before both sides have talked again: 15 × 90.
   */
  @ParameterizedTest
  @CsvSource({
    "kettle-reach, 1281.40, 17714.40",
    "gannet-spit, 236.00, 18765.97",
    "dunmarrow-hall, 1350.00, 33754.00"
  })
  void whatIsFound_isOrderedAndKept(String name, String order, String total) throws IOException {
    Path demo = DEMO.resolve(name);
    LifeFolder job = LifeFolder.of(demo, folder.resolve(name));
    String day = fact(job.text("job.csv"), "quote_date");
    job.done("quote", "--issue", "--on", day);
    job.done("agree", "--on", day);
    String agreed = job.text("job.csv");
    LifeFolder opened = new LifeFolder(demo.resolve("opened"));
    for (String table : opened.bytes().keySet()) {
      if (table.endsWith(".csv")) {
        job.write(table, opened.text(table));
      }
    }
    String added = opened.text("job.csv");
    job.write("job.csv", agreed + added.substring(added.indexOf('\n') + 1));

    CommandRun ran = job.done("change-order", "--on", fact(added, "opened_on"));

    assertThat(job.lines("orders.csv").get(1)).contains("," + order + ",");
    assertThat(ran.out().replace(",", "")).contains("$" + total);
    Path sample = Path.of("workbooks", name, "change-order-01.xlsx");
    assertThat(sample).as("make it: workbooks/README.md says how").exists();
    assertThat(Samples.parts(job.bytes("change-order-01.xlsx")))
        .as("make it anew: workbooks/README.md says how")
        .isEqualTo(Samples.parts(Files.readAllBytes(sample)));
  }

  private static String fact(String table, String key) {
    return table
        .lines()
        .filter(line -> line.startsWith(key + ","))
        .map(line -> line.split(",")[1])
        .findFirst()
        .orElseThrow();
  }

  /** The script's folders are those that lie in the demo, file by file. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aWholeLife_isMadeAnewByItsScript() throws Exception {
    Path life = Files.createDirectories(folder.resolve("whole-life"));
    Path program = Files.writeString(folder.resolve("program"), program());
    assertThat(program.toFile().setExecutable(true)).isTrue();
    Path log = folder.resolve("log");
    ProcessBuilder script =
        new ProcessBuilder("bash", "src/build/whole-life.sh", life.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile());
    script.environment().put("SHEATHWRIGHT", program.toString());
    assertThat(script.start().waitFor()).as(Files.readString(log)).isZero();

    Map<String, Object> made = contents(life);
    Map<String, Object> kept = contents(DEMO.resolve("whole-life"));
    kept.keySet().removeIf(file -> file.startsWith("by-hand"));
    assertThat(made.keySet()).as("make it anew: src/build/whole-life.sh").isEqualTo(kept.keySet());
    made.forEach((file, content) -> assertThat(content).as(file).isEqualTo(kept.get(file)));
  }

  /** S1 by half a sheet: $248.70 more, $11,121.70 in all. */
  @Test
  void aWholeLife_comesToItsSums() throws IOException {
    LifeFolder closed = new LifeFolder(DEMO.resolve("whole-life").resolve("6-closed"));
    assertThat(closed.lines("orders.csv").get(1)).startsWith("01,2027-06-01,248.70,");
    assertThat(closed.text("sent.csv"))
        .contains("QH-01 invoice,invoice.xlsx,")
        .contains(",11121.70,2027-06-04");
    for (String line : closed.lines("sent.csv").subList(1, closed.lines("sent.csv").size())) {
      String[] cells = line.split(",");
      assertThat(sha256(closed.bytes("sent/" + cells[1]))).as(cells[1]).isEqualTo(cells[2]);
    }
  }

  private static String sha256(byte[] bytes) {
    try {
      return java.util.HexFormat.of()
          .formatHex(java.security.MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (java.security.NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String program() {
    return """
        #!/usr/bin/env bash
        exec '%s' -Xshare:auto -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp '%s' sheathwright.cli.Main "$@"
        """
        .formatted(
            Path.of(System.getProperty("java.home"), "bin", "java"),
            System.getProperty("java.class.path"));
  }

  /** What is in each file: cells, parts or points; how tightly they are packed may differ. */
  private static Map<String, Object> contents(Path folder) throws IOException {
    Map<String, Object> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder).filter(Files::isRegularFile)) {
      for (Path file : files.toList()) {
        byte[] bytes = Files.readAllBytes(file);
        String name = folder.relativize(file).toString();
        all.put(
            name,
            name.endsWith(".xlsx")
                ? Samples.parts(bytes)
                : name.endsWith(".png")
                    ? points(bytes)
                    : new String(bytes, StandardCharsets.UTF_8)
                        .replaceAll("\\b[0-9a-f]{64}\\b", "a fingerprint"));
      }
    }
    return all;
  }

  private static String points(byte[] bytes) throws IOException {
    var picture = ImageIO.read(new ByteArrayInputStream(bytes));
    int[] points =
        picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    return picture.getWidth() + " wide, " + Arrays.hashCode(points);
  }
}
