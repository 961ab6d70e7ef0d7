package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.framing.sister.SisterSizes.SisterSize;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.page.JobBooks;

/** What a job says of its framing, worked by hand beside each. */
class FramingTablesTest {

  private static final double DIGITS = 1e-9;
  private static final String DEAD = "dead_psf,10.82,9 psf on the slope x 1.201850 at 8 in 12";

  private static final String LAYERS =
      """
      material,layers,thickness_in,note
      asphalt-shingles,2,,
      plywood,1,1/2,
      """;

  private static JobText cottage() {
    return JobText.demo("mistwater-cottage");
  }

  private static RafterScreening screened(JobText text) {
    return new Estimate(text.job()).framing().rafters().orElseThrow();
  }

  /**
   * ASCE 7-10 Table C3-1 (secondary source): shingles 2 psf a layer, plywood 0.4 psf for each 1/8
   * in; and the rafters, 1.5 × 3.5 ÷ 24 in at 34 pcf (common practice).
   */
  @Test
  void layers_makeTheDeadLoadWithTheRaftersOwnWeight() {
    double slope = 2 * 2 + 4 * 0.4 + 1.5 * 3.5 / 24 / 12 * 34;
    double dead = slope * Math.sqrt(1 + (8 / 12.0) * (8 / 12.0));
    JobText layered = cottage().with("job", DEAD + "\n", "").withTable("layers", LAYERS);
    double asked = screened(layered).deadBending().demand().value();
    double byHand = dead * 24 / 144 * 120 * 120 / 8 / (1.5 * 3.5 * 3.5 / 6);
    assertThat(asked).isCloseTo(byHand, within(byHand * DIGITS));
  }

  @Test
  void aJobWithLayers_takesNoOtherDeadLoad() {
    assertThat(cottage().withTable("layers", LAYERS).problems())
        .singleElement()
        .asString()
        .startsWith("job.csv, line ")
        .contains("layers.csv makes the dead load; take one of the two out");
  }

  /** A 2x4 planed before 1970 (from memory): 1-5/8 by 3-5/8; dressed where nobody measured. */
  @Test
  void anOldStick_hasItsOwnSizeOnceSomebodyMeasuredIt() {
    JobText said = cottage().with("job", "rafter_stock,dressed", "rafter_stock,pre-1970");
    JobText old = said.with("job", "rafter_stock_known,unknown", "rafter_stock_known,measured");
    assertThat(screened(said).snowBending().demand().value())
        .isEqualTo(screened(cottage()).snowBending().demand().value());
    double ratio =
        screened(cottage()).snowBending().demand().value()
            / screened(old).snowBending().demand().value();
    assertThat(ratio).isCloseTo(1.625 * 3.625 * 3.625 / (1.5 * 3.5 * 3.5), within(DIGITS));
  }

  @Test
  void aRippedStick_isRefusedBeforeAnythingIsWritten() {
    JobText ripped = cottage().with("job", "rafter_stock,dressed", "rafter_stock,ripped");
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> JobBooks.of(new Estimate(ripped.job())))
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith("job.csv, line ")
        .hasMessageContaining("rafter_stock")
        .hasMessageContaining("grade");
  }

  /** Under snow the crew's 20 psf is still asked, by itself: 20 + 10.82, over 24 in and 10 ft. */
  @Test
  void snow_doesNotTakeTheRoofLiveLoadAway() {
    double byHand = (20 + 10.82) * 24 / 144 * 120 * 120 / 8 / (1.5 * 3.5 * 3.5 / 6);
    assertThat(screened(cottage()).liveBending().demand().value())
        .isCloseTo(byHand, within(byHand * DIGITS));
  }

  @Test
  void aReport_stopsWhatTheNumbersWouldLet() {
    String split = "report,seen,where,evidence,note\nF-1,split,rafter 3,photo 1,\n";
    JobText gable = JobText.demo("quince-hollow");
    assertThat(new Estimate(gable.job()).framing().mayRepair().plain()).isEqualTo("yes");
    Framing stopped = new Estimate(gable.withTable("reports", split).job()).framing();
    assertThat(stopped.mayRepair().plain()).isEqualTo("no");
    assertThat(stopped.decision().plain()).startsWith("STOP");
  }

  @Test
  void aReportOfSomethingElse_isAskedToSayWhat() {
    String odd = "report,seen,where\nF-1,woodworm,rafter 3\n";
    assertThat(cottage().withTable("reports", odd).problems())
        .containsExactly(
            "reports.csv, line 2, column seen: seen is \"woodworm\"; it must be one of nothing, overloaded, truss, split, cut, bearing-rot, spread-wall, fire-retardant-panel, charred, insects-or-fungus, sagging-ridge, ridge-board, missing-tie, lost-strut, rafter-tail, point-load, heavier-covering, exposed-planks, cathedral-bay, room-below, live-wires, asbestos-or-vermiculite");
  }

  /**
   * The old 2x4 of wood that nobody looked at has E' 1,000,000 × 0.9 wet, F_b' 650 × 1.15 × 1.15 =
   * 860 psi. By 1.5 d³ E a 2x6 takes 232.9 of 271.5 parts: 0.858 × 13,896 in-lb over 7.5625 in³ is
   * 1,576 of 1,504 psi, too much, and the old one 900 + 1,975 in-lb over 3.0625 in³ is 939 of 860
   * psi. A 2x8 takes 533.5 of 572.1 parts: 986 of 1,389 psi and 600 of 860 psi.
   */
  @Test
  void sisters_areRankedByThePriceOfThoseThatPass() {
    var sisters = new Estimate(cottage().job()).framing().sisters().orElseThrow();
    assertThat(sisters.cheapest().plain()).isEqualTo("2x8");
    assertThat(sisters.sizes().stream().map(SisterSize::rank).map(Object::toString))
        .containsExactly("does not pass", "does not pass", "1", "2", "3");
  }
}
