package sheathwright.loads.wind;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/**
 * A place on a roof, and the wind there as the code makes its tables: at 30 ft in Exposure B by
 * coefficients, elsewhere by the printed height and exposure factor. Pressures are positive, at
 * strength level.
 */
final class PlaceInWind {

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
  private static final Source SOFFIT =
      Source.secondHand("ASCE 7-22, equation 30.7-1: roof above and wall below together");
  private static final Figure<Ratio> WALL =
      Figure.constant(
              "wall_coefficient",
              1.0,
              Units.RATIO,
              Source.fromMemory("ASCE 7-16, Figure 30.3-1, zones 4 and 5 to 10 sq ft"))
          .symbol("1.0");
  private static final Figure<Ratio> NOTHING = Figure.of(0, Units.RATIO);
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
      Figure.constant("directionality_factor", 0.85, Units.RATIO, WindSite.EQUATION).symbol("0.85");

  private final WindSite site;
  private final RoofPlace place;
  private final Choice<RoofSlope> slope;
  private final BetweenPrinted area;

  PlaceInWind(WindSite site, RoofPlace place) {
    this.site = site;
    this.place = place;
    this.slope = RoofSlope.of(place.rise());
    this.area = WindTables.between(place.area());
  }

  /** The velocity pressure here, from that at 30 ft in Exposure B. */
  Figure<StrengthPressure> velocity(Figure<StrengthPressure> atThirtyFeet) {
    return atThirtyFeet
        .times(site.heightExposure())
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

  /** The pull at an overhang, where the wind lifts from below as well. */
  Figure<StrengthPressure> atOverhang(Figure<StrengthPressure> velocity) {
    var both =
        WALL.minus(coefficient("outward")).as("above_and_below_coefficient", Units.RATIO, SOFFIT);
    var byFigure = site.edition().choice().is(LoadEdition.ASCE7_10);
    var zone =
        Choice.choose(byFigure, place.zone().choice(), Choice.literal(WindZone.ZONE_2))
            .as("zone_of_the_figure"); // later editions have zones that no figure knows
    var drawn =
        NOTHING
            .minus(WindTables.overhangCoefficient(area, slope, zone))
            .as("drawn_coefficient", Units.RATIO);
    var coefficient = Figure.choose(byFigure, drawn, both).as("overhang_coefficient", Units.RATIO);
    return velocity.times(coefficient).as("overhang_strength_psf", Units.STRENGTH_PSF, METHOD);
  }

  private Figure<Ratio> coefficient(String direction) {
    return WindTables.coefficient(
        direction, area, site.edition(), place.roof(), slope, place.zone());
  }

  /** Velocity pressure at 30 ft in Exposure B, on level ground. */
  Figure<StrengthPressure> atThirtyFeet() {
    return site.stagnation()
        .times(AT_THIRTY_FEET)
        .times(DIRECTIONALITY)
        .as("pressure_at_thirty_feet_psf", Units.STRENGTH_PSF, METHOD);
  }

  /** The coefficient of the pressure inside. */
  static Figure<Ratio> inside(OneOf<Enclosure> enclosure) {
    return Figure.choose(
            enclosure.choice().argument("enclosure").is(Enclosure.ENCLOSED),
            ENCLOSED,
            PARTIALLY_ENCLOSED)
        .as("inside_coefficient", Units.RATIO);
  }
}
