package sheathwright.job.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Check;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;

/** The nails of the eave row, against pressures and a nail worked by hand. */
class EaveRowsTest {

  /** 0.6 × 0.00256 × 0.70059 × 0.85 V² at 115 mph, to 30 ft high in a town. */
  private static final double PRESSURE = 0.6 * 0.00256 * 0.70059 * 0.85 * 115 * 115;

  private static JobText job(String... more) {
    return JobText.small()
        .withLines(
            "job",
            "code,irc-2015,",
            "wind_mph,115,",
            "exposure,b,",
            "enclosed_known,measured,",
            "nail,8d-common,",
            "panel_thickness_in,15/32,",
            "panel_span_rating,32/16,",
            "eave_height_ft,9,",
            "roof_shape,gable,",
            "building_length_ft,40,",
            "building_width_ft,28,",
            "rise_in_12,6,",
            "species,spruce-pine-fir,",
            "grade,no-2,",
            "rafter_size,2x6,",
            "value_set,nds2018,",
            "span_ft,12-0,",
            "bearing_in,1-1/2,",
            "load,roof-live,",
            "live_psf,20,",
            "dead_psf,10,",
            "deflection_limit,180,",
            "moisture,dry,",
            "species_known,stamped,",
            "moisture_known,measured,")
        .withLines("job", more);
  }

  private static Check eave(String... more) {
    return new Estimate(job(more).job())
        .loadPath().checks().stream()
            .filter(check -> check.what().equals(EaveRows.WHAT))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void anOverhangThatNobodyMeasured_isNotLookedAt() {
    assertThat(eave().outcome()).isInstanceOf(Check.NotLooked.class);
    assertThat(eave("overhang_in,16,").outcome()).isInstanceOf(Check.NotLooked.class);
    assertThat(eave("overhang_in,16,", "overhang_known,assumed,").outcome())
        .isInstanceOf(Check.NotLooked.class);
  }

  /** ASCE 7-10, 2 to 6 in 12, zone 3: 3.7 on overhangs, 2.6 + 0.18 without one. */
  @ParameterizedTest
  @CsvSource({"16, 3.7", "0.5, 3.7", "0, 2.78"})
  void itsPull_isThatOfTheOverhangIfThereIsOne(String inches, double coefficient) {
    Check check = eave("overhang_in," + inches + ",", "overhang_known,measured,");
    double pull = PRESSURE * coefficient;
    assertThat(check.demand().value()).isCloseTo(pull, within(0.01 * pull));
  }

  /**
   * One 8d common in wood of 0.42 through 15/32 in: 1380 × 0.42^2.5 × 0.131 × 1.6 × 2.03 in is 67
   * lb. Typed 12 in apart on rafters 16 in apart it holds 1.33 sq ft, which the code allows at 115
   * mph.
   */
  @Test
  void itsNails_holdTheirShare() {
    Check check = eave("overhang_in,16,", "overhang_known,measured,");
    double nail = 1380 * Math.pow(0.42, 2.5) * 0.131 * 1.6 * (2.5 - 15.0 / 32);
    assertThat(check.capacity().value()).isCloseTo(nail / (16 / 12.0), within(0.5));
    assertThat(check.outcome()).as("50 psf against 45").isInstanceOf(Check.Holds.class);
  }

  @Test
  void aSiteThatNobodyDescribes_isNotLookedAtEither() {
    Check.Outcome outcome =
        new Estimate(JobText.small().job())
            .loadPath().checks().stream()
                .filter(check -> check.what().equals(EaveRows.WHAT))
                .findFirst()
                .orElseThrow()
                .outcome();
    assertThat(outcome.words()).startsWith("not looked at: ").contains("missing");
  }
}
