package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a variable comes to for several values of another; a sheet is 32 sq ft. */
class VaryingTest {

  @TempDir private Path folder;

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @Test
  void oneVariable_givesARowEach_andTheSessionStaysAsItIs() {
    answer("area = sqft(3200)");
    answer("waste = pct(0)");
    answer("order = sheetsByArea(area, waste)");
    answer("spare = order.plus(sheets(1))");

    assertThat(answer("t = vary(\"spare\", \"waste\", pct(5), pct(10), pct(25))"))
        .isEqualTo(
            """
            t
              waste  spare
              5 %    106 sheets
              10 %   111 sheets
              25 %   126 sheets""");
    assertThat(answer("waste")).isEqualTo("0 %");
    assertThat(answer("spare")).isEqualTo("101 sheets");
    answer("area = sqft(32)");
    assertThat(answer("t")).contains("25 %   3 sheets");
    assertThat(answer("vary(order, area, sqft(32), sqft(64))"))
        .isEqualTo("area      order\n32 sq ft  1 sheet\n64 sq ft  2 sheets");
  }

  @Test
  void twoVariables_giveEveryPair() {
    answer("area = sqft(3200)");
    answer("waste = pct(0)");
    answer("order = sheetsByArea(area, waste)");
    assertThat(
            answer(
                "vary(\"order\", \"waste\", List.of(pct(0), pct(50)), \"area\", List.of(sqft(32), sqft(64)))"))
        .isEqualTo(
            """
            waste  area      order
            0 %    32 sq ft  1 sheet
            0 %    64 sq ft  2 sheets
            50 %   32 sq ft  2 sheets
            50 %   64 sq ft  3 sheets""");
  }

  @Test
  void whatCannotBeVaried_isSaid() {
    answer("area = sqft(3200)");
    answer("order = sheetsByArea(area, pct(0))");
    answer("other = in(3)");
    assertThat(answer("vary(\"order\", \"other\", in(3))"))
        .startsWith("\"order\" is not made from");
    assertThat(answer("vary(\"order\", \"none\", in(3))"))
        .startsWith("there is no variable \"none\"");
    assertThat(answer("vary(\"order\")")).startsWith("vary takes what is asked for");
    assertThat(answer("vary(\"order\", \"area\", in(3))"))
        .isEqualTo("deck area is area, 3 in; it must be a number of sq ft");
    answer("Object f() { return area; }");
    answer("by = f()");
    assertThat(answer("vary(\"by\", \"area\", sqft(3))")).contains("by way of f");
  }

  @Test
  void aSavedTable_isLive() throws Exception {
    answer("area = sqft(3200)");
    answer("waste = pct(0)");
    answer("order = sheetsByArea(area, waste)");
    answer("t = vary(\"order\", \"waste\", pct(5), pct(10))");
    File file = folder.resolve("x.xlsx").toFile();
    assertThat(answer("save \"" + file + "\"")).contains(" t");
    try (XSSFWorkbook workbook = new XSSFWorkbook(file)) {
      FormulaEvaluator engine = workbook.getCreationHelper().createFormulaEvaluator();
      Sheet tab = workbook.getSheet("Session t");
      int row = 0;
      while (tab.getRow(row) == null
          || tab.getRow(row).getCell(1) == null
          || !tab.getRow(row).getCell(1).toString().startsWith("IF(")
              && !tab.getRow(row).getCell(1).getCellType().name().equals("FORMULA")) {
        row++;
      }
      assertThat(engine.evaluate(tab.getRow(row).getCell(1)).getNumberValue()).isEqualTo(105);
      tab.getRow(row).getCell(0).setCellValue(50);
      engine.clearAllCachedResultValues();
      assertThat(engine.evaluate(tab.getRow(row).getCell(1)).getNumberValue()).isEqualTo(150);
    }
  }
}
