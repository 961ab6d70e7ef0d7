package sheathwright.loads.snow;

import static sheathwright.loads.LoadArguments.NO_LOAD;
import static sheathwright.loads.LoadArguments.constant;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.loads.LoadArguments;
import sheathwright.loads.RiskCategory;
import sheathwright.published.LoadEdition;
import sheathwright.published.Published;

/** What low slopes must carry beside the even snow. */
public final class LowSlopeSnows {

  private static final Source MINIMUM = Source.secondHand("ASCE 7-16, 7.3.4, and 7-22, 7.3.3");
  private static final Source RAIN = Source.secondHand("ASCE 7-16, 7.10");
  private static final Source RAIN_2022 = Source.secondHand("ASCE 7-22, 7.10");
  private static final Source RAIN_BOUND =
      Source.fromMemory("ASCE 7-22, 7.10, ground snow up to the greatest minimum");
  private static final Table MOST =
      Published.table(
          "asce7/2022/minimum-snow.csv", "minimum_snow", "greatest minimum snow loads", 1);
  private static final Figure<Ratio> LOW_SLOPE =
      constant("low_slope_degrees", 15, Units.RATIO, "15", MINIMUM);
  private static final Figure<Pressure> MINIMUM_FROM =
      constant("minimum_snow_from_psf", 20, Units.PSF, "20 psf", MINIMUM);
  private static final Figure<Pressure> RAIN_ON_LITTLE_SNOW =
      constant("little_snow_psf", 20, Units.PSF, "20 psf", RAIN);
  private static final Figure<Pressure> RAIN_LOAD =
      constant("rain_psf", 5, Units.PSF, "5 psf", RAIN);
  private static final Figure<Pressure> RAIN_LOAD_2022 =
      constant("rain_2022_psf", 8, Units.PSF, "8 psf", RAIN_2022);
  private static final Figure<Length> FEET_FOR_A_DEGREE =
      constant("run_for_a_degree_ft", 50, Units.FOOT, "50 ft", RAIN);

  private LowSlopeSnows() {}

  /**
   * The least snow that a low slope is checked for, as a case of its own: all over the roof, not
   * together with drifts or unbalanced snow.
   *
   * <pre>
   * p_m = I_s × the lesser of p_g and 20 psf, under 15°
   *     = the lesser of p_g and 25, 30, 35, 40 psf by risk category, in ASCE 7-22
   *     = 0 from 15° up
   * </pre>
   *
   * <p>Does not cover hip and gable roofs so narrow, or curved roofs so shaped, that the rule
   * counts them otherwise: 15° is taken for all. ASCE 7-22 is taken to mean the same low slopes;
   * its answer is at strength level. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * minimumSnow(GroundSnow.of(psf(30), ASCE7_10), RISK_II, pitch(0.5)) // 20 psf
   * minimumSnow(GroundSnow.of(psf(50), ASCE7_22), RISK_II, pitch(1)) // 30 psf
   * minimumSnow(GroundSnow.of(psf(50), ASCE7_16), RISK_II, pitch(6)) // 0 psf
   * }</pre>
   *
   * @param groundSnow of the edition's own map
   * @param riskCategory of the building; a house is in II
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @return pounds per square foot of horizontal projection, 0 where there is no such case; at
   *     strength level under ASCE 7-22
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-16, 7.3.4, and ASCE 7-22, 7.3.3, secondary source"
   */
  @LibraryFunction
  @Column("minimum_psf")
  public static Figure<Pressure> minimumSnow(
      GroundSnow groundSnow,
      @Column("risk_category") OneOf<RiskCategory> riskCategory,
      @Column("rise_in_12") Figure<Ratio> rise) {
    var pg = groundSnow.load();
    var category = LoadArguments.word("risk_category", riskCategory);
    var slope = LoadArguments.degrees(LoadArguments.rise(rise));

    var byImportance =
        SnowFactors.importance(category)
            .times(pg.min(MINIMUM_FROM))
            .as("minimum_by_importance_psf", Units.PSF, MINIMUM);
    var byCategory = pg.min(most(category)).as("minimum_by_category_psf", Units.PSF, MINIMUM);
    var low =
        Figure.choose(isOf2022(groundSnow), byCategory, byImportance)
            .as("low_slope_minimum_psf", Units.PSF, MINIMUM);
    // Ground snow is held to its limits also where the slope is too steep for this case.
    var isLow = Condition.all(slope.isLessThan(LOW_SLOPE), pg.isAtLeast(NO_LOAD));
    return Figure.choose(isLow, low, NO_LOAD).as("minimum_psf", Units.PSF, MINIMUM);
  }

  /**
   * What rain adds to the snow on a long low slope where the ground snow is small.
   *
   * <pre>
   * rain = 5 psf where p_g is over 0, p_g ≤ 20 psf, and θ in degrees is under W ÷ 50 ft
   *      = 8 psf in ASCE 7-22, to p_g of 25, 30, 35, 40 psf by risk category
   * </pre>
   *
   * <p>Does not cover ponding, blocked drains, or rain on heavier snow. It is added to the even
   * snow alone, not to drifts, unbalanced or minimum snow. Under ASCE 7-22 it is at strength level.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * rainOnSnow(GroundSnow.of(psf(20), ASCE7_16), RISK_II, pitch(0.25), ft(80)) // 5 psf
   * rainOnSnow(GroundSnow.of(psf(30), ASCE7_16), RISK_II, pitch(0.25), ft(80)) // 0 psf
   * }</pre>
   *
   * @param groundSnow of the edition's own map
   * @param riskCategory of the building; a house is in II
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @param eaveToRidge W on the horizontal projection, 1 ft to 500 ft
   * @return pounds per square foot of horizontal projection, 0 where there is no such case; at
   *     strength level under ASCE 7-22
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-16, 7.10, and the 8 psf of ASCE 7-22, secondary source; the ground snow to which
   *     ASCE 7-22 adds it from memory"
   */
  @LibraryFunction
  @Column("rain_on_snow_psf")
  public static Figure<Pressure> rainOnSnow(
      GroundSnow groundSnow,
      @Column("risk_category") OneOf<RiskCategory> riskCategory,
      @Column("rise_in_12") Figure<Ratio> rise,
      @Column("eave_to_ridge_ft") Figure<Length> eaveToRidge) {
    var pg = groundSnow.load();
    var slope = LoadArguments.degrees(LoadArguments.rise(rise));
    var w = LoadArguments.eaveToRidge(eaveToRidge);
    var is2022 = isOf2022(groundSnow);

    var most =
        Figure.choose(
                is2022,
                most(LoadArguments.word("risk_category", riskCategory)),
                RAIN_ON_LITTLE_SNOW)
            .as("rain_to_ground_snow_psf", Units.PSF, RAIN_BOUND);
    var rain =
        Figure.choose(is2022, RAIN_LOAD_2022, RAIN_LOAD).as("rain_load_psf", Units.PSF, RAIN);
    var steepest =
        w.dividedBy(FEET_FOR_A_DEGREE).as("slope_that_drains_in_degrees", Units.RATIO, RAIN);
    var isAdded =
        Condition.all(pg.isMoreThan(NO_LOAD), pg.isAtMost(most), slope.isLessThan(steepest));
    return Figure.choose(isAdded, rain, NO_LOAD).as("rain_on_snow_psf", Units.PSF, RAIN);
  }

  private static Figure<Pressure> most(Choice<RiskCategory> category) {
    return MOST.number(Units.PSF, "most_psf", category).as("greatest_minimum_psf", Units.PSF);
  }

  private static Condition isOf2022(GroundSnow groundSnow) {
    return groundSnow.edition().choice().is(LoadEdition.ASCE7_22);
  }
}
