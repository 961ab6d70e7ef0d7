package sheathwright.job.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;

/** What may be found besides, at the rates of the invented demo firm; each price made by hand. */
class FoundPricesTest {

  private static final String[] PRICES = {"cover_metal,3.50,", "clip,0.24,", "sister_nail,0.026,"};
  private static final String LUMBER = "size,length_ft,usd\n2x4,8,4.10\n";
  private static final String[] RATES = {
    "refasten_nails,19,",
    "refasten_h,0.12,",
    "relief_ft_h,0.016666666666666666,",
    "block_ft_h,0.05,",
    "scab_h,0.30,",
    "clip_h,0.01,",
    "lift_h,0.45,",
    "cover_h,0.15,"
  };

  private static JobText full() {
    return JobText.demo("quince-hollow")
        .withLines("prices", PRICES)
        .withLines("rates", RATES)
        .withTable("lumber", LUMBER);
  }

  private static FoundPrice price(JobText job, FoundUnit unit) {
    return new Estimate(job.job())
        .found().stream().filter(price -> price.unit() == unit).findFirst().orElseThrow();
  }

  /**
   * Material × 1.065 + hours × 46, then × 1.18 / 0.88, up. refasten: 19 × 0.02 = 0.38. block: 4.10
   * / 8 + 2 × 0.026 = 0.5645. scab: 4.10 / 2 + 10 × 0.026 = 2.31. lift: the schedule's 43 nails ×
   * 0.02 = 0.86. cover: 3.50 + 8 × 0.02 = 3.66.
   */
  @ParameterizedTest
  @CsvSource({
    "REFASTEN, 0.38, 0.12, 5.9247, 8",
    "RELIEF, 0, 0.0166667, 0.7667, 1.05",
    "BLOCK, 0.5645, 0.05, 2.9012, 3.90",
    "SCAB, 2.31, 0.30, 16.2601, 22",
    "CLIP, 0.24, 0.01, 0.7156, 1",
    "LIFT, 0.86, 0.45, 21.6159, 29",
    "COVER, 3.66, 0.15, 10.7979, 15"
  })
  void found_isThePriceListByHand(
      FoundUnit unit, double material, double hours, double direct, double quoted) {
    assertThat(material * 1.065 + hours * 46).isCloseTo(direct, within(0.00006));
    FoundPrice price = price(full(), unit);
    assertThat(price.direct().value()).isCloseTo(direct, within(0.00006));
    assertThat(price.quoted().value()).isEqualTo(quoted);
  }

  @Test
  void found_goesUpToTheStepsOfTheOffice() {
    JobText steps = full().withLines("rates", "round_usd,5,", "round_foot_usd,0.25,");
    assertThat(price(steps, FoundUnit.REFASTEN).quoted().value()).isEqualTo(10);
    assertThat(price(steps, FoundUnit.BLOCK).quoted().value()).isEqualTo(4);
  }

  /**
   * Sheets of $95.2361 and $116.8247, sisters of $117.9081 and shims of $16.8485 (the list by hand)
   * go up to the next $5 as well.
   */
  @Test
  void everyPrice_goesUpToTheStepOfTheOffice() {
    Estimate gable =
        new Estimate(JobText.demo("quince-hollow").withLines("rates", "round_usd,5,").job());
    assertThat(gable.plannedSheet().quoted().value()).isEqualTo(100);
    assertThat(gable.extraSheet().quoted().value()).isEqualTo(120);
    Estimate cottage =
        new Estimate(JobText.demo("mistwater-cottage").withLines("rates", "round_usd,5,").job());
    assertThat(cottage.rafterLeveling().orElseThrow().sisterPrice().quoted().value())
        .isEqualTo(120);
    assertThat(cottage.rafterLeveling().orElseThrow().shimPrice().quoted().value()).isEqualTo(20);
    assertThat(cottage.ties())
        .filteredOn(tie -> tie.what().contains("up to the step"))
        .singleElement()
        .matches(tie -> tie.holds().holds());
  }

  @Test
  void found_isNothingWhereNothingIsGiven() {
    assertThat(new Estimate(JobText.demo("quince-hollow").job()).found()).isEmpty();
  }

  @Test
  void found_isWhatTheTablesMakeAndNoMore() {
    JobText one = JobText.demo("quince-hollow").withLines("rates", "relief_ft_h,0.02,");
    assertThat(new Estimate(one.job()).found())
        .extracting(FoundPrice::unit)
        .containsExactly(FoundUnit.RELIEF);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rates | clip_h,0.01, | prices.csv: clip is missing: Panel clip, from 0 to 1000 $/piece; without it \"clip\" has no price",
        "prices | clip,0.24, | rates.csv: clip_h is missing: Set a clip, from 0 to 40 h/piece; without it \"clip\" has no price",
        "rates | refasten_h,0.12, | rates.csv: refasten_nails is missing: Nails to refasten a sheet, a whole number from 0 to 500 nails/piece; without it \"refasten\" has no price",
      })
  void aUnitThatIsBegun_isPricedWhole(String table, String line, String problem) {
    assertThat(JobText.demo("quince-hollow").withLines(table, line).problems())
        .containsExactly(problem);
  }

  @Test
  void scabsAndBlocks_wantTheirStickAndNails() {
    assertThat(JobText.demo("quince-hollow").withLines("rates", "scab_h,0.3,").problems())
        .hasSize(2)
        .contains(
            "lumber.csv: a 2x4 of 8 ft is needed for \"scab\" and is not in it; add a line with size 2x4, length_ft 8 and its usd")
        .anyMatch(problem -> problem.startsWith("prices.csv: sister_nail is missing"));
  }
}
