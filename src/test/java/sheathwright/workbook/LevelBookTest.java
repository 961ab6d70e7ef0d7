package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** A levelling plan in a workbook: every cell recalculated by an engine that we did not write. */
class LevelBookTest {

  private static final byte[] BOOK = LevelSamples.book();

  @Test
  void everyFormula_holdsWhatTheEngineRecalculates() {
    Map<String, Object> written = Cells.written(BOOK);
    assertThat(written).isNotEmpty().doesNotContainValue("#error");
    assertThat(Agreement.differences(written, Cells.byPoi(BOOK))).isEmpty();
  }

  @Test
  void everyColumnOfALevellingList_hasOneFormula() throws IOException {
    Map<String, String> formulas = Cells.formulas(BOOK);
    try (XSSFWorkbook workbook = Cells.opened(BOOK)) {
      List<Name> columns =
          workbook.getAllNames().stream()
              .filter(name -> name.getRefersToFormula().matches("'?Levelling'?!.*:.*"))
              .map(Name.class::cast)
              .toList();
      assertThat(columns).hasSizeGreaterThan(60);
      for (Name column : columns) {
        assertThat(shapes(column, formulas)).as(column.getNameName()).hasSizeLessThan(2);
      }
    }
  }

  /**
   * A column's formulas that are more than a link, each with its own line's number written as a
   * hash.
   */
  private static TreeSet<String> shapes(Name column, Map<String, String> formulas) {
    List<String> shapes = new ArrayList<>();
    for (CellReference cell :
        new AreaReference(
                column.getRefersToFormula(), org.apache.poi.ss.SpreadsheetVersion.EXCEL2007)
            .getAllReferencedCells()) {
      int line = cell.getRow() + 1;
      String address = "Levelling!" + CellReference.convertNumToColString(cell.getCol()) + line;
      if (!formulas
          .getOrDefault(address, "'Levelling'!$A$1")
          .matches("'Levelling'!\\$[A-Z]+\\$\\d+")) {
        shapes.add(formulas.get(address).replaceAll("(?<=[A-Z])" + line + "\\b", "#"));
      }
    }
    return new TreeSet<>(shapes);
  }
}
