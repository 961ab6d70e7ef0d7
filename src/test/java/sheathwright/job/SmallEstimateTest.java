package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
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
        new Estimate(JobText.small().with("job", "planned_sheets,2,", "planned_sheets,99,").job());
    assertThat(all.quote().mostExtraSheets().value()).isZero();
    assertThat(all.quote().worstCase().value()).isEqualTo(all.total().value());
  }

  @Test
  void estimate_tiesOutWherePricesMakeSense() {
    assertThat(failing(ESTIMATE)).singleElement().asString().startsWith("Somebody looked at the");
  }

  @Test
  void estimate_noticesACreditAboveThePrice() {
    JobText generous = JobText.small().with("job", "credit_usd,50,", "credit_usd,94.01,");
    assertThat(failing(new Estimate(generous.job())))
        .hasSize(2)
        .anyMatch(what -> what.contains("credit"));
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
