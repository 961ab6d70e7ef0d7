package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.leveling.target.LevelTarget;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetPoint;
import sheathwright.leveling.target.Targets;
import sheathwright.workbook.book.Cells;

/** A target in a written workbook: numbers and a guard. */
class LevelTargetTest {

  private static final Figure<Length> MIDDLE =
      Figure.input("middle_in", -1, Units.INCH, Limits.between(-12, 12, ""), Source.GIVEN);
  private static final Figure<Length> CAP =
      Figure.input("cap_in", 1.25, Units.INCH, Limits.between(0, 12, ""), Source.GIVEN);

  /** One rafter that is low in the middle by 1 in and at the ridge by 1/2 in: by hand 3/4 in. */
  private static LevelTarget target() {
    return Targets.plane(
        "south",
        List.of(
            TargetPoint.of("eave", ft(0), ft(0), in(0)).tiedIn(in(0)),
            TargetPoint.of("middle", ft(0), ft(6), MIDDLE),
            TargetPoint.of("ridge", ft(0), ft(12), in("-1/2"))),
        TargetObjective.TOTAL,
        Optional.of(CAP));
  }

  private static Cell cell(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  @Test
  void figures_areAsByHand() {
    LevelTarget target = target();
    assertThat(target.buildUps()).extracting(Figure::value).containsExactly(0.0, 0.75, 0.0);
    assertThat(target).hasToString("total 3/4 in, largest 3/4 in, optimal");
  }

  @Test
  void theGuard_saysWhichReadingHasChanged() throws IOException {
    LevelTarget target = target();
    Map<String, Traced> variables = new LinkedHashMap<>();
    variables.put("middle", MIDDLE);
    variables.put("cap", CAP);
    variables.put("total", target.total());
    variables.put("largest", target.largest());
    variables.put("status", target.status());
    byte[] bytes = SessionBook.bytes(variables);
    Samples.keep(Path.of("target", "workbooks", "level-target.xlsx"), bytes);
    try (XSSFWorkbook workbook = Cells.opened(bytes)) {
      String state = "target_plane_of_south_state";
      assertThat(cell(workbook, "total").getNumericCellValue()).isEqualTo(0.75);
      assertThat(said(workbook, state)).isEqualTo("current");
      cell(workbook, "middle").setCellValue(-2);
      assertThat(said(workbook, state)).isEqualTo("solve again: middle, height changed");
      cell(workbook, "middle").setCellValue(-1);
      cell(workbook, "cap").setCellValue(1);
      assertThat(said(workbook, state)).isEqualTo("solve again: cap on build-up changed");
    }
  }

  private static String said(XSSFWorkbook workbook, String name) {
    workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    return cell(workbook, name).getStringCellValue();
  }
}
