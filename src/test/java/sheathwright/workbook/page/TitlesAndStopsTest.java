package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;

/** What the top of each tab looks like, and what a crew reads first. */
class TitlesAndStopsTest {

  /** Two lines of small words, and the air around them. */
  private static final float TWO_LINES = 34;

  private static final List<String> WIDE_ENOUGH =
      List.of(
          "What we know",
          "What we found",
          "What stops",
          "String lines",
          "Straight rafters",
          "Crew S",
          "Order",
          "Hours",
          "Proof",
          "Self-check",
          "Rafter working");

  private static Estimate estimate() {
    return new Estimate(JobText.demo("tallow-end").job());
  }

  private static XSSFWorkbook opened(byte[] bytes) throws Exception {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  private static List<String> texts(Sheet sheet) {
    List<String> texts = new ArrayList<>();
    DataFormatter shown = new DataFormatter();
    for (Row row : sheet) {
      row.forEach(cell -> texts.add(shown.formatCellValue(cell)));
    }
    return texts;
  }

  @Test
  void aSubtitle_hasTheRoomBesideIt_howeverNarrowTheFirstColumn() throws Exception {
    try (XSSFWorkbook book = opened(JobBook.estimate(estimate()).bytes())) {
      for (String name : WIDE_ENOUGH) {
        assertThat(book.getSheet(name).getRow(1).getHeightInPoints())
            .as(name)
            .isLessThan(TWO_LINES);
      }
    }
  }

  @Test
  void aCrew_readsOnceThatNothingStopsIt_andWhatTheFileIsFor() throws Exception {
    try (XSSFWorkbook book = opened(CrewBook.bytes(estimate()))) {
      assertThat(texts(book.getSheet("Crew S")))
          .filteredOn(text -> text.toLowerCase(java.util.Locale.ROOT).contains("nothing"))
          .filteredOn(text -> text.contains("stops"))
          .singleElement()
          .asString()
          .contains("the worst rafter", "the ridge", "the whole roof");
      assertThat(texts(book.getSheet("start")))
          .contains("9 Candlewright Row, Tallow End", "How this is filled in");
    }
  }

  private static int lineOf(Sheet sheet, String heading) {
    for (Row row : sheet) {
      if (row.getCell(0) != null && shown(row).equals(heading)) {
        return row.getRowNum();
      }
    }
    throw new AssertionError("no heading " + heading);
  }

  private static String shown(Row row) {
    return new DataFormatter().formatCellValue(row.getCell(0));
  }

  @Test
  void aListThatWouldBeCut_beginsOnAPageOfItsOwn() throws Exception {
    try (XSSFWorkbook book = opened(JobBook.estimate(estimate()).bytes())) {
      Sheet rafters = book.getSheet("Straight rafters");
      int marks = lineOf(rafters, "Plane S, the crew's marks: old top below the sister's top");
      assertThat(rafters.getRowBreaks()).contains(marks - 1);
      assertThat(rafters.getPrintSetup().getFitHeight()).isZero();
    }
    Estimate hips = new Estimate(JobText.demo("cinder-brook").job());
    try (XSSFWorkbook book = opened(JobBook.estimate(hips).bytes())) {
      Sheet sheets = book.getSheet("Sheets");
      int decided = lineOf(sheets, "Mark by mark"); // a blank line may stand above it
      assertThat(sheets.getRowBreaks()).containsAnyOf(decided - 1, decided - 2);
    }
  }
}
