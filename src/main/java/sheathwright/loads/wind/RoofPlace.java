package sheathwright.loads.wind;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/**
 * One zone of a roof, and the wind there as the code makes its tables: at 30 ft in Exposure B by
 * coefficients, elsewhere by the printed height and exposure factor. Pressures are positive, at
 * strength level.
 */
final class RoofPlace {

  /** The pressure inside an enclosed house, either way, as a part of the velocity pressure. */
  static final Figure<Ratio> ENCLOSED =
      Figure.constant(
              "enclosed_coefficient",
              0.18,
              Units.RATIO,
              Source.secondHand("IRC 2015, Table R301.2(2), solved for the inside pressure"))
          .symbol("0.18");

  private static final Figure<Ratio> PARTIALLY_ENCLOSED =
      Figure.constant(
              "partially_enclosed_coefficient",
              0.55,
              Units.RATIO,
              Source.fromMemory("ASCE 7-16, Table 26.13-1"))
          .symbol("0.55");
  private static final Source METHOD =
      Source.secondHand("method of IRC 2015, Table R301.2(2), and of later editions");
  private static final Figure<Ratio> AT_THIRTY_FEET =
      Figure.constant(
              "coefficient_at_thirty_feet",
              0.70059,
              Units.RATIO,
              Source.secondHand("ASCE 7-10, 2.01 (30 ft ÷ 1200 ft)^(2/7) in Exposure B"))
          .symbol("0.70059");
  private static final Figure<Ratio> DIRECTIONALITY =
      Figure.constant("directionality_factor", 0.85, Units.RATIO, WindArguments.EQUATION)
          .symbol("0.85");

  private final Choice<LoadEdition> edition;
  private final Choice<Exposure> exposure;
  private final Figure<Length> height;
  private final Choice<RoofShape> roof;
  private final Choice<RoofSlope> slope;
  private final Choice<WindZone> zone;
  private final BetweenPrinted area;

  RoofPlace(
      OneOf<Exposure> exposure,
      Figure<Length> height,
      Figure<Ratio> rise,
      OneOf<RoofShape> roof,
      OneOf<WindZone> zone,
      Figure<Area> area,
      OneOf<LoadEdition> edition) {
    this.exposure = WindArguments.word("exposure", exposure);
    this.height = WindArguments.height(height);
    this.slope = RoofSlope.of(rise);
    this.roof = WindArguments.word("roof", roof);
    this.zone = WindArguments.word("zone", zone);
    this.area =
        WindTables.between(
            area.within(
                "area_sf",
                Units.SQUARE_FOOT,
                Limits.between(0.1, 1000, "10 for nails and clips, 32 for a whole sheet")));
    this.edition = WindArguments.word("edition", edition);
  }

  /** The velocity pressure here, from that at 30 ft in Exposure B. */
  Figure<StrengthPressure> velocity(Figure<StrengthPressure> atThirtyFeet) {
    return atThirtyFeet
        .times(WindTables.heightExposure(edition, exposure, height))
        .as("pressure_at_height_psf", Units.STRENGTH_PSF, METHOD);
  }

  /** The pull away from the roof, from the velocity pressure here and the coefficient inside. */
  Figure<StrengthPressure> outward(Figure<StrengthPressure> velocity, Figure<Ratio> inside) {
    return velocity
        .times(inside.minus(coefficient("outward")))
        .as("outward_strength_psf", Units.STRENGTH_PSF, METHOD);
  }

  /** The push onto the roof, likewise. */
  Figure<StrengthPressure> inward(Figure<StrengthPressure> velocity, Figure<Ratio> inside) {
    return velocity
        .times(inside.plus(coefficient("inward")))
        .as("inward_strength_psf", Units.STRENGTH_PSF, METHOD);
  }

  private Figure<Ratio> coefficient(String direction) {
    return WindTables.coefficient(direction, area, edition, roof, slope, zone);
  }

  /** Velocity pressure at 30 ft in Exposure B, on level ground. */
  static Figure<StrengthPressure> atThirtyFeet(Figure<Speed> wind) {
    return WindArguments.stagnation(wind)
        .times(AT_THIRTY_FEET)
        .times(DIRECTIONALITY)
        .as("pressure_at_thirty_feet_psf", Units.STRENGTH_PSF, METHOD);
  }

  /** The coefficient of the pressure inside. */
  static Figure<Ratio> inside(Choice<Enclosure> enclosure) {
    return Figure.choose(enclosure.is(Enclosure.ENCLOSED), ENCLOSED, PARTIALLY_ENCLOSED)
        .as("inside_coefficient", Units.RATIO);
  }
}
