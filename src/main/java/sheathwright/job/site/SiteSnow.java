package sheathwright.job.site;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Facts;
import sheathwright.loads.LoadCombinations;
import sheathwright.loads.RiskCategory;
import sheathwright.loads.snow.GroundSnow;
import sheathwright.loads.snow.LowSlopeSnows;
import sheathwright.loads.snow.RoofSnows;
import sheathwright.loads.snow.RoofWarmth;
import sheathwright.loads.snow.SnowFactors;
import sheathwright.loads.snow.SnowRoof;
import sheathwright.loads.snow.SnowShelter;
import sheathwright.loads.snow.SnowSlope;
import sheathwright.loads.snow.SnowTerrain;
import sheathwright.loads.snow.UnbalancedSnow;
import sheathwright.loads.snow.UnbalancedSnows;
import sheathwright.loads.wind.Exposure;
import sheathwright.published.LoadEdition;

/**
 * The snow on a house's rafters from the snow on the ground: the most of the even load, of what the
 * wind carries over the ridge, whose drift is taken all over the slope, and of the least on a low
 * slope. A roof of which nobody says how it is sheltered and warmed counts as sheltered and
 * unheated, and never as slippery. Does not cover drifts against walls and in valleys.
 */
public final class SiteSnow {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> STRONGEST_WINTER_WIND =
      Figure.constant(
              "strongest_winter_wind", 0.65, Units.RATIO, Source.fromMemory("ASCE 7-22, map of W2"))
          .symbol("0.65");

  private SiteSnow() {}

  /** At allowable level, on the horizontal projection. */
  public static Figure<Pressure> onRoof(Facts said) {
    Choice<LoadEdition> edition = SiteWind.editionOf(said.word(SiteFields.CODE));
    GroundSnow ground = GroundSnow.of(said.figure(SiteFields.GROUND_SNOW), edition);
    Figure<Ratio> rise = said.figure(SiteFields.RISE);
    Figure<Length> run =
        said.figure(SiteFields.BUILDING_WIDTH)
            .dividedBy(TWO)
            .as("snow_eave_to_ridge_ft", Units.FOOT);
    Figure<Ratio> importance = SnowFactors.snowImportance(RiskCategory.RISK_II, edition);
    Figure<Pressure> even =
        RoofSnows.roofSnow(ground, importance, roof(said, edition), rise).sloped();
    UnbalancedSnow blown =
        UnbalancedSnows.unbalancedSnow(
            ground, even, importance, SnowSlope.rise(rise).eaveToRidge(run), STRONGEST_WINTER_WIND);
    Figure<Pressure> drifted =
        blown.leeward().plus(blown.surcharge()).as("snow_behind_the_ridge_psf", Units.PSF);
    Figure<Pressure> most =
        even.max(drifted)
            .max(LowSlopeSnows.minimumSnow(ground, RiskCategory.RISK_II, rise))
            .as("most_snow_psf", Units.PSF);
    return LoadCombinations.allowableSnowShare(edition)
        .times(most)
        .as("snow_of_the_site_psf", Units.PSF);
  }

  private static SnowRoof roof(Facts said, Choice<LoadEdition> edition) {
    Choice<Exposure> exposure = said.word(SiteFields.EXPOSURE);
    Choice<SnowTerrain> open =
        Choice.choose(
                exposure.is(Exposure.EXPOSURE_C), SnowTerrain.TERRAIN_C, SnowTerrain.TERRAIN_D)
            .as("open_terrain");
    Choice<SnowTerrain> terrain =
        Choice.choose(exposure.is(Exposure.EXPOSURE_B), SnowTerrain.TERRAIN_B, open)
            .as("snow_terrain");
    Choice<SnowShelter> shelter =
        said.knows(SiteFields.SNOW_SHELTER)
            ? said.fact(SiteFields.SNOW_SHELTER)
            : Choice.literal(SnowShelter.SHELTERED);
    Choice<RoofWarmth> warmth =
        said.knows(SiteFields.ROOF_WARMTH)
            ? said.fact(SiteFields.ROOF_WARMTH)
            : Choice.literal(RoofWarmth.UNHEATED);
    return SnowRoof.exposureFactor(SnowFactors.snowExposureFactor(terrain, shelter))
        .thermalFactor(SnowFactors.snowThermalFactor(warmth, edition))
        .slippery(YesNo.NO);
  }
}
