package sheathwright.framing.nailed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.YesNo.YES;
import static sheathwright.wood.LoadDuration.DURATION_SNOW;
import static sheathwright.wood.LoadDuration.DURATION_TEN_YEARS;
import static sheathwright.wood.Moisture.DRIES_LATER;
import static sheathwright.wood.Moisture.STAYS_DRY;
import static sheathwright.wood.ServiceConditions.DRY;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Moisture;
import sheathwright.wood.ServiceConditions;

/** A nail's adjusted value by hand arithmetic, and both sides of what is allowed. */
class AdjustedLateralsTest {

  private static ListedNail nail(double penetration) {
    return ListedNail.lateral(lb(100)).penetration(in(penetration)).diameter(in(0.15));
  }

  private static Figure<Force> adjusted(double penetration, LoadDuration load, Moisture moisture) {
    return AdjustedLaterals.adjustedLateral(
        nail(penetration), load, ServiceConditions.of(moisture));
  }

  @ParameterizedTest
  @CsvSource({
    // 6 D is 0.9 in, 10 D is 1.5 in
    "0.9, DURATION_TEN_YEARS, 60",
    "1.2, DURATION_TEN_YEARS, 80",
    "1.5, DURATION_TEN_YEARS, 100",
    "2.5, DURATION_TEN_YEARS, 100",
    "2.5, DURATION_TEN_MINUTES, 160",
    "1.2, DURATION_ROOF_LIVE, 100",
    "1.2, DURATION_PERMANENT, 72",
  })
  void penetration_countsUpToTenDiameters(double penetration, LoadDuration load, double expected) {
    assertThat(adjusted(penetration, load, STAYS_DRY).value()).isCloseTo(expected, within(1e-9));
    assertThat(adjusted(penetration, load, DRIES_LATER).value())
        .isCloseTo(0.7 * expected, within(1e-9));
  }

  @Test
  void lessThanSixDiameters_isRefused() {
    assertThat(adjusted(0.899, DURATION_TEN_YEARS, STAYS_DRY).refusal().orElseThrow().reason())
        .startsWith("the nail goes less than 6 diameters into the far piece");
  }

  @Test
  void penetrationThatIsCountedAlready_isNotCountedTwice() {
    Figure<Force> once =
        AdjustedLaterals.adjustedLateral(nail(0.9).penetrationCounted(YES), DURATION_SNOW, DRY);
    assertThat(once.value()).isCloseTo(115, within(1e-9));
    assertThat(
            AdjustedLaterals.adjustedLateral(nail(0.8).penetrationCounted(YES), DURATION_SNOW, DRY)
                .refusal())
        .isPresent();
  }

  /** NDS 2018 Table 11.3.4, from memory, beside the 0.7 of wood that is wet now or later. */
  @ParameterizedTest(name = "{0}, {1} degrees")
  @CsvSource({
    "dry, 100, 1",
    "stays-dry, 101, 0.8",
    "stays-dry, 150, 0.7",
    "dries-later, 125, 0.56",
    "gets-wet-later, 125, 0.49",
    "wet, 150, 0.35",
  })
  void aNailInHotWood_carriesLess(String moisture, String degrees, double factor) {
    Asked nail =
        Asked.of("adjusted_lateral")
            .with("lateral_lb", "100")
            .with("penetration_in", "1.5")
            .with("diameter_in", "0.15")
            .with("load_duration", "1")
            .with("moisture", moisture)
            .with("temperature_f", degrees);
    assertThat(nail.number("adjusted_lb")).isCloseTo(100 * factor, within(1e-9));
  }

  @Test
  void loadDuration_isOneOfThePrintedRows() {
    Asked nail =
        Asked.of("adjusted_lateral")
            .with("lateral_lb", "100")
            .with("penetration_in", "1.5")
            .with("diameter_in", "0.15")
            .with("load_duration", "2");
    assertThatThrownBy(nail::refusal)
        .hasMessage(
            "load_duration is \"2\"; it must be one of permanent, ten-years, snow, roof-live,"
                + " ten-minutes");
  }

  /**
   * NDS 2018 12.1.6, 11.3.1, 11.3.3 and 11.3.4 said again, at chance nails: 0.7 for wood that is
   * wet now or later, and the wet row of the temperature where it is wet in service.
   */
  @Test
  void aNail_isTheStandardsSentences() {
    Random chance = new Random(11_3_4);
    String[] moistures = {"stays-dry", "dries-later", "gets-wet-later", "stays-wet"};
    double[] durations = {0.9, 1, 1.15, 1.25, 1.6};
    String[] words = {"0.9", "1", "1.15", "1.25", "1.6"};
    for (int i = 0; i < 300; i++) {
      int moisture = chance.nextInt(4);
      int duration = chance.nextInt(5);
      double degrees = 150 * chance.nextDouble();
      double z = 40 + 200 * chance.nextDouble();
      double d = 0.09 + 0.15 * chance.nextDouble();
      double p = d * (6 + 8 * chance.nextDouble());
      double wet = moisture == 0 ? 1 : 0.7;
      double[] row = moisture >= 2 ? new double[] {1, 0.7, 0.5} : new double[] {1, 0.8, 0.7};
      double heat = row[degrees <= 100 ? 0 : degrees <= 125 ? 1 : 2];
      double expected = z * durations[duration] * wet * heat * Math.min(1, p / (10 * d));
      assertThat(
              Asked.of("adjusted_lateral")
                  .with("lateral_lb", "" + z)
                  .with("penetration_in", "" + p)
                  .with("diameter_in", "" + d)
                  .with("load_duration", words[duration])
                  .with("moisture", moistures[moisture])
                  .with("temperature_f", "" + degrees)
                  .number("adjusted_lb"))
          .as("%s at %s degrees", moistures[moisture], degrees)
          .isCloseTo(expected, within(1e-9 * expected));
    }
  }
}
