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

  /** A 2x4 planed before 1970 (from memory): 1-5/8 by 3-5/8. */
  @Test
  void anOldStick_hasItsOwnSize() {
    JobText old = cottage().with("job", "rafter_stock,dressed", "rafter_stock,pre-1970");
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
            "reports.csv, line 2, column seen: seen is \"woodworm\"; it must be one of nothing, truss, split, cut, bearing-rot, spread-wall");
  }

  /** 1.5 × 5.5³ of the sister against 1.5 × 3.5³, both of 1,400,000 psi: the cheapest is a 2x6. */
  @Test
  void sisters_areRankedByThePriceOfThoseThatPass() {
    var sisters = new Estimate(cottage().job()).framing().sisters().orElseThrow();
    assertThat(sisters.cheapest().plain()).isEqualTo("2x6");
    assertThat(sisters.sizes().stream().map(SisterSize::rank).map(Object::toString))
        .containsExactly("does not pass", "1", "2", "3", "4");
  }
}
