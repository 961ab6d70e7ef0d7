package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sheathwright.job.table.JobText;

/** The demo job of the simple gable: invented figures, worked out by hand beside each. */
class GableEstimateTest {

  private static final double DIGITS = 1e-9;

  private static final Estimate GABLE = new Estimate(JobText.demo("quince-hollow").job());

  @Test
  void gable_hasTwoPlanes() {
    // 42 ft of eave, 16 ft 9-1/4 in of slope: 1,408.75 sq ft
    assertThat(GABLE.deckArea().value())
        .isCloseTo(2 * 42 * (16 + 9.25 / 12), within(DIGITS))
        .isCloseTo(1408.75, within(DIGITS));
  }

  @Test
  void gable_quotesNinetySixForAPlannedSheetAndMoreForAnExtraOne() {
    double material = 38.50 * 1.05 + 43 * 0.02; // 41.285
    double tip = 45 / 2000.0 * 78; // 1.755
    double planned = (material * 1.065 + 0.55 * 46 + tip) * 1.18 / 0.88; // 95.2361
    double extra = (material * 1.065 + 0.90 * 46 + tip) * 1.18 / 0.88; // 116.8247
    assertThat(GABLE.nailsInASheet().value()).isEqualTo(43);
    assertThat(GABLE.plannedSheet().exact().value()).isCloseTo(planned, within(DIGITS));
    assertThat(GABLE.plannedSheet().quoted().value()).isEqualTo(96);
    assertThat(GABLE.extraSheet().exact().value()).isCloseTo(extra, within(DIGITS));
    assertThat(GABLE.extraSheet().quoted().value()).isEqualTo(117);
  }

  @Test
  void gable_costsTheHomeownerItsThreeLines() {
    assertThat(GABLE.total().value()).isEqualTo(10_420 + 165 + 3 * 96).isEqualTo(10_873);
  }

  /**
   * The rafters by hand: 875 psi in bending (NDS 2018 Table 4A, spruce-pine-fir no. 2, secondary
   * source) × 1.25 for a roof live load × 1.3 for a 2x6 × 1.15 for many like ones; 30 psf on 16 in.
   */
  @Test
  void gable_hasRaftersWithinTheScreeningLimits() {
    double load = 30 * 16 / 144.0; // lb/in
    double stress = load * Math.pow(14 * 12, 2) / 8 / (1.5 * 5.5 * 5.5 / 6);
    double allowed = 875 * 1.25 * 1.3 * 1.15;
    assertThat(GABLE.framing().rafters().orElseThrow().liveBending().ratio().value())
        .isCloseTo(stress / allowed, within(DIGITS)) // 0.951
        .isLessThan(1);
    assertThat(GABLE.framing().decision().plain()).isEqualTo("within the screening limits");
  }

  /**
   * IBC Table 1604.3 and NDS 3.5.2 by hand: L/120 under 20 psf and twice 10 psf of dead load, which
   * creeps in wood that was put up green, as it is taken to be where nobody knows.
   */
  @Test
  void gable_stopsWhereNobodyKnowsThatItsRaftersWereDry() {
    JobText known = JobText.demo("quince-hollow");
    Estimate unknown =
        new Estimate(
            known
                .with(
                    "job",
                    "seasoned,yes,S-DRY on the stamp: dry when it was planed; invented\n",
                    "")
                .job());
    double sag =
        5
            * (20 + 2 * 10)
            * 16
            / 144.0
            * Math.pow(14 * 12, 4)
            / (384 * 1.4e6 * 1.5 * 5.5 * 5.5 * 5.5 / 12);
    double ratio = sag / (14 * 12 / 120.0);
    assertThat(ratio).isCloseTo(1.130, within(0.001));
    assertThat(unknown.framing().rafters().orElseThrow().totalDeflection().ratio().value())
        .isCloseTo(ratio, within(DIGITS));
    assertThat(unknown.framing().decision().plain()).startsWith("STOP");
    assertThat(GABLE.framing().rafters().orElseThrow().totalDeflection().ratio().value())
        .isCloseTo(ratio * 35 / 40, within(DIGITS));
  }

  @Test
  void gable_tiesOut() {
    assertThat(GABLE.ties())
        .hasSizeGreaterThan(5)
        .allSatisfy(tie -> assertThat(tie.holds().holds()).as(tie.what()).isTrue());
  }

  @Test
  void gable_hasNothingToLevel() {
    assertThat(GABLE.rafterLeveling()).isEmpty();
  }
}
