package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;

/** What the work cost against what it sold for, on a page of the office's workbook alone. */
class LeakPageTest {

  private static final String AGREED =
      """
      item,unit,usd,included,credit_usd,most,words
      sheet,half,117.00,3,80.00,80,Deck sheet taken out and replaced
      refasten,place,8.00,,,,A sheet refastened
      relief,ft,1.05,,,,A tight joint sawn open
      scab,piece,22.00,,,,A scab of 48 in under an end
      line-1,job,15980.00,1,,,Roof covering
      line-2,job,165.00,1,,,Permit
      line-3,sheet,96.00,3,,,Deck sheets taken out and replaced
      total,,16433.00,,,,The agreed sum
      stage-1,,16433.00,,,,all
      """;

  private static final String ORDERS =
      """
      order,on,usd,days,status,approved_by,approved_how,approved_on
      01,2027-07-06,1281.40,1,approved,Tomas Ellingworth-Vane,signed,2027-07-06
      """;

  private static final String ORDER_LINES =
      """
      order,item,unit,quantity,usd,marks
      01,sheet,half,6,702.00,"R-4: 1, R-5: 1, R-6: 1, R-7: 1, R-8: 1, R-9: 1"
      01,refasten,place,31,248.00,L-1: 31
      01,relief,ft,148,155.40,T-1: 148
      01,scab,piece,8,176.00,U-1: 8
      """;

  /** Just as long as the office reckons: 9 × 0.90, 31 × 0.12, 148 minutes, 8 × 0.30. */
  private static final String LOG =
      """
      day,task,quantity,hours,people,visit
      2027-07-06,sheet,9,8.1,4,1
      2027-07-06,refasten,31,3.72,4,1
      2027-07-06,relief,148,2.466667,4,1
      2027-07-06,scab,8,2.4,4,1
      """;

  private static JobText job() {
    return JobText.opened("kettle-reach")
        .withTable("agreed", AGREED)
        .withTable("orders", ORDERS)
        .withTable("order_lines", ORDER_LINES);
  }

  /**
   * By an independent script: direct cost $1,206.60, with overhead and margin $1,617.94, billed 3 ×
   * 96 + 1,281.40 = $1,569.40: $48.54. The job buys a nail of a refastened sheet at $0.020 where
   * the script has $0.016, and ten nails at $0.026 for each scab, of which the script counts the
   * wood.
   */
  @Test
  void whatWasGivenAway_isTold() throws Exception {
    Estimate estimate = new Estimate(job().withTable("log", LOG).job());
    try (XSSFWorkbook workbook = Cells.opened(JobBook.estimate(estimate).bytes())) {
      assertThat(workbook.getSheet("Cost against sold")).isNotNull();
      assertThat(HomeCells.number(workbook, "deck_sold_usd")).isEqualTo(1_569.40);
      assertThat(HomeCells.number(workbook, "given_away_to_cents_usd"))
          .isCloseTo(
              48.54 + (31 * 19 * 0.004 + 8 * 10 * 0.026) * 1.065 * 1.18 / 0.88, within(0.02));
    }
  }

  @Test
  void withoutALog_thereIsNoSuchPage() throws Exception {
    try (XSSFWorkbook workbook =
        Cells.opened(JobBook.estimate(new Estimate(job().job())).bytes())) {
      assertThat(workbook.getSheet("Cost against sold")).isNull();
    }
  }
}
