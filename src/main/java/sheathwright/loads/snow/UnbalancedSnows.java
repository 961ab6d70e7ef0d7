package sheathwright.loads.snow;

import static sheathwright.loads.LoadArguments.NOTHING;
import static sheathwright.loads.LoadArguments.NO_LENGTH;
import static sheathwright.loads.LoadArguments.NO_LOAD;
import static sheathwright.loads.LoadArguments.ONE;
import static sheathwright.loads.LoadArguments.constant;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Narrowed;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.loads.LoadArguments;

/** Snow that the wind carries over a ridge. */
public final class UnbalancedSnows {

  private static final Source RULE = Source.secondHand("ASCE 7-16, 7.6.1");
  private static final Figure<Ratio> FLATTEST =
      constant("flattest_unbalanced_in_12", 0.5, Units.RISE_IN_12, "1/2 in 12", RULE);
  private static final Figure<Ratio> STEEPEST =
      constant("steepest_unbalanced_in_12", 7, Units.RISE_IN_12, "7 in 12", RULE);
  private static final Figure<Length> NARROW = constant("narrow_ft", 20, Units.FOOT, "20 ft", RULE);
  private static final Figure<Ratio> WINDWARD_SHARE =
      constant("windward_share", 0.3, Units.RATIO, "0.3", RULE);
  private static final Figure<Ratio> EIGHT = constant("width_eighths", 8, Units.RATIO, "8", RULE);
  private static final Figure<Ratio> THREE = constant("width_thirds", 3, Units.RATIO, "3", RULE);

  private static final double LEAST_SNOW = 1;
  private static final Limits GROUND_SNOW =
      Limits.between(LEAST_SNOW, LoadArguments.MOST_SNOW, LoadArguments.SNOW_RULE);

  private UnbalancedSnows() {}

  /**
   * The snow on the two sides of a hip or gable roof after the wind has carried it over the ridge,
   * which is what most house rafters have to be checked for.
   *
   * <pre>
   * W ≤ 20 ft, simple rafters:  windward 0, leeward I_s p_g
   * else:                       windward 0.3 p_s, leeward p_s and h_d γ ÷ √S more over 8/3 h_d √S from the ridge
   * h_d = 0.43 ∛l_u ∜(p_g + 10) − 1.5, l_u = W, not under 20 ft
   *     = 1.5 √(p_g^0.74 l_u^0.70 W_2^1.7 ÷ γ) in ASCE 7-22
   * γ   = 0.13 p_g + 14, not over 30 pcf;  S = 12 ÷ rise
   * </pre>
   *
   * <p>Does not cover slopes under 1/2 in 12 and over 7 in 12, where there is no such case and the
   * even snow holds on both sides; curved, single-slope and saw-tooth roofs; drifts on lower roofs,
   * behind dormers and chimneys, and in valleys. With a drift, an importance other than 1 is
   * refused: how it enters was not read. Under ASCE 7-22 loads are at strength level. Screening
   * only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * unbalancedSnow(GroundSnow.of(psf(40), ASCE7_16), psf(30.8), number(1), SnowSlope.rise(pitch(6)).eaveToRidge(ft(14)), number(0.65)).leeward() // 40 psf
   * unbalancedSnow(GroundSnow.of(psf(30), ASCE7_10), psf(25), number(1), SnowSlope.rise(pitch(0.5)).eaveToRidge(ft(130)), number(0.65)).surcharge() // 14.54 psf
   * }</pre>
   *
   * @param groundSnow of the edition's own map; there must be some
   * @param sloped p_s, the even snow on this slope (see {@code roof_snow}), 0 psf to 300 psf
   * @param importance I_s, 0.8 to 1.2; under ASCE 7-22 nothing but 1
   * @param slope that the wind carries it from
   * @param winterWind W_2 of the site, which ASCE 7-22 alone asks for, 0.2 to 0.7
   * @return loads in psf of horizontal projection, width and height of the drift in feet, its
   *     density, and the case; the width ends at the eave
   * @throws RefusedException if a number lies outside its range, or the importance is not 1 under
   *     ASCE 7-22 or with a drift
   * @see "ASCE 7-16, 7.6.1, drift height as in ASCE 7-10, and the drift height of ASCE 7-22,
   *     secondary source; 0.65 as the most on the map of winter wind from memory"
   */
  @LibraryFunction(words = {"drift"})
  public static UnbalancedSnow unbalancedSnow(
      @Narrowed(
              column = "ground_snow_psf",
              least = LEAST_SNOW,
              most = LoadArguments.MOST_SNOW,
              rule = LoadArguments.SNOW_RULE)
          GroundSnow groundSnow,
      @Column("sloped_psf") Figure<Pressure> sloped,
      @Column(value = "importance", preset = "1") Figure<Ratio> importance,
      SnowSlope slope,
      @Column(value = "winter_wind", preset = "0.65") Figure<Ratio> winterWind) {
    var printed = groundSnow.edition().choice();
    var is = LoadArguments.importance(importance, printed);
    var ps =
        sloped
            .within("sloped_psf", Units.PSF, Limits.between(0, 300, "what roof_snow answers"))
            .symbol("p_s");
    var pitch = slope.rise();
    var w = slope.eaveToRidge();
    var w2 = SnowDrift.winterWind(winterWind);
    var holds = caseOf(slope);
    var isDrift = holds.is(UnbalancedCase.RIDGE_DRIFT);
    var alone = holds.is(UnbalancedCase.LEEWARD_ALONE);
    var isEven = holds.is(UnbalancedCase.NOT_ASKED);
    // Every argument is held to its limits, also in a case that does not need it.
    var sound =
        Condition.all(
            Condition.any(isEven, alone, is.isTheSameAs(ONE)),
            ps.isAtLeast(NO_LOAD),
            w2.isMoreThan(NOTHING));
    var pg =
        groundSnow
            .load()
            .within("ground_snow_psf", Units.PSF, GROUND_SNOW)
            .symbol("")
            .onlyIf(
                sound,
                "importance is %s; with a drift below the ridge it must be 1, for how it enters the height of a drift was not read"
                    .formatted(is))
            .as("ground_snow_held_psf", Units.PSF)
            .symbol("p_g");

    var density = SnowDrift.density(pg);
    var height = SnowDrift.height(pg, w, w2, density, printed);
    var spread =
        ONE.dividedBy(pitch.max(FLATTEST).as("pitch_of_a_drift", Units.RATIO))
            .squareRoot()
            .as("root_of_run_per_rise", Units.RATIO, RULE)
            .symbol("√S");
    var drift = height.times(density).dividedBy(spread).as("drift_psf", Units.PSF, RULE);
    var width =
        EIGHT
            .times(height)
            .times(spread)
            .dividedBy(THREE)
            .in(Units.FOOT)
            .min(w)
            .as("drift_to_the_eave_ft", Units.FOOT, RULE);

    var onGround = is.times(pg).as("ground_snow_on_roof_psf", Units.PSF, RULE);
    var swept = WINDWARD_SHARE.times(ps).as("swept_psf", Units.PSF, RULE);
    var windwardIfAsked =
        Figure.choose(alone, NO_LOAD, swept).as("windward_if_asked_psf", Units.PSF);
    return new UnbalancedSnow(
        Figure.choose(isEven, ps, windwardIfAsked).as("windward_psf", Units.PSF, RULE),
        Figure.choose(alone, onGround, ps).as("leeward_psf", Units.PSF, RULE),
        Figure.choose(isDrift, drift, NO_LOAD).as("drift_surcharge_psf", Units.PSF, RULE),
        Figure.choose(isDrift, width, NO_LENGTH).as("drift_width_ft", Units.FOOT, RULE),
        height,
        density,
        holds);
  }

  private static Choice<UnbalancedCase> caseOf(SnowSlope slope) {
    var pitch = slope.rise();
    var isAsked = Condition.all(pitch.isAtLeast(FLATTEST), pitch.isAtMost(STEEPEST));
    var isNarrow =
        Condition.all(
            slope.eaveToRidge().isAtMost(NARROW), slope.simpleRafters().choice().is(YesNo.YES));
    var ifAsked =
        Choice.choose(isNarrow, UnbalancedCase.LEEWARD_ALONE, UnbalancedCase.RIDGE_DRIFT)
            .as("case_if_asked");
    return Choice.choose(isAsked, ifAsked, UnbalancedCase.NOT_ASKED).as("unbalanced_case", RULE);
  }
}
