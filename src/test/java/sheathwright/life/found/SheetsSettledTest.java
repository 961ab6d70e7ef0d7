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
  void aSheetBeyondThePrice_isMissedBeforeItIsAgreed() {
    String tie = "No more sheets are found than are in the price";
    assertThat(holds(settled(priced()), tie)).isFalse();
    assertThat(holds(settled(priced().with("job", "planned_sheets,3", "planned_sheets,5")), tie))
        .isTrue();
  }

  /** Five of the job's tables are in the price by now; what was agreed are three at $117. */
  @Test
  void onceAgreed_whatWasAgreedCounts() {
    JobText agreed =
        priced()
            .with("job", "planned_sheets,3", "planned_sheets,5")
            .with("job", "credit_usd,80", "credit_usd,10")
            .withTable(
                "agreed",
                """
                item,unit,usd,included,credit_usd,most,words
                sheet,half,117,3,80,4,a sheet
                refasten,place,9,,,,a sheet refastened
                total,,1000,,,,QH-01 issue 1
                """);
    SheetsSettled settled = settled(agreed);
    assertThat(settled.included().value()).isEqualTo(3);
    assertThat(settled.beyond().value()).isEqualTo(1.5);
    assertThat(settled.possible().value()).isZero(); // 4.5 are found, 4 are counted at most
    assertThat(settled.creditEach().value()).isEqualTo(80);
    assertThat(settled.comesTo().value()).isEqualTo(1.5 * 117 + 6 * 9 + 24 * 1.05);
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
