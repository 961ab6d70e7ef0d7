package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text that we write is a formula to the spreadsheet program that opens it. */
class CsvLinesTest {

  /** Where lines are written. */
  private static final List<String> WRITERS = List.of("CsvLines.java");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "=HYPERLINK(\"x\")",
        "+cmd|' /C calc'!A0",
        "-2+3+cmd|' /C calc'!A0",
        "@SUM(A1)",
        "\t=1+1",
        "\r=1+1",
        "- a remark",
        "-e5"
      })
  void aTextThatBeginsAsAFormula_isMarked_andReadAsItWas(String text) throws IOException {
    StringBuilder file = new StringBuilder();
    CsvLines lines = new CsvLines(file, ',');
    lines.line(List.of("note", "other"));
    lines.line(List.of(text, "x"));

    String cell = file.toString().split("\n", 2)[1];
    assertThat(cell.replaceFirst("^\"", "")).startsWith("'" + text.charAt(0));
    assertThat(CsvLines.meant("'" + text)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-3.5",
        "+1",
        "-1-3/8",
        "-1.5e-7",
        "-1E5",
        "-16' 9-1/4\"",
        "-5 %",
        "-",
        "12",
        "a=b",
        "it's",
        "'",
        "'x",
        ""
      })
  void anythingElse_staysAsItIs(String text) {
    assertThat(CsvLines.line(List.of("x", text), ';'))
        .isEqualTo("x;" + (text.contains("\"") ? '"' + text.replace("\"", "\"\"") + '"' : text));
    assertThat(CsvLines.meant(text)).isEqualTo(text);
  }

  @Test
  void aTable_isReadAsItWasMeant() {
    CsvFile file = CsvFile.parse("notes.csv", "note,drop_in\n'=1+1,'-x\n'+5,-5\n");
    assertThat(file.lines().get(0).cells()).containsExactly("=1+1", "-x");
    assertThat(file.lines().get(1).cells()).containsExactly("'+5", "-5");
  }

  @Test
  void nobodyElse_writesALine() throws IOException {
    try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
      for (Path source : sources.filter(Files::isRegularFile).toList()) {
        if (!WRITERS.contains(source.getFileName().toString())) {
          assertThat(Files.readString(source)).as("%s", source).doesNotContain("CSVPrinter");
        }
      }
    }
  }
}
