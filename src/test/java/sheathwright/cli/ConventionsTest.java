package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every command does alike: a dash, JSON, silence, short help. */
class ConventionsTest {

  private static final Path JOB = Path.of("demo-data", "quince-hollow");

  /** Commands whose answer is what they print; all others say what they did. */
  private static final Set<String> ANSWERING =
      Set.of(
          "Audit",
          "Check",
          "Compare",
          "Explain",
          "Fill",
          "Forecast",
          "Functions",
          "Help",
          "Run",
          "Solve",
          "Tables",
          "Verify");

  @TempDir Path folder;

  private static CommandRun fed(String text, Object... command) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    try {
      return CommandRun.of(command);
    } finally {
      System.setIn(before);
    }
  }

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("table.csv"), text);
  }

  /** 8 × 4 ft is 32 sq ft: 704.36 are 22.01 sheets, and 23 of them. */
  @Test
  void aDash_isStandardInput() {
    assertThat(fed("deck_area_sf,waste_pct\n704.36,0\n", "fill", "sheets_by_area", "-"))
        .isEqualTo(new CommandRun(0, "deck_area_sf,waste_pct,sheets,error\n704.36,0,23,\n", ""));
    assertThat(
            fed(
                    "length_in,count\n31-7/8,3\n",
                    "solve",
                    "cut_stock",
                    "-",
                    "stock_ft=8",
                    "stock_usd=4")
                .out())
        .isEqualTo("stock_ft,usd,pieces,waste_in\n8,4.00,31.875+31.875+31.875,0.125\n");
    assertThat(fed("1 + 2\nargs[0]\n", "run", "-", "a").out()).isEqualTo("3\n\"a\"\n");
  }

  @Test
  void aDash_isSaidAsStandardInput() {
    CommandRun ran = fed("deck_area_sf,waste_pct\n-1,0\n", "fill", "sheets_by_area", "-");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).startsWith("standard input, line 2, column deck_area_sf: ");
  }

  @Test
  void aDash_isStandardOutput() throws IOException {
    Path table = table("deck_area_sf,waste_pct\n704.36,0\n");
    assertThat(CommandRun.of("fill", "sheets_by_area", table, "-o", "-"))
        .isEqualTo(CommandRun.of("fill", "sheets_by_area", table));
    Path file = folder.resolve("crew.xlsx");
    assertThat(CommandRun.of("crew", JOB, "-o", file).status()).isZero();
    PrintStream before = System.out;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    try {
      assertThat(CommandRun.of("crew", JOB, "-o", "-")).isEqualTo(new CommandRun(0, "", ""));
    } finally {
      System.setOut(before);
    }
    assertThat(out.toByteArray()).isEqualTo(Files.readAllBytes(file));
  }

  @Test
  void aDash_isNoFolder() {
    CommandRun ran = CommandRun.of("quote", JOB, "-o", "-");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .startsWith("-o - is standard output, which holds one file; name a folder\n");
  }

  @Test
  void fill_asJsonHasNumbersAsNumbers() throws IOException {
    Path table =
        table(
            """
            support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges,id,note
            16,6,12,,007,"a ""b"" \\ c"
            19.2,0,12,yes,8,
            """);
    CommandRun ran = CommandRun.of("fill", "nails_per_sheet", table, "--json");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out())
        .isEqualTo(
            """
            [
            {"support_spacing_in": 16, "edge_spacing_in": 6, "field_spacing_in": 12, "blocked_edges": null, "id": "007", "note": "a \\"b\\" \\\\ c", "nails": 43, "error": null},
            {"support_spacing_in": 19.2, "edge_spacing_in": 0, "field_spacing_in": 12, "blocked_edges": "yes", "id": "8", "note": null, "nails": null, "error": "edge_spacing_in is 0; it must be from 1 to 24, 6 is usual, 4 in high wind"}
            ]
            """);
    Path file = folder.resolve("a.json");
    CommandRun.of("fill", "nails_per_sheet", table, "-o", file);
    assertThat(file).hasContent(ran.out());
    assertThat(CommandRun.of("fill", "nails_per_sheet", table, "-o", file, "--json").err())
        .startsWith("--json is for standard output;");
  }

  /**
   * One rafter an inch and a quarter low in the middle: that much at one place, none at the others.
   */
  @Test
  void solve_asJsonReadsFractionsAsInches() throws IOException {
    Path table =
        table("x_in,y_in,z_in,note\n0,0,0,12\n0,72,-1-1/4,\n0,144,0,\n24,0,0,\n24,144,0,\n");
    assertThat(CommandRun.of("solve", "level_plane", table, "--json").out())
        .isEqualTo(
            """
            [
            {"x_in": 0, "y_in": 0, "z_in": 0, "note": "12", "build_up_in": 0},
            {"x_in": 0, "y_in": 72, "z_in": -1.25, "note": null, "build_up_in": 1.25},
            {"x_in": 0, "y_in": 144, "z_in": 0, "note": null, "build_up_in": 0},
            {"x_in": 24, "y_in": 0, "z_in": 0, "note": null, "build_up_in": 0},
            {"x_in": 24, "y_in": 144, "z_in": 0, "note": null, "build_up_in": 0}
            ]
            """);
  }

  @Test
  void solve_asJsonKeepsWordsAsWords() throws IOException {
    Path table = table("length_in,count,label\n60,1,12\n");
    assertThat(
            CommandRun.of("solve", "cut_stock", table, "stock_ft=8", "stock_usd=4.10", "--json")
                .out())
        .isEqualTo(
            """
            [
            {"stock_ft": 8, "usd": 4.1, "pieces": "60", "waste_in": 36, "labels": "12"}
            ]
            """);
  }

  @Test
  void functionsAndTables_areToldAsJson() {
    assertThat(CommandRun.of("functions", "sheets_by_area", "--json").out())
        .startsWith("[\n{\"name\": \"sheets_by_area\", \"java\": \"sheetsByArea\", ")
        .contains("{\"name\": \"deck_area_sf\", ", "\"unit\": \"sq ft\"")
        .endsWith("}\n]\n");
    assertThat(CommandRun.of("functions", "--json").out().lines().count())
        .isEqualTo(CommandRun.of("functions").out().lines().count() + 2);
    assertThat(CommandRun.of("tables", "--json").out())
        .contains("\n{\"table\": \"planes\", \"file\": \"planes.csv\", ", "\"needed\": true}");
    assertThat(CommandRun.of("tables", "marks", "--json").out())
        .contains("{\"name\": \"evidence\", ");
  }

  @Test
  void quiet_saysNothingWhereAllIsWell() {
    assertThat(CommandRun.of("quote", "--quiet", JOB, "-o", folder))
        .isEqualTo(new CommandRun(0, "", ""));
    assertThat(folder.resolve("quote.xlsx")).exists();
    assertThat(CommandRun.of("--quiet", "crew", JOB, "-o", folder.resolve("crew.xlsx")))
        .isEqualTo(new CommandRun(0, "", ""));
  }

  @Test
  void quiet_stillAnswersAndSaysWhatIsWrong() throws IOException {
    Path table = table("length_in,count\n60,1\n");
    assertThat(
            CommandRun.of("solve", "cut_stock", table, "stock_ft=8", "stock_usd=4.10", "--quiet"))
        .isEqualTo(new CommandRun(0, "stock_ft,usd,pieces,waste_in\n8,4.10,60,36\n", ""));
    assertThat(CommandRun.of("quote", folder, "--quiet").err()).isNotEmpty();
  }

  /** A command that prints what it did past its voice would not be quiet. */
  @Test
  void whatACommandDid_isSaidByItsVoice() throws IOException {
    Set<String> speaking = new TreeSet<>();
    Path commands = Path.of("src", "main", "java", "sheathwright", "cli");
    try (Stream<Path> files = Files.walk(commands)) {
      for (Path file : files.filter(each -> each.toString().endsWith("Command.java")).toList()) {
        if (Files.readString(file).contains(".getOut()")) {
          speaking.add(file.getFileName().toString().replace("Command.java", ""));
        }
      }
    }
    speaking.removeAll(ANSWERING);
    assertThat(speaking).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"quote", "fill", "solve", "new", "check"})
  void wrongUse_isSaidInThreeLinesOrSo(String command) {
    CommandRun ran = CommandRun.of(command);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err().lines()).hasSizeBetween(3, 6);
    assertThat(ran.err())
        .contains("Usage: sheathwright " + command)
        .endsWith("sheathwright " + command + " --help says more\n");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "fill, --json, -o=FILE, --quiet",
    "solve, --json, TABLE, --quiet",
    "check, --json, JOB, --quiet",
    "run, SCRIPT, ARG, --quiet"
  })
  void help_tellsOfIt(String command, String one, String other, String quiet) {
    assertThat(CommandRun.of(command, "--help").out()).contains(one, other, quiet);
  }
}
