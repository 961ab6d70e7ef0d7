package sheathwright.job.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.life.supply.Supply;

/** The demo jobs' sites, counted from the codes' printed rows and worked out by hand. */
class DemoSitesTest {

  private static Estimate demo(String name) {
    return new Estimate(Job.in(Path.of("demo-data", name)));
  }

  private static double ordered(Estimate estimate) {
    Traced needed = new Supply(estimate, Map.of()).order().cellsOf("needed").get(1);
    return ((Figure<?>) needed).value();
  }

  /**
   * IRC 2018, item 30: 6 and 12 in, 6 in near edges under 130 mph; on 16 in 2 × 9 + 5 × 5 nails,
   * near edges 7 × 9, all of three sheets ordered so. Wind by ASCE 7-16, a gable of 6 in 12: 0.6 ×
   * 0.00256 × 0.70059 × 0.85 × 115² is 12.10 psf, at 12.5 ft in B 0.82 of it; 1.5, 2.5 and 3.0 with
   * 0.18 of the inside. A nail holds 1380 × 0.42^2.5 × 0.131 × (2.5 − 15/32) × 1.6 lb.
   */
  @Test
  void quinceHollow_isNailedByTheCodeOf2018() {
    Estimate quince = demo("quince-hollow");
    DeckNailing nailing = quince.site().nailing();
    assertThat(nailing.inASheet().value()).isEqualTo(43);
    assertThat(nailing.inASheetNearEdges().value()).isEqualTo(63);
    assertThat(ordered(quince)).isEqualTo(3 * 63);
    double velocity = 0.6 * 0.00256 * 0.70059 * 0.85 * 115 * 115 * 0.82;
    double nail = 1380 * Math.pow(0.42, 2.5) * 0.131 * (2.5 - 15.0 / 32) * 1.6;
    assertHolds(quince, RoofArea.FIELD, velocity * 1.68, nail / (12 * 16 / 144.0));
    assertHolds(quince, RoofArea.EDGES, velocity * 2.68, nail / (6 * 16 / 144.0));
    assertHolds(quince, RoofArea.CORNERS, velocity * 3.18, nail / (6 * 16 / 144.0));
  }

  /**
   * IRC 2021, item 31: 6 in everywhere, 63 nails. A sheet costs 38.50 with 5 % of waste and 63
   * nails of 2 cents: 118 dollars on the day, 96 foreseen.
   */
  @Test
  void cinderBrook_isNailedByTheCodeOf2021() {
    Estimate cinder = demo("cinder-brook");
    assertThat(cinder.nailsInASheet().value()).isEqualTo(63);
    double material = 38.50 * 1.05 + 63 * 0.02;
    double extra = (material * 1.065 + 0.90 * 46 + 45 / 2000.0 * 78) * 1.18 / 0.88;
    assertThat(cinder.extraSheet().exact().value()).isCloseTo(extra, within(1e-9)); // 117.40
    assertThat(cinder.extraSheet().quoted().value()).isEqualTo(118);
    assertThat(cinder.plannedSheet().quoted().value()).isEqualTo(96);
  }

  /**
   * IRC 2021 at 130 mph in Exposure C, over 110 mph: 4 in on supports near edges; on 24 in 2 × 9 +
   * 3 × 9 nails, near edges 2 × 9 + 3 × 13. Wind at 11 ft in C, a gable of 4 in 12: 2.0, 3.0 and
   * 3.6 with 0.18; clips by two screws of 71.6 lb over 16 in of cover, 24 in at most by the maker.
   */
  @Test
  void tallowEnd_standsInHighWind() {
    Estimate tallow = demo("tallow-end");
    DeckNailing nailing = tallow.site().nailing();
    assertThat(nailing.inASheet().value()).isEqualTo(45);
    assertThat(nailing.inASheetNearEdges().value()).isEqualTo(57);
    assertThat(ordered(tallow)).isEqualTo(8 * 57);
    double velocity = 0.6 * 0.00256 * 0.70059 * 0.85 * 130 * 130 * 1.21;
    Covering covering = tallow.site().covering();
    assertThat(covering.used(RoofArea.FIELD).value()).isEqualTo(24);
    assertThat(covering.used(RoofArea.EDGES).value())
        .isEqualTo(Math.floor(2 * 71.6 / (velocity * 3.18 * 16 / 12) * 12))
        .isEqualTo(21);
    assertThat(covering.used(RoofArea.CORNERS).value())
        .isEqualTo(Math.floor(2 * 71.6 / (velocity * 3.779 * 16 / 12) * 12))
        .isEqualTo(18);
    assertThat(tallow.site().inspected().stream().map(item -> item.what() + ": " + item.value()))
        .contains("Nails for that wind: ring-shank nails are advised");
  }

  @Test
  void mistwater_isNotLookedAt() {
    Site site = demo("mistwater-cottage").site();
    assertThat(site.isTold()).isFalse();
    assertThat(site.nailing().notByCode()).isPresent();
    assertThat(site.checks()).allMatch(check -> check.outcome() instanceof Check.NotLooked);
  }

  private static void assertHolds(Estimate estimate, RoofArea area, double asked, double holds) {
    String what = "deck nails against uplift, " + area.word();
    Check check =
        estimate.site().checks().stream()
            .filter(each -> each.what().equals(what))
            .findFirst()
            .orElseThrow();
    assertThat(check.demand().value()).isCloseTo(asked, within(0.02));
    assertThat(check.capacity().value()).isCloseTo(holds, within(0.02));
    assertThat(check.outcome().isSound()).isTrue();
  }
}
