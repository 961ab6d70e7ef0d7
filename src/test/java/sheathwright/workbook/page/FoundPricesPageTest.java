package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.home.HomeBook;

/** Prices of what may be found besides: built up for the office, told to the homeowner. */
class FoundPricesPageTest {

  private static final Estimate ESTIMATE =
      new Estimate(
          JobText.demo("quince-hollow")
              .withLines("prices", "clip,0.23719,", "sister_nail,0.026,")
              .withTable("lumber", "size,length_ft,usd\n2x4,8,4.10\n")
              .withLines("rates", "clip_h,0.01,", "block_ft_h,0.05,")
              .job());

  @Test
  void bothBooks_areWhatPoiRecalculates() {
    for (byte[] book : List.of(JobBook.estimate(ESTIMATE).bytes(), HomeBook.of(ESTIMATE).bytes())) {
      assertThat(Agreement.differences(Cells.written(book), Cells.byPoi(book))).isEmpty();
    }
  }

  @Test
  void theOffice_seesHowAPriceIsBuiltUp() throws Exception {
    assertThat(texts(JobBook.estimate(ESTIMATE).bytes()))
        .contains("A bare edge blocked, each ft", "A bare edge blocked", "A panel clip");
  }

  @Test
  void theHomeowner_readsThePriceAndNothingOfItsMaking() throws Exception {
    byte[] quote = HomeBook.of(ESTIMATE).bytes();
    assertThat(texts(quote)).contains("A bare edge blocked, each ft", "A panel clip, each piece");
    assertThat(numbers(quote)).contains(3.9, 1.0).doesNotContain(4.10, 0.23719);
  }

  private static List<String> texts(byte[] book) throws Exception {
    List<String> texts = new ArrayList<>();
    each(
        book,
        cell -> {
          if (cell.getCellType() == CellType.STRING) {
            texts.add(cell.getStringCellValue());
          }
        });
    return texts;
  }

  private static List<Double> numbers(byte[] book) throws Exception {
    List<Double> numbers = new ArrayList<>();
    each(
        book,
        cell -> {
          if (cell.getCellType() == CellType.NUMERIC) {
            numbers.add(cell.getNumericCellValue());
          }
        });
    return numbers;
  }

  private static void each(byte[] book, java.util.function.Consumer<Cell> action) throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          row.forEach(action);
        }
      }
    }
  }
}
