package sheathwright.loads.snow;

import java.util.Map;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.loads.LoadArguments;
import sheathwright.loads.RiskCategory;
import sheathwright.published.EditionTables;
import sheathwright.published.LoadEdition;
import sheathwright.published.Published;

/** The factors between the snow on the ground and the snow on a roof. */
public final class SnowFactors {

  private static final Table EXPOSURE =
      Published.table(
          "asce7/2016/snow-exposure.csv", "snow_exposure", "exposure factors for snow", 1);
  private static final Table THERMAL =
      EditionTables.table(
          "snow_thermal",
          "thermal factors for snow",
          1,
          Source.secondHand("ASCE 7-16, Table 7.3-2, and 7-22, 7.3.2"),
          Map.of(
              LoadEdition.ASCE7_16, "asce7/2016/snow-thermal.csv",
              LoadEdition.ASCE7_22, "asce7/2022/snow-thermal.csv"));
  private static final Table IMPORTANCE =
      Published.table(
          "asce7/2016/snow-importance.csv", "snow_importance", "importance factors for snow", 1);

  private static final String NO_SUCH_ROOF =
      "shelter is sheltered; where the terrain is %s no roof is, by the table: partially-exposed is"
          + " the most";
  private static final String NOT_HELD =
      "the thermal factor of a roof that is %s was not read for certain under ASCE 7-22: heated roofs"
          + " go by insulation and ground snow (Table 7.3-3), and the two copies of that table that"
          + " were seen disagree; take it from the standard, or ask for cold-ventilated or unheated";

  private SnowFactors() {}

  /**
   * How much of the snow the wind leaves on a roof.
   *
   * <pre>
   * C_e = printed for the terrain and for how freely the wind reaches the roof
   * </pre>
   *
   * <p>Does not cover other editions than ASCE 7-16, whose table alone was read, and sites that the
   * table rules out: a sheltered roof above the trees. Screening only: local code and a licensed
   * engineer decide.
   *
   * <pre>{@code
   * snowExposureFactor(TERRAIN_B, PARTIALLY_EXPOSED) // 1
   * snowExposureFactor(TERRAIN_C, SHELTERED) // 1.1
   * }</pre>
   *
   * @param terrain of the site
   * @param shelter of the roof itself
   * @return a factor from 0.7 to 1.2
   * @throws RefusedException if the table allows no such roof there
   * @see "ASCE 7-16, Table 7.3-1, secondary source"
   */
  @LibraryFunction
  @Column("exposure_factor")
  public static Figure<Ratio> snowExposureFactor(
      @Column("terrain") OneOf<SnowTerrain> terrain,
      @Column("shelter") OneOf<SnowShelter> shelter) {
    var site = LoadArguments.word("terrain", terrain);
    var reached = LoadArguments.word("shelter", shelter);
    var isAllowed =
        Condition.any(
            site.is(SnowTerrain.TERRAIN_B),
            site.is(SnowTerrain.TERRAIN_C),
            site.is(SnowTerrain.TERRAIN_D),
            reached.is(SnowShelter.FULLY_EXPOSED),
            reached.is(SnowShelter.PARTIALLY_EXPOSED));
    var allowed =
        Choice.choose(isAllowed, reached, SnowShelter.PARTIALLY_EXPOSED).as("shelter_allowed");
    return EXPOSURE
        .numberAt(Units.RATIO, allowed, site)
        .onlyIf(isAllowed, NO_SUCH_ROOF.formatted(site))
        .as("exposure_factor", Units.RATIO);
  }

  /**
   * How much of the snow the warmth of the house leaves on a roof.
   *
   * <pre>
   * C_t = printed for how warm the roof is from below
   * </pre>
   *
   * <p>Does not cover heated roofs without ventilation under ASCE 7-22: there the factor goes by
   * the roof's insulation and the ground snow, and the two copies of that table that were seen
   * disagree. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * snowThermalFactor(COLD_VENTILATED, ASCE7_16) // 1.1
   * snowThermalFactor(COLD_VENTILATED, ASCE7_22) // 1.2
   * }</pre>
   *
   * @param roofWarmth how warm the roof is from below
   * @param edition of ASCE 7; in tables 7-16 may be written too
   * @return a factor from 0.85 to 1.3
   * @throws RefusedException if the edition's factor was not read
   * @see "ASCE 7-16, Table 7.3-2, and ASCE 7-22, 7.3.2, secondary source; 7-10 from memory"
   */
  @LibraryFunction
  @Column("thermal_factor")
  public static Figure<Ratio> snowThermalFactor(
      @Column("roof_warmth") OneOf<RoofWarmth> roofWarmth,
      @Column("edition") OneOf<LoadEdition> edition) {
    var warmth = LoadArguments.word("roof_warmth", roofWarmth);
    var printed = LoadArguments.word("edition", edition);
    var isHeld =
        Condition.any(
            printed.is(LoadEdition.ASCE7_10),
            printed.is(LoadEdition.ASCE7_16),
            warmth.is(RoofWarmth.COLD_VENTILATED),
            warmth.is(RoofWarmth.UNHEATED));
    var held = Choice.choose(isHeld, warmth, RoofWarmth.COLD_VENTILATED).as("roof_warmth_held");
    return THERMAL
        .number(Units.RATIO, "ct", LoadArguments.since2016(printed), held)
        .onlyIf(isHeld, NOT_HELD.formatted(warmth))
        .as("thermal_factor", Units.RATIO);
  }

  /**
   * How much more snow a building is made for on which more hangs.
   *
   * <pre>
   * I_s = printed for the risk category; 1 under ASCE 7-22, whose maps hold it
   * </pre>
   *
   * <p>Does not cover which category a building is in: a house is in II. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * snowImportance(RISK_II, ASCE7_16) // 1
   * snowImportance(RISK_IV, ASCE7_10) // 1.2
   * snowImportance(RISK_IV, ASCE7_22) // 1
   * }</pre>
   *
   * @param riskCategory of the building
   * @param edition of ASCE 7; in tables 7-16 may be written too
   * @return a factor from 0.8 to 1.2
   * @throws RefusedException if a word is not one of these
   * @see "ASCE 7-16, Table 1.5-2, taken for 7-10 too, secondary source"
   */
  @LibraryFunction
  @Column("importance")
  public static Figure<Ratio> snowImportance(
      @Column("risk_category") OneOf<RiskCategory> riskCategory,
      @Column("edition") OneOf<LoadEdition> edition) {
    var printed = importance(LoadArguments.word("risk_category", riskCategory));
    return Figure.choose(
            LoadArguments.word("edition", edition).is(LoadEdition.ASCE7_22),
            LoadArguments.ONE,
            printed)
        .as("importance", Units.RATIO, IMPORTANCE.source());
  }

  /** I_s as printed before ASCE 7-22. */
  static Figure<Ratio> importance(Choice<RiskCategory> riskCategory) {
    return IMPORTANCE
        .number(Units.RATIO, "importance", riskCategory)
        .as("importance_by_category", Units.RATIO)
        .symbol("I_s");
  }
}
