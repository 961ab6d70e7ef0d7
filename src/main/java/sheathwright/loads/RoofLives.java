package sheathwright.loads;

import static sheathwright.loads.LoadArguments.constant;

import java.util.Map;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.EditionTables;
import sheathwright.published.LoadEdition;
import sheathwright.published.Published;

/** The load of the people and materials that re-roof a house. */
public final class RoofLives {

  private static final Source RULE = Source.secondHand("ASCE 7-16, 4.8.2");
  private static final Table ROOF_LIVE =
      EditionTables.table(
          "roof_live",
          "roof live loads",
          0,
          RULE,
          Map.of(
              LoadEdition.ASCE7_10, "asce7/2010/roof-live.csv",
              LoadEdition.ASCE7_16, "asce7/2016/roof-live.csv",
              LoadEdition.ASCE7_22, "asce7/2022/roof-live.csv"));
  private static final Table CODE_ROOF_LIVE =
      Published.table("irc/2018/roof-live.csv", "code_roof_live", "roof live loads of the IRC", 1);

  private static final Figure<Ratio> UNREDUCED = LoadArguments.ONE;
  private static final Figure<Ratio> MOST_REDUCED =
      constant("most_reduced", 0.6, Units.RATIO, "0.6", RULE);
  private static final Figure<Ratio> REDUCTION_START =
      constant("reduction_start", 1.2, Units.RATIO, "1.2", RULE);
  private static final Figure<Area> AREA_SCALE =
      constant("reduction_area_sf", 1000, Units.SQUARE_FOOT, "1000 sq ft", RULE);
  private static final Figure<Area> SMALL_AREA =
      constant("small_area_sf", 200, Units.SQUARE_FOOT, "200 sq ft", RULE);
  private static final Figure<Area> LARGE_AREA =
      constant("large_area_sf", 600, Units.SQUARE_FOOT, "600 sq ft", RULE);
  private static final Figure<Ratio> RISE_SCALE =
      constant("reduction_rise_in_12", 20, Units.RISE_IN_12, "20 in 12", RULE);
  private static final Figure<Ratio> LOW_RISE =
      constant("low_rise_in_12", 4, Units.RISE_IN_12, "4 in 12", RULE);
  private static final Figure<Ratio> STEEP_RISE =
      constant("steep_rise_in_12", 12, Units.RISE_IN_12, "12 in 12", RULE);

  private RoofLives() {}

  /**
   * The live load that a roof member is checked for: crews, tools and stacked materials, less on a
   * member that carries much roof, and less on a steep one.
   *
   * <pre>
   * L_r = 20 psf × R_1 × R_2, not under 12 psf
   * R_1 = 1 to 200 sq ft, 1.2 − A_t ÷ 1000 sq ft to 600 sq ft, 0.6 above
   * R_2 = 1 to 4 in 12, 1.2 − F ÷ 20 to 12 in 12, 0.6 above
   * </pre>
   *
   * <p>Does not cover the load of 300 lb on one point, stacks of sheets or shingles, roofs with
   * gardens or people, or snow, which is never reduced so. The span tables of the code take 20 psf
   * on every roof: a steep roof computed with less may go beyond them. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * roofLiveLoad(sqft(260), pitch(4), ASCE7_16) // 18.8 psf
   * roofLiveLoad(sqft(120), pitch(5), ASCE7_16) // 19 psf
   * roofLiveLoad(sqft(700), pitch(8), ASCE7_22) // 12 psf
   * }</pre>
   *
   * @param tributary roof area that the member carries, on the horizontal projection, 0 sq ft to
   *     100000 sq ft
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @param edition of ASCE 7; in tables 7-16 may be written too
   * @return pounds per square foot of horizontal projection
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-16, 4.8.2, alike in 7-10 and 7-22, secondary source"
   */
  @LibraryFunction(words = {"crew", "people on the roof"})
  @Column("live_psf")
  public static Figure<Pressure> roofLiveLoad(
      @Column("tributary_sf") Figure<Area> tributary,
      @Column("rise_in_12") Figure<Ratio> rise,
      @Column("edition") OneOf<LoadEdition> edition) {
    var at = area(tributary).symbol("A_t");
    var f = LoadArguments.rise(rise).symbol("F");
    var printed = LoadArguments.word("edition", edition);

    var byArea = REDUCTION_START.minus(at.dividedBy(AREA_SCALE)).as("by_area", Units.RATIO, RULE);
    var r1AboveSmall =
        Figure.choose(at.isAtMost(LARGE_AREA), byArea, MOST_REDUCED)
            .as("area_factor_over_200_sf", Units.RATIO, RULE);
    var r1 =
        Figure.choose(at.isAtMost(SMALL_AREA), UNREDUCED, r1AboveSmall)
            .as("area_factor", Units.RATIO, RULE)
            .symbol("R_1");
    var byRise = REDUCTION_START.minus(f.dividedBy(RISE_SCALE)).as("by_rise", Units.RATIO, RULE);
    var r2AboveLow =
        Figure.choose(f.isAtMost(STEEP_RISE), byRise, MOST_REDUCED)
            .as("rise_factor_over_4", Units.RATIO, RULE);
    var r2 =
        Figure.choose(f.isAtMost(LOW_RISE), UNREDUCED, r2AboveLow)
            .as("rise_factor", Units.RATIO, RULE)
            .symbol("R_2");

    var basic =
        ROOF_LIVE
            .number(Units.PSF, "basic_psf", printed)
            .as("basic_live_psf", Units.PSF)
            .symbol("L_o");
    var least = ROOF_LIVE.number(Units.PSF, "least_psf", printed).as("least_live_psf", Units.PSF);
    return basic.times(r1).times(r2).in(Units.PSF).max(least).as("live_psf", Units.PSF, RULE);
  }

  /**
   * The least roof live load of the residential code, by slope and by how much roof the member
   * carries.
   *
   * <pre>
   * live = printed for the slope (under 4, from 4, from 12 in 12) and the area (to 200, to 600, over 600 sq ft)
   * </pre>
   *
   * <p>Does not cover snow: the code takes the larger of this and the ground snow load. It does not
   * cover stacks of sheets or shingles, or roofs with gardens or people. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * codeRoofLive(sqft(60), pitch(3)) // 20 psf
   * codeRoofLive(sqft(300), pitch(8)) // 14 psf
   * }</pre>
   *
   * @param tributary roof area that the member carries, on the horizontal projection, 0 sq ft to
   *     100000 sq ft
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @return pounds per square foot of horizontal projection
   * @throws RefusedException if a number lies outside its range
   * @see "IRC 2018, Table R301.6, from memory: one of its nine cells was not read"
   */
  @LibraryFunction
  @Column("live_psf")
  public static Figure<Pressure> codeRoofLive(
      @Column("tributary_sf") Figure<Area> tributary, @Column("rise_in_12") Figure<Ratio> rise) {
    var carried = area(tributary);
    var pitch = LoadArguments.rise(rise);
    var fromLow =
        Choice.choose(pitch.isLessThan(STEEP_RISE), printed("from-4"), printed("from-12"))
            .as("slope_from_4");
    var slope =
        Choice.choose(pitch.isLessThan(LOW_RISE), printed("under-4"), fromLow).as("slope_band");
    var overSmall =
        Choice.choose(carried.isAtMost(LARGE_AREA), printed("to_600"), printed("over_600"))
            .as("area_over_200");
    var area =
        Choice.choose(carried.isAtMost(SMALL_AREA), printed("to_200"), overSmall).as("area_band");
    return CODE_ROOF_LIVE.numberAt(Units.PSF, area, slope).as("live_psf", Units.PSF);
  }

  private static Choice<String> printed(String heading) {
    return Choice.literal(heading);
  }

  private static Figure<Area> area(Figure<Area> tributary) {
    return tributary.within(
        "tributary_sf",
        Units.SQUARE_FOOT,
        Limits.between(0, 100_000, "spacing times span of one rafter; 20 to 40 is usual"));
  }
}
