package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Traced;
import sheathwright.job.table.JobText;

/** A small invented job, worked out by hand beside each figure. */
class SmallEstimateTest {

  private static final double DIGITS = 1e-9;

  private static final Estimate ESTIMATE = new Estimate(JobText.small().job());

  @Test
  void estimate_addsThePlanes() {
    assertThat(ESTIMATE.deckArea().value())
        .isCloseTo(20 * 12 + 20 * (12 + 0.5 / 12), within(DIGITS));
  }

  @Test
  void estimate_pricesASheetFromTheTables() {
    double material = 40 + 43 * 0.02; // 43 nails at 16 in, 6/12
    double planned = material * 1.05 + 0.5 * 50 + 50 / 2000.0 * 80; // 69.903
    double extra = material * 1.05 + 1.0 * 50 + 50 / 2000.0 * 80; // 94.903
    assertThat(ESTIMATE.plannedSheet().direct().value()).isCloseTo(planned, within(DIGITS));
    assertThat(ESTIMATE.plannedSheet().quoted().value())
        .isEqualTo(Math.ceil(planned * 1.2 / 0.9)) // 93.204
        .isEqualTo(94);
    assertThat(ESTIMATE.extraSheet().direct().value()).isCloseTo(extra, within(DIGITS));
    assertThat(ESTIMATE.extraSheet().quoted().value())
        .isEqualTo(Math.ceil(extra * 1.2 / 0.9)) // 126.537
        .isEqualTo(127);
  }

  @Test
  void estimate_totalsItsLines() {
    assertThat(ESTIMATE.total().value()).isEqualTo(1000 + 100 + 2 * 94);
    assertThat(amounts(ESTIMATE)).containsExactly("1000", "100", "188");
  }

  /**
   * By hand: each plane has three courses of two sheets and a half; the strip of 1/2 in is too
   * small for places of its own.
   */
  @Test
  void estimate_pricesTheWorstCaseFromTheSheetsThatAreLeft() {
    double left = 2 * 3 * 2.5 - 2;
    assertThat(ESTIMATE.quote().mostExtraSheets().value()).isEqualTo(left);
    assertThat(ESTIMATE.quote().worstCase().value()).isEqualTo(1288 + left * 127);
  }

  @Test
  void estimate_hasNothingLeftToFindWhereEverySheetIsPlanned() {
    Estimate all =
        new Estimate(JobText.small().with("job", "planned_sheets,2,", "planned_sheets,15,").job());
    assertThat(all.quote().mostExtraSheets().value()).isZero();
    assertThat(all.quote().worstCase().value()).isEqualTo(all.total().value());
  }

  @Test
  void estimate_tiesOutWherePricesMakeSense() {
    assertThat(failing(ESTIMATE)).singleElement().asString().startsWith("Somebody looked at the");
  }

  /** By hand, as above: a sheet in the price sells for $94, and the old deck has 15. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "credit_usd,50,|credit_usd,94.01,|job.csv, line 14, column value: credit_usd: $94.01/sheet is given, but a sheet in the price costs $94.00/sheet; no more comes back than was paid: give at most that",
        "planned_sheets,2,|planned_sheets,16,|job.csv, line 13, column value: planned_sheets: 16 is given, but the old deck has 15 sheets by the bill rule half; no more is ever found: give at most that"
      })
  void estimate_refusesWhatNoQuoteMeans(String text, String spoiled, String said) {
    Job job = JobText.small().with("job", text, spoiled).job();
    assertThatThrownBy(() -> new Estimate(job)).hasMessage(said);
  }

  @Test
  void estimate_givesAsMuchBackAsWasPaid() {
    JobText generous = JobText.small().with("job", "credit_usd,50,", "credit_usd,94,");
    assertThat(failing(new Estimate(generous.job()))).hasSize(1);
  }

  /** By hand: $1,000, $100 and two sheets of $94 are $1,288. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "deposit,,100,now/last,,1188,then|",
        "deposit,,100,now/last,,1188.01,then|the payments come to $1,288.01, but the owner pays $1,288.00; the last would be $1,188.00",
        "deposit,10,,now/last,,1159.20,then|",
        "deposit,10,,now/last,,5,then|the payments come to $133.80, but the owner pays $1,288.00; the last would be $1,159.20",
        "deposit,,1300,now/last,5,,then|the payments come to $1,364.40, but the owner pays $1,288.00; those before the last leave nothing for it: make them smaller"
      })
  void payments_comeToWhatIsQuoted(String lines, String said) {
    Job job =
        JobText.small()
            .withTable("stages", "stage,part_pct,usd,when\n" + lines.replace("/", "\n") + "\n")
            .job();
    if (said == null) {
      assertThat(new Estimate(job).total().value()).isEqualTo(1288);
    } else {
      assertThatThrownBy(() -> new Estimate(job))
          .hasMessageStartingWith("stages.csv, line 3, column ")
          .hasMessageEndingWith(said);
    }
  }

  @Test
  void estimate_knowsNothingOfRaftersThatAreNotGiven() {
    assertThat(ESTIMATE.framing().rafters()).isEmpty();
    assertThat(ESTIMATE.framing().checks()).isEmpty();
    assertThat(ESTIMATE.framing().decision().plain()).isEqualTo("not inspected: nobody may say");
    assertThat(ESTIMATE.framing().mayRepair().plain()).isEqualTo("no");
    assertThat(ESTIMATE.framing().mayBeSigned().holds()).isFalse();
    assertThat(ESTIMATE.rafterLeveling()).isEmpty();
  }

  @Test
  void estimate_doesNotCallRaftersStrongThatSomebodyOnlyLookedAt() {
    String looked = "report,seen,where\nF-1,nothing,all of the attic\n";
    Framing framing = new Estimate(JobText.small().withTable("reports", looked).job()).framing();
    assertThat(framing.decision().plain()).contains("strength was not checked");
    assertThat(framing.mayRepair().plain()).isEqualTo("no");
    assertThat(framing.mayBeSigned().holds()).isTrue();
  }

  private static List<String> failing(Estimate estimate) {
    return estimate.ties().stream()
        .filter(tie -> !tie.holds().holds())
        .map(Estimate.Tie::what)
        .toList();
  }

  private static List<String> amounts(Estimate estimate) {
    return estimate.quote().roll().cellsOf("amount_usd").stream().map(Traced::plain).toList();
  }
}
