package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Named sets of changes: 3,200 sq ft are 100 sheets of 32, so each per cent of waste is one. */
class ScenariosTest {

  private static final String BOTH =
      """
      scenario  now         cheap       big
      waste     10 %        5 %         10 %
      area      3,200 sq ft  3,200 sq ft  6,400 sq ft
      order     110 sheets  105 sheets  220 sheets""";

  @TempDir private Path folder;

  private final Session session = new Session();

  @BeforeEach
  void type() {
    answer("area = 3200 sq ft");
    answer("waste = 10 %");
    answer("order = sheetsByArea(area, waste)");
  }

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  private static String squeezed(String table) {
    return table.replaceAll(" {2,}", "  ");
  }

  private void typeBoth() {
    answer("scenario \"cheap\" (waste = 5 %)");
    answer("scenario \"big\" (area = 6400 sq ft)");
  }

  @Test
  void allStandSideBySide_andTheSessionStaysAsItIs() {
    String before = answer("list");
    assertThat(answer("scenario \"cheap\" (waste = 5 %)"))
        .isEqualTo("scenario \"cheap\" is kept; scenario alone shows all side by side");
    answer("scenario \"big\" (area = 6400 sq ft)");
    assertThat(squeezed(answer("scenario"))).isEqualTo(squeezed(BOTH));
    assertThat(answer("list")).isEqualTo(before);
    answer("area = 32 sq ft"); // 1.1 and 1.05 sheets, both up
    assertThat(squeezed(answer("scenario order")))
        .endsWith("order  2 sheets  2 sheets  220 sheets");
  }

  @Test
  void theAnswers_canBeNamed_elseAllLastOnesAreShown() {
    answer("spare = order + 1 sheets");
    answer("scenario \"cheap\" (waste = 5 %)");
    assertThat(answer("scenario"))
        .contains("spare     111 sheets  106 sheets")
        .doesNotContain("order");
    assertThat(answer("scenario order, spare"))
        .contains("order     110 sheets  105 sheets\nspare     111 sheets  106 sheets");
    assertThat(answer("scenario none")).startsWith("there is no variable \"none\" to show");
  }

  @Test
  void aScenario_isDeleted_takenBack_andTypedAnew() {
    typeBoth();
    assertThat(answer("delete \"none\""))
        .startsWith("there is no \"none\" to delete; there are area");
    assertThat(answer("delete \"cheap\"")).isEqualTo("scenario \"cheap\" is deleted");
    assertThat(answer("scenario")).startsWith("scenario  now          big");
    assertThat(answer("undo")).isEqualTo("undone: delete \"cheap\"");
    assertThat(squeezed(answer("scenario"))).isEqualTo(squeezed(BOTH));
    answer("undo");
    assertThat(answer("scenario")).doesNotContain("big");
    answer("scenario \"cheap\" (waste = 20 %)");
    assertThat(answer("scenario")).contains("order     110 sheets  120 sheets");
  }

  @Test
  void aSavedSession_hasThem() {
    typeBoth();
    answer("delete \"big\"");
    String file = folder.resolve("x.session").toString();
    answer("save \"" + file + "\"");
    try (Session second = new Session()) {
      EstimatorGuideTest.answer(second, "resume \"" + file + "\"");
      assertThat(EstimatorGuideTest.answer(second, "scenario"))
          .isEqualTo(answer("scenario"))
          .contains("order     110 sheets  105 sheets");
    }
  }

  @Test
  void whatCannotBeKept_isSaid_andIsNotKept() {
    assertThat(answer("scenario")).startsWith("a scenario is a name and what changes in it");
    assertThat(answer("scenario \"odd\" (waist = 5 %)"))
        .startsWith("scenario \"odd\": there is no variable \"waist\" to vary; there are area");
    assertThat(answer("scenario \"odd\" (waste = 500 %)"))
        .startsWith("scenario \"odd\": order has no value: ");
    assertThat(answer("scenario \"odd\" (waste = 3 in)")).startsWith("scenario \"odd\": ");
    assertThat(answer("scenario \"odd\" waste = 5 %")).startsWith("a scenario is a name");
    assertThat(answer("scenario \"odd\" (5 %)")).startsWith("a scenario is a name");
    assertThat(answer("scenario")).startsWith("a scenario is a name");
  }

  @Test
  void many_fitTheWindow() {
    for (int i = 1; i < 12; i++) {
      answer("scenario \"number %d\" (waste = %d %%)".formatted(i, i));
    }
    assertThat(answer("scenario").lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
    assertThat(answer("scenario")).contains("number 11").contains("111 sheets");
  }

  /** Typed into the workbook, 50 % are 150 sheets. */
  @Test
  void aSavedWorkbook_hasThem_live() throws Exception {
    typeBoth();
    File file = folder.resolve("x.xlsx").toFile();
    assertThat(answer("save \"" + file + "\"")).endsWith("with area, waste, order, scenarios");
    try (XSSFWorkbook workbook = new XSSFWorkbook(file)) {
      FormulaEvaluator engine = workbook.getCreationHelper().createFormulaEvaluator();
      Row cheap = row(workbook.getSheet("Session scenarios"), "cheap");
      assertThat(engine.evaluate(cheap.getCell(3)).getNumberValue()).isEqualTo(105);
      cheap.getCell(1).setCellValue(50);
      engine.clearAllCachedResultValues();
      assertThat(engine.evaluate(cheap.getCell(3)).getNumberValue()).isEqualTo(150);
    }
  }

  private static Row row(Sheet tab, String name) {
    for (Row row : tab) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(name)) {
        return row;
      }
    }
    throw new AssertionError("no row " + name);
  }
}
