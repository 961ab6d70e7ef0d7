package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.home.HomeBook;

/** The bill's rule in the homeowner's file: words and the most that it can come to. */
class BillRuleTest {

  /**
   * By hand: 20 by 12 ft and 20 by 12 ft 1/2 in are 15 by halves and 18 places; 480.83 sq ft are
   * 15.03 sheets, so 15.25. $1,288 holds two of them, and each one more is $127.
   */
  @ParameterizedTest
  @CsvSource({
    "half, 2939, One sheet is a piece of the deck of over 16 square feet",
    "place, 3320, 'One sheet is any one piece of the deck that lies there, whole or cut.'",
    "area, 2970.75, One sheet is 32 square feet of the deck"
  })
  void wordsAndWorstCase_followTheRule(String rule, double worst, String words) throws Exception {
    Estimate estimate =
        new Estimate(JobText.small().withLines("job", "bill_rule," + rule + ",").job());
    byte[] file = HomeBook.of(estimate).bytes();
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      assertThat(HomeCells.number(workbook, "at_most_usd")).isEqualTo(worst);
      assertThat(HomeCells.texts(workbook)).anyMatch(text -> text.startsWith(words));
    }
  }
}
