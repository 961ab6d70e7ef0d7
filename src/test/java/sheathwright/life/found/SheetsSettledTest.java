package sheathwright.life.found;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.page.JobBooks;

/** What is found against what is sold. */
class SheetsSettledTest {

  private static final String FIVE =
      """
      mark,plane,finding,sheet,joint_ft
      1,A,rot,A-1-2,
      2,A,rot,A-1-3,
      3,A,rot,A-1-4,
      4,B,rot,B-5-3,
      5,A,rot,A-4-6,
      6,A,loose,A-2-1,
      7,A,loose,A-2-2,
      8,A,loose,A-2-3,
      9,A,loose,A-2-4,
      10,A,loose,A-2-5,
      11,A,loose,A-2-6,
      12,A,tight,A-3-1,24
      """;

  private static JobText five() {
    return JobText.demo("quince-hollow").withTable("marks", FIVE);
  }

  private static JobText priced() {
    return five()
        .withLines("rates", "refasten_nails,19,", "refasten_h,0.12,", "relief_ft_h,0.0166667,");
  }

  private static SheetsSettled settled(JobText job) {
    Estimate estimate = new Estimate(job.job());
    return new SheetsSettled(estimate, FoundWork.of(estimate));
  }

  private static boolean holds(SheetsSettled settled, String tie) {
    return settled.ties().stream()
        .filter(each -> each.what().startsWith(tie))
        .findFirst()
        .orElseThrow()
        .holds()
        .holds();
  }

  /** Three are included; $117 a sheet, $8 a place, $1.05 a foot: the plan's own check numbers. */
  @ParameterizedTest
  @CsvSource({"place, 5, 2, 60, 55, 307.20", "half, 4.5, 1.5, 50, 45.5, 248.70"})
  void whatIsFoundBeyondThePrice_comesToTheCheckNumbers(
      String rule, double found, double beyond, double most, double possible, double comesTo) {
    SheetsSettled settled = settled(priced().withLines("job", "bill_rule," + rule + ","));
    assertThat(settled.found().value()).isEqualTo(found);
    assertThat(settled.beyond().value()).isEqualTo(beyond);
    assertThat(settled.possible().value()).isEqualTo(possible).isEqualTo(most - found);
    assertThat(settled.comesTo().value()).isEqualTo(comesTo);
    assertThat(settled.credit().value()).isZero();
  }

  /** Three in the price, none marked: three times $80 come back if no more is found. */
  @Test
  void whatIsNotNeeded_comesBack() {
    SheetsSettled settled = settled(JobText.demo("quince-hollow"));
    assertThat(settled.notNeeded().value()).isEqualTo(3);
    assertThat(settled.credit().value()).isEqualTo(240);
    assertThat(settled.ties()).isEmpty();
  }

  @Test
  void aSheetBeyondThePrice_asksForALineOfAChangeOrder() {
    String tie = "Every sheet found beyond the price";
    assertThat(holds(settled(priced()), tie)).isFalse();
    String lines = "order,item,unit,quantity,usd,marks\nCO-1,sheet,sheet,%s,117,\"1, 2\"\n";
    String orders = "order,on,status\nCO-1,2027-05-20,%s\n";
    String agreed = "item,unit,usd,included,credit_usd,most,words\nsheet,half,117,3,80,,a sheet\n";
    JobText sold = priced().withTable("agreed", agreed);
    JobText ordered = sold.withTable("orders", orders.formatted("offered"));
    assertThat(holds(settled(ordered.withTable("order_lines", lines.formatted("1.5"))), tie))
        .isTrue();
    assertThat(holds(settled(ordered.withTable("order_lines", lines.formatted("1"))), tie))
        .isFalse();
    JobText refused =
        sold.withTable("orders", orders.formatted("refused"))
            .withTable("order_lines", lines.formatted("1.5"));
    assertThat(holds(settled(refused), tie)).isFalse();
  }

  @Test
  void marksAndMap_agree() {
    SheetsSettled settled = settled(priced());
    assertThat(holds(settled, "The places that the marks have replaced")).isTrue();
    assertThat(holds(settled, "Marks without an action: none")).isTrue();
    assertThat(holds(settled, "Everything that the marks lead to has a price")).isTrue();
  }

  /** Never $0: from the quote on, what has no price is a problem; before, it is said. */
  @Test
  void whatHasNoPrice_isAProblemBeforeItIsQuoted() {
    SheetsSettled settled = settled(five());
    assertThat(settled.unpriced())
        .extracting(Object::toString)
        .containsExactly(
            "rates.csv: refasten_nails is missing: Nails to refasten a sheet, a whole number from 0 to 500 nails/piece;"
                + " without it \"refasten\" has no price, and it is what mark 6, mark 7, mark 8 and 3 more lead to",
            "rates.csv: refasten_h is missing: Refasten a sheet, from 0 to 40 h/piece;"
                + " without it \"refasten\" has no price, and it is what mark 6, mark 7, mark 8 and 3 more lead to",
            "rates.csv: relief_ft_h is missing: Saw a foot of a tight joint, from 0 to 40 h/ft;"
                + " without it \"relief\" has no price, and it is what mark 12 leads to");
    assertThat(holds(settled, "Everything that the marks lead to has a price")).isFalse();
    assertThatThrownBy(() -> JobBooks.of(new Estimate(five().job())))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("relief_ft_h is missing");
    assertThat(settled.mustBePriced()).isTrue();
    assertThat(settled(five().withLines("job", "stage,surveyed,")).mustBePriced()).isFalse();
  }
}
