package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvFileTest {

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  @TempDir private Path folder;

  @Test
  void csvFile_keepsCellsAsTheyAreWritten() {
    CsvFile file = CsvFile.parse("t.csv", "plane, eave_ft \n front ,007\n\"a, b\",\"9 1/4\"\"\"\n");
    assertThat(file.header()).containsExactly("plane", "eave_ft");
    assertThat(file.lines()).extracting(RowSource.Line::number).containsExactly(2L, 3L);
    assertThat(file.lines().get(0).cells()).containsExactly(" front ", "007");
    assertThat(file.lines().get(1).cells()).containsExactly("a, b", "9 1/4\"");
  }

  @ParameterizedTest(name = "lines ending in {0}")
  @ValueSource(strings = {"\n", "\r\n"})
  void csvFile_countsLinesAsAnEditorDoes(String end) {
    String text = String.join(end, "a,b", "1,2", "", "3,4", ",", "5,6");
    for (String whole : new String[] {text, text + end}) {
      CsvFile file = CsvFile.parse("t.csv", whole);
      assertThat(file.lines()).extracting(RowSource.Line::number).containsExactly(2L, 4L, 6L);
      assertThat(file.lines().get(2).cells()).containsExactly("5", "6");
    }
  }

  @Test
  void csvFile_fillsUpShortLines() {
    CsvFile file = CsvFile.parse("t.csv", "a,b,c\n1\n");
    assertThat(file.lines().get(0).cells()).containsExactly("1", "", "");
  }

  @Test
  void csvFile_refusesMoreCellsThanHeadings() {
    assertThat(problemsOf("a,b\n1,2\n1,408.72,3\n1,2,3,4\n"))
        .isEqualTo(
            "t.csv, line 3: 3 cells under 2 headings; put cells with a comma in them in double"
                + " quotes\n"
                + "t.csv, line 4: 4 cells under 2 headings; put cells with a comma in them in"
                + " double quotes");
    assertThat(problemsOf("a;b\n1;2;3\n"))
        .isEqualTo(
            "t.csv, line 2: 3 cells under 2 headings; put cells with a semicolon in them in double"
                + " quotes");
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(strings = {"", "\n\n", BYTE_ORDER_MARK, "\r\n"})
  void csvFile_refusesAnEmptyFile(String text) {
    assertThat(problemsOf(text)).isEqualTo("t.csv: it is empty; its first line names the columns");
  }

  @Test
  void csvFile_saysThatTabsSeparateItsCells() {
    assertThatThrownBy(() -> CsvFile.parse("marks.csv", "mark\tplane\n1\tA\n"))
        .hasMessage(
            "marks.csv, line 1: its cells are separated by tabs; save it as CSV, with commas or semicolons");
  }

  @Test
  void csvFile_refusesAQuoteWithoutItsPartner() {
    assertThat(problemsOf("a,b\n1,\"2\n3,4\n"))
        .isEqualTo("t.csv: it cannot be parsed: unmatched double quote");
  }

  @Test
  void csvFile_readsSemicolonsAndTheirDecimalComma() {
    CsvFile file = CsvFile.parse("t.csv", "a;b\n38,5;1/2\n");
    assertThat(file.lines().get(0).cells()).containsExactly("38,5", "1/2");
    assertThat(file.readable("38,5")).isEqualTo("38.5");
    assertThat(file.readable("-0,25")).isEqualTo("-0.25");
    assertThat(file.readable("38.5")).isEqualTo("38.5");
    assertThat(CsvFile.parse("t.csv", "a,b\n").readable("38,5")).isEqualTo("38,5");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "10,420|\"10,420\" could be 10420 or 10.42 in",
        "10.420|\"10.420\" could be 10420 or 10.42 in",
        "-1,625|\"-1,625\" could be -1625 or -1.6250 in",
        "$5,000|\"$5,000\" could be $5000 or $5 in"
      })
  void csvFile_ofSemicolonsRefusesWhatTwoReadersReadDifferently(String cell, String said) {
    CsvFile semicolons = CsvFile.parse("t.csv", "a;b\n");
    assertThatThrownBy(() -> semicolons.readable(cell)).hasMessageStartingWith(said);
    assertThat(CsvFile.parse("t.csv", "a,b\n").readable(cell)).isEqualTo(cell);
  }

  @Test
  void csvFile_ofSemicolonsReadsWhatOnlyOneReaderReads() {
    CsvFile file = CsvFile.parse("t.csv", "a;b\n");
    assertThat(file.readable("0,420")).isEqualTo("0.420");
    assertThat(file.readable("12,75")).isEqualTo("12.75");
    assertThat(file.readable("1234,567")).isEqualTo("1234.567");
    assertThat(file.readable("10,4200")).isEqualTo("10.4200");
    assertThat(file.readable("1,234.56")).isEqualTo("1,234.56");
  }

  @Test
  void csvFile_refusesANumberOfManyCharacters() {
    assertThatThrownBy(() -> CsvFile.parse("t.csv", "a,b\n").readable("9".repeat(61)))
        .hasMessage("61 characters are given; at most 60 are allowed");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(ints = {0x1b, 0x07, 0x00, 0x08, 0x7f, 0x9b, 0x202e, 0x2066})
  void csvFile_refusesCharactersThatSteerATerminal(int code) {
    String foreign = new String(Character.toChars(code));
    String shown = "\\u%04x".formatted(code);
    assertThat(problemsOf("a,b\n1,x" + foreign + "y\n"))
        .isEqualTo(
            "t.csv, line 2, column b: it holds the character "
                + shown
                + ", which nobody can see; type the cell again");
    assertThat(problemsOf("a,b" + foreign + "\n1,2\n"))
        .startsWith("t.csv, line 1: a heading: it holds the character " + shown)
        .doesNotContain(foreign);
  }

  @Test
  void csvFile_keepsTabsAndLinesInACell() {
    CsvFile file = CsvFile.parse("t.csv", "a,b\n1,\"two\tor\nthree\"\n");
    assertThat(file.lines().get(0).cells()).containsExactly("1", "two\tor\nthree");
  }

  /** A cell of a workbook holds 32,767 characters: Excel's own limit, from memory. */
  @Test
  void csvFile_saysWhatIsTooMuchForIt() {
    assertThat(problemsOf("a,b\n1," + "x".repeat(32_768) + "\n"))
        .isEqualTo(
            "t.csv, line 2, column b: 32,768 characters are given; at most 32,767 are allowed");
    assertThat(problemsOf("a," + "b".repeat(101) + "\n1,2\n"))
        .isEqualTo("t.csv, line 1: a heading: 101 characters are given; at most 100 are allowed");
    assertThat(problemsOf("a,".repeat(200) + "b\n1\n"))
        .isEqualTo("t.csv, line 1: 201 columns; a table takes at most 200");
    assertThat(problemsOf("a\n" + "1\n".repeat(200_001)))
        .isEqualTo("t.csv, line 200002: a table takes at most 200,000 lines; split it");
  }

  @Test
  void csvFile_isNotReadBeyondWhatItMayBe() throws IOException {
    Path file = folder.resolve("t.csv");
    Files.write(file, new byte[32_000_001]);
    assertThat(messageOf(file))
        .isEqualTo(
            "t.csv: it is longer than 32,000,000 bytes, the most that is read of a table; split"
                + " it");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void csvFile_isNotADevice() {
    assertThat(messageOf(Path.of("/dev/zero")))
        .isEqualTo("zero: it cannot be read: it is a device; name a CSV file");
  }

  @Test
  void csvFile_readsTheBytesThatASpreadsheetProgramWrites() throws IOException {
    Path file = folder.resolve("t.csv");
    Files.writeString(file, BYTE_ORDER_MARK + "plane\r\nSüd\r\n");
    assertThat(CsvFile.read(file).header()).containsExactly("plane");
    assertThat(CsvFile.read(file).lines().get(0).cells()).containsExactly("Süd");
  }

  @Test
  void csvFile_refusesTextThatIsNotUtf8() throws IOException {
    Path file = folder.resolve("t.csv");
    Files.write(file, "plane\nSüd\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(messageOf(file)).isEqualTo("t.csv: it is not UTF-8 text; save it as CSV UTF-8");
  }

  @Test
  void csvFile_refusesAWorkbookUnderItsName() throws IOException {
    Path file = folder.resolve("t.csv");
    Files.write(file, new byte[] {'P', 'K', 3, 4, (byte) 0x80, (byte) 0xFF, 0});
    assertThat(messageOf(file)).startsWith("t.csv: it is not UTF-8 text");
  }

  @Test
  void csvFile_refusesAFileThatIsNotThere() {
    assertThat(messageOf(folder.resolve("none.csv"))).isEqualTo("none.csv: there is no such file");
    assertThat(messageOf(folder))
        .isEqualTo(folder.getFileName() + ": it cannot be read: it is a folder; name a CSV file");
  }

  private static String problemsOf(String text) {
    return catchThrowableOfType(ProblemsException.class, () -> CsvFile.parse("t.csv", text))
        .getMessage();
  }

  private static String messageOf(Path file) {
    return catchThrowableOfType(ProblemsException.class, () -> CsvFile.read(file)).getMessage();
  }
}
