package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Catalog;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.Agreement;
import sheathwright.workbook.page.Samples;

/**
 * The library's values against POI's evaluator, cell by cell. LibreOffice does the same in the
 * gate.
 */
class EnginesAgreeTest {

  /** No formula gives what is solved: RowGuardTest sees that a row says when it is out of date. */
  private static final List<String> SOLVED =
      List.of(
          "bad_sheet_forecast",
          "most_bad_sheets",
          "chance_of_more",
          "included_sheets",
          "ceiling_charge",
          "fixed_deck_price",
          "patch_or_redeck",
          "fail_rate");

  private static Map<String, byte[]> books;

  @BeforeAll
  static void write() {
    books = Samples.all();
  }

  static Iterable<String> names() {
    write();
    return books.keySet();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rules20_26_40_everyFormulaCell_holdsWhatTheEngineRecalculates(String name) {
    Map<String, Object> written = Cells.written(books.get(name));

    // Some documents of a job's life tell values only.
    assertThat(written.isEmpty() && !name.startsWith("life-")).isFalse();
    assertThat(written).doesNotContainValue("#error");
    assertThat(Agreement.differences(written, Cells.byPoi(books.get(name)))).isEmpty();
  }

  @Test
  void everyFunction_isFilledInOneOfTheSamples() {
    assertThat(Samples.tablesToFill().keySet())
        .containsExactlyInAnyOrderElementsOf(
            Catalog.shipped().cards().stream()
                .map(card -> card.name())
                .filter(name -> !SOLVED.contains(name))
                .toList());
  }

  @Test
  void aPlantedWrongValue_isFound() throws IOException {
    byte[] right = books.get("quince-hollow-estimate");
    byte[] wrong = planted(right, "quote_total_usd", 1.0);

    assertThat(Agreement.differences(Cells.written(wrong), Cells.byPoi(wrong)))
        .singleElement()
        .asString()
        .startsWith("What it costs!");
  }

  /** The same file with a wrong value stored beside one formula. */
  static byte[] planted(byte[] file, String name, double tooMuch) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(file);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      CellReference place = new CellReference(workbook.getName(name).getRefersToFormula());
      Cell cell =
          workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
      cell.setCellValue(cell.getNumericCellValue() + tooMuch);
      workbook.write(bytes);
      return bytes.toByteArray();
    }
  }
}
