package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.loads.RoofMaterial;
import sheathwright.workbook.page.FillBook;
import sheathwright.workbook.page.Samples;

/** A drop-down of more words than a drop-down can hold. */
class WordListsTest {

  @Test
  void longDropDown_readsItsWordsFromARange() throws Exception {
    byte[] book =
        FillBook.bytes(
            Samples.filled("layer_load", "material,layers\nasphalt-shingles,2\ncement-tile,1\n"));
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      XSSFSheet filled = workbook.getSheet("Filled");
      assertThat(filled.getDataValidations())
          .extracting(validation -> validation.getValidationConstraint().getFormula1())
          .filteredOn("material_words"::equals)
          .hasSize(1); // one for the column
      assertThat(words(workbook, "material_words")).isEqualTo(Choice.wordsOf(RoofMaterial.class));
    }
  }

  private static List<String> words(XSSFWorkbook workbook, String name) {
    AreaReference area =
        new AreaReference(
            workbook.getName(name).getRefersToFormula(), workbook.getSpreadsheetVersion());
    List<String> words = new ArrayList<>();
    for (CellReference cell : area.getAllReferencedCells()) {
      words.add(
          workbook
              .getSheet(cell.getSheetName())
              .getRow(cell.getRow())
              .getCell(cell.getCol())
              .getStringCellValue());
    }
    return words;
  }
}
