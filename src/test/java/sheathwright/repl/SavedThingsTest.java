package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.job.JobTable;
import sheathwright.repl.show.Screen;

/** Nothing that a session holds is left out of its file unsaid. */
class SavedThingsTest {

  @TempDir private Path folder;

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  private void type(String... lines) {
    for (String line : lines) {
      assertThat(session.answers(line)).as(line).noneMatch(Answer::isError);
    }
  }

  @Test
  void planesMarksReadingsAndPlans_areWritten_andTheRestIsNamed() throws Exception {
    Path file = folder.resolve("roof.xlsx");
    type(
        "eave = ft(24)",
        "south = Plane.rectangle(\"S\", eave, ft(14))",
        "rafters = Supports.every(in(24))",
        "mark1 = Mark.of(\"m1\", ROT, in(60), in(10), in(30), in(14))",
        "deck = layout(south, rafters)",
        "cuts = deck.cutList()",
        "mending = patches(south, rafters, mark1)",
        "again = patches(south, rafters, mark1)",
        "string = stringReadings(\"demo-data/tallow-end/readings.csv\", \"S\")",
        "straight = straighten(string, SIZE_2X6, SIZE_2X6, number(0.86))",
        "todo = repairList(straight)",
        "count = 3",
        "unsaid = new Object()");
    assertThat(answer("save \"" + folder.resolve("roof") + "\""))
        .startsWith("wrote " + file)
        .contains("count", "deck", "mark1", "south", "straight", "todo")
        .endsWith("\nleft out, because no cell can hold it: unsaid");

    try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile())) {
      assertThat(tabs(workbook))
          .contains("Session deck", "Session cuts", "Session mending", "Session todo");
      String crew = text(workbook.getSheet("Session todo"));
      assertThat(crew).contains("Brace both sides of a rafter before it is cut");
      FormulaEvaluator engine = workbook.getCreationHelper().createFormulaEvaluator();
      assertThat(number(workbook, engine, "south_area")).isEqualTo(24 * 14);
      cell(workbook, "eave").setCellValue(20);
      engine.clearAllCachedResultValues();
      assertThat(number(workbook, engine, "south_area")).isEqualTo(20 * 14);
      assertThat(text(workbook.getSheet("Session deck")))
          .contains("Plane S", "deck planes 1 sheets");
      String guards = text(workbook.getSheet("Session"));
      assertThat(guards).contains("Whether what was solved still holds", "layout of S");
    }
  }

  @Test
  void whatAThingWasSaidToBe_standsUnderTheNameOfItsVariable() throws Exception {
    Path file = folder.resolve("roof.xlsx");
    type("rafters = Supports.every(in(24))", "old = Supports.at(in(0), in(17), in(40))");
    answer("save \"" + file + "\"");
    try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile())) {
      FormulaEvaluator engine = workbook.getCreationHelper().createFormulaEvaluator();
      assertThat(number(workbook, engine, "rafters_spacing")).isEqualTo(24);
      assertThat(number(workbook, engine, "rafters_first")).isZero();
      assertThat(number(workbook, engine, "old_2")).isEqualTo(17);
      assertThat(workbook.getAllNames()).noneMatch(name -> name.getNameName().contains("given"));
    }
  }

  @Test
  void theEndingSaysWhatIsWritten_andAWrongOneIsRefused() {
    type("n = sheets(2)");
    assertThat(answer("save \"" + folder.resolve("roof.pdf") + "\""))
        .isEqualTo(
            "save writes workbooks and sessions, and no .pdf; name it \"roof.xlsx\" or \"roof.session\"");
    assertThat(folder.resolve("roof.pdf")).doesNotExist();
    assertThat(answer("save")).startsWith("save takes a name");
    assertThat(answer("save \"" + folder.resolve("roof") + "\""))
        .isEqualTo("wrote " + folder.resolve("roof.xlsx") + " with n");
    assertThat(answer("save(\"" + folder.resolve("roof.xlsx") + "\")"))
        .contains("exists and is kept");
  }

  @Test
  void aForgottenUnit_doesNotKeepASessionFromBeingSaved() throws IOException {
    type("up = in(40)", "c = up.plus(in(2))", "up = 41");
    Path file = folder.resolve("x.xlsx");
    assertThat(answer("save \"" + file + "\""))
        .startsWith("wrote " + file + " with c, up\nstale, and written with the value it has: c");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      assertThat(text(workbook.getSheet("Session")))
          .contains("stale: up is 41, a number without a unit");
    }
  }

  @Test
  void aSessionFile_makesTheSessionAgain() throws IOException {
    Path file = folder.resolve("x.session");
    type(
        "a = in(1)",
        "b = a.plus(in(1))",
        "Object f() {\n  return b;\n}",
        "a = in(5)",
        "undone = in(3)",
        "undo",
        "for (int i = 0; i < 2; i++) { a = a.plus(in(1)); }");
    answer("nonsense()");
    assertThat(answer("save \"" + file + "\"")).startsWith("wrote " + file + ", 5 lines");
    assertThat(session.upkeep().isUnsaved()).isFalse();
    Files.writeString(file, "a\nb\nf()\n", java.nio.file.StandardOpenOption.APPEND);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Script.run(file, List.of(), new PrintWriter(out, true), new PrintWriter(err, true));
    assertThat(err).hasToString("");
    assertThat(out).hasToString("7 in\n6 in\n6 in\n");
    assertThat(status).isZero();
  }

  @Test
  void whatIsTyped_isKeptAsItGoes_andTheLastSessionComesBack() {
    Path state = folder.resolve("state");
    try (Session first = Session.atPrompt(new Autosave(state), () -> Screen.PIPE)) {
      EstimatorGuideTest.answer(first, "a = in(1)\nb = a.plus(in(1))\nnonsense(");
      EstimatorGuideTest.answer(first, "a");
      assertThat(first.upkeep().isUnsaved()).isTrue();
    }
    try (Session second =
        Session.atPrompt(new Autosave(state, "29991231-235959-1"), () -> Screen.PIPE)) {
      assertThat(second.upkeep().isUnsaved()).isFalse();
      assertThat(EstimatorGuideTest.answer(second, "resume"))
          .isEqualTo("a = 1 in\nb = 2 in   from a");
      assertThat(EstimatorGuideTest.answer(second, "a = in(3)")).contains("b = 4 in (was 2 in)");
    }
    assertThat(answer("resume")).isEqualTo("there is no session to bring back yet");
  }

  @Test
  void aFolderThatCannotBeMade_isSaidOnce() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "");
    Autosave autosave = new Autosave(file.resolve("state"));
    try (Session careless = Session.atPrompt(autosave, () -> Screen.PIPE)) {
      assertThat(EstimatorGuideTest.answer(careless, "a = in(1)")).isEqualTo("a = 1 in");
    }
    assertThat(autosave.trouble()).startsWith("what is typed cannot be kept on the side: ");
    assertThat(autosave.trouble()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"cinder-brook,S", "mistwater-cottage,A", "quince-hollow,A", "tallow-end,S"})
  void aJobsTables_areVariables_andGoAsOneLine(String job, String plane) {
    assertThat(answer("job \"demo-data/" + job + "\"")).contains("variables from");
    assertThat(session.variables())
        .containsKeys("support_spacing_in", "price_sheet_usd", "tax_pct");
    assertThat(answer("plane_" + plane + ".area()")).contains("sq ft");
    assertThat(answer("undo")).startsWith("undone: job ").contains("plane_" + plane + " is gone");
    assertThat(session.variables()).isEmpty();
  }

  @Test
  void aJob_isComputedWith_asItsTablesSay() {
    type("job \"demo-data/cinder-brook\"");
    // 50 ft below, 50 - 16 - 16 = 18 above, 17 ft 4 in high; an opening of 2 ft 8 in by 2 ft
    assertThat(((Figure<?>) session.variables().get("support_spacing_in")).value()).isEqualTo(16);
    answer("south = plane_S.area()");
    assertThat(((Figure<?>) session.variables().get("south")).value())
        .isCloseTo((50 + 18) / 2.0 * (17 + 4 / 12.0) - (2 + 8 / 12.0) * 2, within(1e-9));
    assertThat(answer("patches(plane_S, rafters, mark_S_1).sheets()")).contains("sheet");
    assertThat(answer("job \"nowhere\"")).contains("there is no such folder");
  }

  /**
   * By the rules an awl that goes in 1/8 in finds good wood: soft is nailed again, and loose that
   * somebody typed replace for is cut out.
   */
  @Test
  void aJobsMarks_areCutOutAsAQuoteCutsThem() throws IOException {
    Path job = Files.createDirectory(folder.resolve("job"));
    for (JobTable table : JobTable.values()) {
      Path file = Path.of("demo-data", "cinder-brook", table.file());
      if (Files.exists(file)) {
        Files.copy(file, job.resolve(table.file()));
      }
    }
    Files.writeString(
        job.resolve("marks.csv"),
        "mark,plane,finding,along_in,up_in,width_in,height_in,sheet,probe_in,action\n"
            + "1,S,soft,366,100,20,40,,1/8,\n2,S,loose,,,,,S-1-2,,replace\n");
    type("job \"" + job + "\"");
    answer("good = patches(plane_S, rafters, mark_1).patches()");
    answer("bad = patches(plane_S, rafters, mark_2).patches()");
    assertThat(((Figure<?>) session.variables().get("good")).value()).isZero();
    assertThat(((Figure<?>) session.variables().get("bad")).value()).isEqualTo(1);
  }

  private static List<String> tabs(XSSFWorkbook workbook) {
    List<String> names = new ArrayList<>();
    workbook.forEach(sheet -> names.add(sheet.getSheetName()));
    return names;
  }

  private static String text(Sheet sheet) {
    StringBuilder text = new StringBuilder();
    for (Row row : sheet) {
      for (Cell cell : row) {
        text.append(cell).append('\n');
      }
    }
    return text.toString();
  }

  private static Cell cell(XSSFWorkbook workbook, String name) {
    CellReference place = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
  }

  private static double number(XSSFWorkbook workbook, FormulaEvaluator engine, String name) {
    return engine.evaluate(cell(workbook, name)).getNumberValue();
  }
}
