package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.mph;
import static sheathwright.figure.Amounts.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.published.LoadEdition;

class VelocityPressureTest {

  private static Figure<StrengthPressure> pressure(
      double wind, Exposure exposure, double feet, LoadEdition edition) {
    return WindPressures.velocityPressure(
        WindSite.of(edition, mph(wind), exposure).height(ft(feet)),
        Topography.LEVEL_GROUND,
        number(0.85));
  }

  /** By hand, 0.6 × 0.00256 × 0.70 × 0.85 V²; agrees with a printed IRC 2018 table. */
  @ParameterizedTest(name = "{0} mph")
  @CsvSource({"110, 11.06", "130, 15.45", "150, 20.56", "160, 23.40", "180, 29.61"})
  void velocityPressure_isThatOfTheEquationAtThirtyFeet(double wind, double allowable) {
    for (LoadEdition edition : LoadEdition.values()) {
      var q = pressure(wind, Exposure.EXPOSURE_B, 30, edition);
      assertThat(WindPressures.allowablePressure(q).value()).isCloseTo(allowable, within(0.02));
    }
  }

  /** A worked example of the ASCE 7-16 Guide: 105 mph, 12.1 ft, Kh 0.57; the result by hand. */
  @Test
  void velocityPressure_isThatOfTheGuideUnderFifteenFeet() {
    var q = pressure(105, Exposure.EXPOSURE_B, 12.1, LoadEdition.ASCE7_16);
    assertThat(q.value()).isCloseTo(13.67, within(0.01));
  }

  /** Above 30 ft 7-10 and 7-16 print the same; below, 7-10 takes 0.70 in Exposure B, read. */
  @Test
  void velocityPressure_hasTheFloorOfItsEdition() {
    double old = pressure(105, Exposure.EXPOSURE_B, 12.1, LoadEdition.ASCE7_10).value();
    double later = pressure(105, Exposure.EXPOSURE_B, 12.1, LoadEdition.ASCE7_16).value();
    assertThat(old / later).isCloseTo(0.70 / 0.57, within(1e-9));
  }

  /**
   * The factors that IRC 2015, 2021 and 2024 print for height and exposure are Kz over 0.70, to
   * their two decimals and the two of Kz. The 1.05 that IRC 2024 prints for 35 ft in Exposure B is
   * left over from IRC 2021: it bends the curve, 1.00, 1.05, 1.06.
   */
  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void velocityExposure_isBornOutByThePrintedHeightFactors(LoadEdition edition) {
    int year = List.of(2015, 2021, 2024).get(edition.ordinal());
    List<CSVRecord> printed = PrintedPressure.rows("height-exposure-" + year + ".csv");
    assertThat(printed).hasSize(3);
    double base = pressure(115, Exposure.EXPOSURE_B, 30, edition).value();
    for (CSVRecord row : printed) {
      Exposure exposure = Exposure.valueOf("EXPOSURE_" + row.get("exposure"));
      for (int feet = 15; feet <= 60; feet += 5) {
        if (year == 2024 && exposure == Exposure.EXPOSURE_B && feet == 35) {
          assertThat(row.get("at_35")).isEqualTo("1.05");
          continue;
        }
        double factor = pressure(115, exposure, feet, edition).value() / base;
        assertThat(factor)
            .as("%s at %d ft in %s", edition, feet, exposure)
            .isCloseTo(Double.parseDouble(row.get("at_" + feet)), within(0.0125));
      }
    }
  }

  /** Twice the wind, four times the pressure; hill and direction factors multiply. */
  @Test
  void velocityPressure_goesByTheSquareOfTheWind() {
    double slow = pressure(100, Exposure.EXPOSURE_C, 22, LoadEdition.ASCE7_22).value();
    double fast = pressure(200, Exposure.EXPOSURE_C, 22, LoadEdition.ASCE7_22).value();
    assertThat(fast).isCloseTo(4 * slow, within(1e-9));
    var hill =
        WindPressures.velocityPressure(
            WindSite.of(LoadEdition.ASCE7_22, mph(100), Exposure.EXPOSURE_C).height(ft(22)),
            Topography.factor(number(1.5)),
            number(1));
    assertThat(hill.value()).isCloseTo(slow * 1.5 / 0.85, within(1e-9));
  }
}
