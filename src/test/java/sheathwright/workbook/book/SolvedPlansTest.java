package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.page.SessionBook;

/** Solved values in a written workbook: a guard says whether they still hold. */
class SolvedPlansTest {

  private static final Figure<Length> EAVE =
      Figure.input("eave_ft", 24, Units.FOOT, Limits.between(1, 500, ""), Source.GIVEN);

  private static byte[] session() {
    Plane south = Plane.rectangle("south", EAVE, ft(12));
    Plane porch = Plane.outline("porch", "0 0, 10 0, 10 6, 0 8");
    DeckLayout deck =
        Layouts.together(
            Layouts.layout(south, Supports.every(in(24))),
            Layouts.layout(porch, Supports.every(in(16), in(0))));
    Map<String, Traced> variables = new LinkedHashMap<>();
    variables.put("eave", EAVE);
    variables.put("sheets", deck.sheets());
    variables.put("porchArea", porch.area());
    variables.put("twice", deck.sheets().plus(deck.sheets()));
    return SessionBook.bytes(variables);
  }

  private static Cell cell(XSSFWorkbook workbook, String name) {
    Name defined = workbook.getName(name);
    CellReference at = new CellReference(defined.getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  private static String state(XSSFWorkbook workbook, String name) {
    workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    return cell(workbook, name).getStringCellValue();
  }

  @Test
  void aSolvedValue_isWrittenAsANumber_andWhatIsMadeOfItAsAFormula() throws IOException {
    byte[] bytes = session();
    Samples.keep(Path.of("target", "workbooks", "solved-session.xlsx"), bytes);
    try (XSSFWorkbook workbook = Cells.opened(bytes)) {
      assertThat(cell(workbook, "sheets").getCellType())
          .isEqualTo(org.apache.poi.ss.usermodel.CellType.NUMERIC);
      assertThat(cell(workbook, "twice").getCellFormula()).contains("sheets");
      assertThat(cell(workbook, "porch_area").getNumericCellValue()).isEqualTo(70);
    }
  }

  @Test
  void theGuard_saysCurrent_untilAnInputIsEdited_andNamesIt() throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(session())) {
      assertThat(state(workbook, "layout_of_south_porch_state")).isEqualTo("current");
      assertThat(state(workbook, "porch_outline_state")).isEqualTo("current");
      cell(workbook, "eave").setCellValue(25);
      assertThat(state(workbook, "layout_of_south_porch_state"))
          .isEqualTo("solve again: eave of south changed");
      assertThat(state(workbook, "porch_outline_state")).isEqualTo("current");
      cell(workbook, "eave").setCellValue(24);
      assertThat(state(workbook, "layout_of_south_porch_state")).isEqualTo("current");
    }
  }

  @Test
  void theGuard_seesWordsToo() throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(session())) {
      cell(workbook, "porch_corners_ft").setCellValue("0 0, 10 0, 10 7, 0 8");
      assertThat(state(workbook, "porch_outline_state"))
          .isEqualTo("solve again: corners of porch changed");
      assertThat(state(workbook, "layout_of_south_porch_state"))
          .isEqualTo("solve again: corners of porch changed");
    }
  }
}
