package sheathwright.loads.snow;

import static sheathwright.loads.LoadArguments.constant;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/** How high the wind heaps snow behind a ridge, and how heavy drifted snow is. */
final class SnowDrift {

  static final Source HEIGHT = Source.secondHand("ASCE 7-10, Figure 7-9");
  static final Source HEIGHT_2022 = Source.secondHand("ASCE 7-22, Figure 7.6-1");
  private static final Source EITHER_HEIGHT =
      Source.secondHand("ASCE 7-10, Figure 7-9; from 2022 on ASCE 7-22, Figure 7.6-1");
  static final Source DENSITY = Source.secondHand("ASCE 7-16, equation 7.7-1");

  private static final Figure<Length> ONE_FOOT = Figure.of(1, Units.FOOT);
  private static final Figure<Pressure> ONE_PSF = Figure.of(1, Units.PSF);
  private static final Figure<Density> ONE_PCF = Figure.of(1, Units.PCF);
  private static final Figure<Length> LEAST_FETCH =
      constant("least_fetch_ft", 20, Units.FOOT, "20 ft", HEIGHT);
  private static final Figure<Length> HEIGHT_SCALE =
      constant("drift_scale_ft", 0.43, Units.FOOT, "0.43 ft", HEIGHT);
  private static final Figure<Pressure> SNOW_OFFSET =
      constant("drift_snow_offset_psf", 10, Units.PSF, "10 psf", HEIGHT);
  private static final Figure<Ratio> FOURTH_ROOT =
      constant("drift_snow_exponent", 0.25, Units.RATIO, "0.25", HEIGHT);
  private static final Figure<Length> HEIGHT_OFFSET =
      constant("drift_offset_ft", 1.5, Units.FOOT, "1.5 ft", HEIGHT);
  private static final Figure<Length> SCALE_2022 =
      constant("drift_scale_2022_ft", 1.5, Units.FOOT, "1.5 ft", HEIGHT_2022);
  private static final Figure<Ratio> SNOW_2022 =
      constant("drift_snow_exponent_2022", 0.74, Units.RATIO, "0.74", HEIGHT_2022);
  private static final Figure<Ratio> FETCH_2022 =
      constant("drift_fetch_exponent_2022", 0.7, Units.RATIO, "0.70", HEIGHT_2022);
  private static final Figure<Ratio> WIND_2022 =
      constant("drift_wind_exponent_2022", 1.7, Units.RATIO, "1.7", HEIGHT_2022);
  private static final Figure<Ratio> DENSITY_SLOPE =
      constant("density_slope", 0.13, Units.RATIO, "0.13", DENSITY);
  private static final Figure<Density> DENSITY_OFFSET =
      constant("density_offset_pcf", 14, Units.PCF, "14 pcf", DENSITY);
  private static final Figure<Density> MOST_DENSITY =
      constant("greatest_density_pcf", 30, Units.PCF, "30 pcf", DENSITY);

  private SnowDrift() {}

  /** γ of drifted snow. */
  static Figure<Density> density(Figure<Pressure> groundSnow) {
    return DENSITY_SLOPE
        .times(groundSnow.dividedBy(ONE_PSF).times(ONE_PCF))
        .in(Units.PCF)
        .plus(DENSITY_OFFSET)
        .min(MOST_DENSITY)
        .as("snow_density_pcf", Units.PCF, DENSITY)
        .symbol("γ");
  }

  /** W_2 of the site. */
  static Figure<Ratio> winterWind(Figure<Ratio> winterWind) {
    return winterWind
        .within(
            "winter_wind",
            Units.RATIO,
            Limits.between(0.2, 0.7, "of the map in ASCE 7-22; 0.65 is the most there"))
        .symbol("W_2");
  }

  /** h_d behind a ridge, of the snow that a slope of this run feeds it. */
  static Figure<Length> height(
      Figure<Pressure> groundSnow,
      Figure<Length> eaveToRidge,
      Figure<Ratio> w2,
      Figure<Density> density,
      Choice<LoadEdition> edition) {
    var snow = groundSnow.dividedBy(ONE_PSF).as("snow_in_psf", Units.RATIO);
    var fetch =
        eaveToRidge
            .max(LEAST_FETCH)
            .dividedBy(ONE_FOOT)
            .as("fetch_in_feet", Units.RATIO, HEIGHT)
            .symbol("l_u");

    var before2022 =
        HEIGHT_SCALE
            .times(fetch.cubeRoot())
            .times(
                groundSnow.plus(SNOW_OFFSET).dividedBy(ONE_PSF).in(Units.RATIO).power(FOURTH_ROOT))
            .in(Units.FOOT)
            .minus(HEIGHT_OFFSET)
            .as("drift_height_before_2022_ft", Units.FOOT, HEIGHT);
    var of2022 =
        SCALE_2022
            .times(
                snow.power(SNOW_2022)
                    .times(fetch.power(FETCH_2022))
                    .times(w2.power(WIND_2022))
                    .dividedBy(density.dividedBy(ONE_PCF))
                    .in(Units.RATIO)
                    .squareRoot())
            .as("drift_height_2022_ft", Units.FOOT, HEIGHT_2022);
    return Figure.choose(edition.is(LoadEdition.ASCE7_22), of2022, before2022)
        .as("drift_height_ft", Units.FOOT, EITHER_HEIGHT)
        .symbol("h_d");
  }
}
