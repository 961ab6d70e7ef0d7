package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.LevelSamples;
import sheathwright.workbook.page.Agreement;

/** A leveling plan in a workbook: every cell recalculated by an engine that we did not write. */
class LevelBookTest {

  private static final byte[] BOOK = LevelSamples.book();

  /** The line number of a cell's address. */
  private static final Pattern LINE =
      Pattern.compile("(?<=\\b[A-Z]{1,2}\\$?)(?<!Working!\\$B\\$)(\\d+)\\b");

  @Test
  void everyFormula_holdsWhatTheEngineRecalculates() {
    Map<String, Object> written = Cells.written(BOOK);
    assertThat(written).isNotEmpty().doesNotContainValue("#error");
    assertThat(Agreement.differences(written, Cells.byPoi(BOOK))).isEmpty();
  }

  @Test
  void everyColumnOfALevelingList_hasOneFormula() throws IOException {
    Map<String, String> formulas = Cells.formulas(BOOK);
    try (XSSFWorkbook workbook = Cells.opened(BOOK)) {
      List<? extends Name> columns =
          workbook.getAllNames().stream()
              .filter(name -> !name.getNameName().startsWith("_"))
              .filter(name -> name.getRefersToFormula().matches("'?Leveling'?!.*:.*"))
              .toList();
      assertThat(columns).hasSizeGreaterThan(60);
      for (Name column : columns) {
        assertThat(shapes(column, formulas)).as(column.getNameName()).hasSizeLessThan(2);
      }
    }
  }

  /**
   * A column's formulas, each line number in them that moves written as how far it is from their
   * own.
   */
  private static TreeSet<String> shapes(Name column, Map<String, String> formulas) {
    TreeSet<String> shapes = new TreeSet<>();
    for (CellReference cell :
        new AreaReference(column.getRefersToFormula(), SpreadsheetVersion.EXCEL2007)
            .getAllReferencedCells()) {
      int line = cell.getRow() + 1;
      String formula =
          formulas.get("Leveling!" + CellReference.convertNumToColString(cell.getCol()) + line);
      if (formula != null && formula.matches("('[^']+'!)?\\$[A-Z]+\\$\\d+")) {
        shapes.add("a link to where the value stands in another list");
      } else if (formula != null) {
        shapes.add(
            LINE.matcher(formula)
                .replaceAll(found -> "#" + (Integer.parseInt(found.group(1)) - line)));
      }
    }
    return shapes;
  }
}
