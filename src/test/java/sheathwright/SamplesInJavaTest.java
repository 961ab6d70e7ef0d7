package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.ToolProvider;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The samples for those who call the library: each run in a Java of its own as its guide says, with
 * nothing set, and nothing on standard error.
 */
class SamplesInJavaTest {

  private static final Path SAMPLES = Path.of("docs", "samples");

  /** 42 × 16.7708 ft are 704.375 sq ft; with a tenth more, 774.81 ÷ 32 is 24.2 sheets. */
  private static final String SHEETS = "25 sheets";

  @TempDir Path folder;

  private String printed(String program, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", program).toString());
    command.addAll(List.of(arguments));
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectError(err.toFile())
            .redirectInput(
                ProcessBuilder.Redirect.from(Files.writeString(folder.resolve("in"), "").toFile()))
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(Files.readString(err)).isZero();
    // The JDK's own tool says once in a new home that it made a folder for its preferences.
    assertThat(Files.readString(err).replaceAll(".*java\\.util\\.prefs.*\\R.*preferences.*\\R", ""))
        .isEmpty();
    return out;
  }

  /** The library and what it needs: none of what tests bring along, which might take its log. */
  private static String classPath() {
    List<String> entries = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      boolean isForTests =
          entry.matches(
                  ".*(junit|assertj|archunit|slf4j|indriya|opentest4j|byte-buddy|test).*\\.jar")
              || entry.matches(".*(test|test-classes)/?");
      if (!isForTests) {
        entries.add(entry);
      }
    }
    return String.join(File.pathSeparator, entries);
  }

  @Test
  void oneFile_runsAsItStands() throws Exception {
    assertThat(printed("java", "-cp", classPath(), SAMPLES.resolve("One.java").toString()))
        .isEqualTo(
            """
            %s, 43 nails/sheet
            refused before it is asked: true
            waste_pct is 140; it must be from 0 to 100, 0 for a count, 5 to 15 for an order
            """
                .formatted(SHEETS));
  }

  @Test
  void plainJshell_runsTheSession() throws Exception {
    assertThat(
            printed("jshell", "--class-path", classPath(), SAMPLES.resolve("deck.jsh").toString()))
        .contains("704.38 sq ft: " + SHEETS, "sheets");
  }

  @Test
  void theMavenSample_writesALiveWorkbook() throws Exception {
    Path project = SAMPLES.resolve("maven");
    Path classes = Files.createDirectory(folder.resolve("classes"));
    int compiled =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                null,
                "-Xlint:all,-classfile,-path",
                "-Werror",
                "--release",
                "17",
                "-cp",
                classPath(),
                "-d",
                classes.toString(),
                project.resolve("src/main/java/sample/DeckWorkbook.java").toString());
    assertThat(compiled).isZero();
    Path file = folder.resolve("deck.xlsx");
    String paths = classes + File.pathSeparator + classPath();
    assertThat(printed("java", "-cp", paths, "sample.DeckWorkbook", file.toString()))
        .isEqualTo("wrote deck.xlsx\n");
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      assertThat(cell(book, "sheets").getNumericCellValue()).isEqualTo(25);
      cell(book, "waste").setCellValue(50); // 704.375 × 1.5 ÷ 32 = 33.02
      var engine = book.getCreationHelper().createFormulaEvaluator();
      engine.clearAllCachedResultValues();
      assertThat(engine.evaluate(cell(book, "sheets")).getNumberValue()).isEqualTo(34);
    }
    assertThat(Files.readString(project.resolve("pom.xml")))
        .contains("<version>%s</version>".formatted(version()));
  }

  private static XSSFCell cell(XSSFWorkbook book, String name) {
    CellReference at = new CellReference(book.getName(name).getRefersToFormula());
    return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  private static String version() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    return pom.replaceAll(
        "(?s).*?<artifactId>sheathwright</artifactId>\\s*<version>([^<]*)<.*", "$1");
  }

  /** A program that calls the library without naming where logs go hears nothing of them. */
  @Test
  void theCommandLine_complainsOfNoLog() throws Exception {
    printed(
        "java",
        "-cp",
        classPath(),
        "sheathwright.cli.Main",
        "quote",
        Path.of("demo-data", "quince-hollow").toString(),
        "-o",
        folder.toString());
    assertThat(folder.resolve("quote.xlsx")).exists();
  }
}
