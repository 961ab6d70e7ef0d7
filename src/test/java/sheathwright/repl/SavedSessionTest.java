package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A session saved as a workbook: its variables are named cells, and a foreign engine follows them.
 * The file is left for the gate, where LibreOffice recalculates it too.
 */
class SavedSessionTest {

  private static final Path FILE = Path.of("target", "workbooks", "typed-session.xlsx");

  @TempDir private Path folder;

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private void type(String... lines) {
    for (String line : lines) {
      assertThat(session.answers(line)).as(line).noneMatch(Answer::isError);
    }
  }

  @Test
  void everyVariable_isANamedCellThatFollowsWhatWasTyped() throws Exception {
    Files.createDirectories(FILE.getParent());
    Files.deleteIfExists(FILE);
    type(
        "deckArea = sqft(64)",
        "order = sheetsByArea(deckArea, pct(0))",
        "rafter = rafterCheck(Lumber.of(HEM_FIR, NO_2, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), ROOF_LIVE, number(180), ClearSpan.of(ft(8)))",
        "total = sheets(10)",
        "total = total.plus(order)",
        "save(\"" + FILE + "\")");

    try (XSSFWorkbook workbook = new XSSFWorkbook(FILE.toFile())) {
      FormulaEvaluator engine = workbook.getCreationHelper().createFormulaEvaluator();
      assertThat(number(workbook, engine, "order")).isEqualTo(2);
      assertThat(number(workbook, engine, "total")).isEqualTo(10 + 2);
      assertThat(word(workbook, engine, "rafter_ok")).isEqualTo("yes");

      cell(workbook, "deck_area").setCellValue(100 * 32);
      engine.clearAllCachedResultValues();
      assertThat(number(workbook, engine, "order")).isEqualTo(100);
      assertThat(number(workbook, engine, "total")).isEqualTo(10 + 100);

      // words and numbers typed straight into a function are inputs as well
      cell(workbook, "span_ft").setCellValue(30);
      cell(workbook, "grade").setCellValue("no-3");
      engine.clearAllCachedResultValues();
      assertThat(word(workbook, engine, "rafter_ok")).isEqualTo("no");
      assertThat(cell(workbook, "grade").getCellStyle().getLocked()).isFalse();
    }
  }

  @Test
  void anExistingFile_isKept() throws Exception {
    Path file = folder.resolve("session.xlsx");
    type("n = sheets(2)", "save(\"" + file + "\")");
    byte[] before = Files.readAllBytes(file);

    assertThat(EstimatorGuideTest.answer(session, "save(\"" + file + "\")"))
        .contains("exists and is kept; saveOver(");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    type("n = sheets(3)", "saveOver(\"" + file + "\")");
    assertThat(Files.readAllBytes(file)).isNotEqualTo(before);
  }

  @Test
  void aSessionWithoutFigures_isNotSaved() {
    Path file = folder.resolve("session.xlsx");
    assertThat(EstimatorGuideTest.answer(session, "save(\"" + file + "\")"))
        .startsWith("no variable holds a figure yet");
    assertThat(file).doesNotExist();
  }

  private static Cell cell(XSSFWorkbook workbook, String name) {
    CellReference place = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
  }

  private static double number(XSSFWorkbook workbook, FormulaEvaluator engine, String name) {
    return engine.evaluate(cell(workbook, name)).getNumberValue();
  }

  private static String word(XSSFWorkbook workbook, FormulaEvaluator engine, String name) {
    return engine.evaluate(cell(workbook, name)).getStringValue();
  }
}
