package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/**
 * A house in the wind, by one edition of the code and its map.
 *
 * @param wind ultimate wind speed of the code's map
 * @param exposure of the site: b, c or d
 * @param height of the roof
 * @param edition of ASCE 7; in tables 7-16 may be written too
 */
public record WindSite(
    @Column(
            value = "wind_mph",
            least = 50,
            most = 250,
            rule = "the ultimate speed of the code's map; 115 is the least there",
            symbol = "V")
        Figure<Speed> wind,
    @Column("exposure") OneOf<Exposure> exposure,
    RoofHeight height,
    @Column("edition") OneOf<LoadEdition> edition) {

  /** Where the velocity pressure equation stands. */
  static final Source EQUATION = Source.secondHand("ASCE 7-16, equation 26.10-1");

  private static final Columns COLUMNS = Columns.of(WindSite.class);
  private static final Figure<Speed> ONE_MPH = Figure.of(1, Units.MPH);
  private static final Figure<StrengthPressure> AT_ONE_MPH =
      Figure.constant("pressure_at_one_mph_psf", 0.00256, Units.STRENGTH_PSF, EQUATION)
          .symbol("0.00256 psf");

  public WindSite {
    wind = COLUMNS.let("wind", wind);
    exposure = COLUMNS.let("exposure", exposure);
    height = height == null ? new RoofHeight(null) : height;
    edition = COLUMNS.let("edition", edition);
  }

  /** A site with this wind and exposure by an edition; the roof's height is still to be said. */
  public static WindSite of(
      OneOf<LoadEdition> edition, Figure<Speed> wind, OneOf<Exposure> exposure) {
    return new WindSite(wind, exposure, null, edition);
  }

  /** Mean roof height. */
  public WindSite height(Figure<Length> mean) {
    return new WindSite(wind, exposure, RoofHeight.mean(mean), edition);
  }

  /** Pressure of moving air before any coefficient, at strength level. */
  Figure<?> stagnation() {
    return AT_ONE_MPH.times(wind.dividedBy(ONE_MPH).squared());
  }

  /** Kz of the standard for cladding. */
  Figure<Ratio> velocityExposure() {
    return WindTables.velocityExposure(edition, exposure, height.mean());
  }

  /** The code's factor on pressures printed for 30 ft in Exposure B. */
  Figure<Ratio> heightExposure() {
    return WindTables.heightExposure(edition, exposure, height.mean());
  }
}
