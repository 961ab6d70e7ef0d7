package sheathwright.loads;

import static sheathwright.loads.LoadArguments.constant;

import java.util.List;
import java.util.Locale;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.AllowableShare;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.loads.LoadCombination.Name;
import sheathwright.published.LoadEdition;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;

/** Which loads a rafter is checked for at one time, for allowable stress. */
public final class LoadCombinations {

  private static final Source RULE = Source.secondHand("ASCE 7-16, 2.4.1");
  private static final Source RULE_2022 = Source.secondHand("ASCE 7-22, 2.4.1");
  private static final Source DURATION = Source.secondHand("NDS 2018, 2.3.2");
  private static final Figure<Ratio> WHOLE = LoadArguments.ONE;
  private static final Figure<Ratio> SNOW_SHARE =
      constant("allowable_snow_share", 0.7, Units.RATIO, "0.7", RULE_2022);
  private static final Figure<Ratio> DEAD_AGAINST_UPLIFT =
      constant("dead_against_uplift", 0.6, Units.RATIO, "0.6", RULE);
  private static final Figure<AllowableShare> WIND_SHARE =
      constant("allowable_wind_share", 0.6, Units.ALLOWABLE_PER_STRENGTH, "0.6", RULE);

  private LoadCombinations() {}

  /**
   * The loads that a rafter is checked for at one time, each combination with the duration factor
   * of its shortest load, and which of them asks most of the wood in bending.
   *
   * <pre>
   * D               C_D 0.9
   * D + L_r         C_D 1.25
   * D + S           C_D 1.15   (D + 0.7 S under ASCE 7-22)
   * 0.6 D − 0.6 W   C_D 1.6    below zero it pulls up
   * governs bending: the greatest load ÷ C_D, up or down
   * </pre>
   *
   * <p>Does not cover three quarters of several loads together, wind that pushes down, rain,
   * ceiling load, earthquake, or stiffness, which goes by the live load alone and takes no duration
   * factor. Roof live load and snow are alternatives and never added. Where uplift governs, the
   * lower edge of the rafter is in compression, and no deck holds it. Screening only: local code
   * and a licensed engineer decide.
   *
   * <p>Wind comes at strength level and square to the slope, as {@code cladding_pressure} gives it;
   * it lifts as much on each square foot of projection. Under ASCE 7-22 the snow too is at strength
   * level, of that edition's own map: a map of one edition with factors of another is the mistake
   * to look for.
   *
   * <pre>{@code
   * loadCombinations(RoofLoads.dead(psf(10)).roofLive(psf(20)).snow(psf(25)), strengthPsf(30), ASCE7_16).deadAndUplift() // -12 psf
   * loadCombinations(RoofLoads.dead(psf(10)).roofLive(psf(20)).snow(psf(25)), strengthPsf(30), ASCE7_16).governsBending() // dead-and-snow
   * }</pre>
   *
   * @param loads on the roof; snow at strength level under ASCE 7-22
   * @param uplift of the wind, outward, at strength level, 0 psf strength to 500 psf strength
   * @param edition of ASCE 7; in tables 7-16 may be written too
   * @return each combination in psf of horizontal projection, each divided by its own duration
   *     factor, and which one governs bending
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-16 and 7-22, 2.4.1, and NDS 2018, Table 2.3.2, secondary source"
   */
  @LibraryFunction
  public static CombinedLoads loadCombinations(
      RoofLoads loads,
      @Column(value = "uplift_psf", unit = "psf strength") Figure<StrengthPressure> uplift,
      @Column("edition") OneOf<LoadEdition> edition) {
    List<LoadCombination> all = combinations(loads, uplift, edition);
    return new CombinedLoads(
        all.get(0).load(),
        all.get(1).load(),
        all.get(2).load(),
        all.get(3).load(),
        all.get(0).byDuration(),
        all.get(1).byDuration(),
        all.get(2).byDuration(),
        all.get(3).byDuration(),
        governingBending(all));
  }

  /** The four combinations, in order: dead alone, with roof live load, with snow, with uplift. */
  public static List<LoadCombination> combinations(
      RoofLoads loads, Figure<StrengthPressure> uplift, OneOf<LoadEdition> edition) {
    var d = loads.dead();
    var w =
        uplift
            .within(
                "uplift_psf",
                Units.STRENGTH_PSF,
                Limits.between(0, 500, "outward and at strength level, 0 where it is left out"))
            .symbol("W");

    var share = allowableSnowShare(edition);
    var allowableSnow = share.times(loads.snow()).as("allowable_snow_psf", Units.PSF, RULE);
    var lifting = WIND_SHARE.times(w).as("allowable_uplift_psf", Units.PSF, RULE);
    var holding = DEAD_AGAINST_UPLIFT.times(d).as("dead_against_uplift_psf", Units.PSF, RULE);
    return List.of(
        combination(Name.DEAD_ALONE, d, LoadDuration.DURATION_PERMANENT),
        combination(
            Name.DEAD_AND_ROOF_LIVE, d.plus(loads.roofLive()), LoadDuration.DURATION_ROOF_LIVE),
        combination(Name.DEAD_AND_SNOW, d.plus(allowableSnow), LoadDuration.DURATION_SNOW),
        combination(
            Name.DEAD_AND_UPLIFT, holding.minus(lifting), LoadDuration.DURATION_TEN_MINUTES));
  }

  /** Which of the four asks most of the wood in bending, up or down. */
  public static Choice<Name> governingBending(List<LoadCombination> all) {
    var alone = all.get(0).byDuration();
    var live = all.get(1).byDuration();
    var snow = all.get(2).byDuration();
    var net = all.get(3).byDuration();
    var either =
        net.max(LoadArguments.NO_LOAD.minus(net)).as("uplift_either_way_psf", Units.PSF, DURATION);
    var most =
        alone.max(live).max(snow).max(either).as("most_by_duration_psf", Units.PSF, DURATION);
    var snowOrUplift =
        Choice.choose(snow.isAtLeast(most), Name.DEAD_AND_SNOW, Name.DEAD_AND_UPLIFT)
            .as("governs_of_snow_and_uplift");
    var withLive =
        Choice.choose(live.isAtLeast(most), Name.DEAD_AND_ROOF_LIVE, snowOrUplift)
            .as("governs_with_roof_live");
    return Choice.choose(alone.isAtLeast(most), Name.DEAD_ALONE, withLive)
        .as("governs_bending", DURATION);
  }

  private static LoadCombination combination(
      Name name, Figure<Pressure> load, LoadDuration duration) {
    String words = name.name().toLowerCase(Locale.ROOT);
    var total = load.as(words + "_psf", Units.PSF, RULE);
    var factor = Nds.loadDuration(words + "_duration_factor", duration);
    var byDuration = total.dividedBy(factor).as(words + "_by_duration_psf", Units.PSF, DURATION);
    return new LoadCombination(Choice.literal(name), total, factor, byDuration);
  }

  /** What an edition's snow is multiplied by for allowable stress: its maps may be of strength. */
  public static Figure<Ratio> allowableSnowShare(OneOf<LoadEdition> edition) {
    return Figure.choose(
            LoadArguments.word("edition", edition).is(LoadEdition.ASCE7_22), SNOW_SHARE, WHOLE)
        .as("snow_share", Units.RATIO, RULE);
  }
}
