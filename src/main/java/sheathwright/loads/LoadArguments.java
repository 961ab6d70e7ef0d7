package sheathwright.loads;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Slope;

/** What the functions of roof loads are told, held to its range. */
public final class LoadArguments {

  public static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  public static final Figure<Ratio> NOTHING = Figure.of(0, Units.RATIO);
  public static final Figure<Pressure> NO_LOAD = Figure.of(0, Units.PSF);
  public static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);

  private static final Figure<Ratio> DEGREES_IN_A_RADIAN =
      constant(
          "degrees_in_a_radian",
          180 / Math.PI,
          Units.RATIO,
          "180° ÷ π",
          Source.derived("half a turn is 180 degrees"));

  /** The ranges of columns that stand in several things, or by themselves and in a thing. */
  public static final double STEEPEST_IN_12 = 48;

  public static final double LEAST_RUN_FT = 1;
  public static final double MOST_RUN_FT = 500;
  public static final String RUN_RULE =
      "on the horizontal projection; half the width of a gable roof";
  public static final double MOST_SNOW = 300;
  public static final String SNOW_RULE =
      "of the code's map or the building department; 30 is usual";

  private LoadArguments() {}

  public static Figure<Ratio> rise(Figure<Ratio> rise) {
    return rise.within(
        "rise_in_12", Units.RISE_IN_12, Limits.between(0, STEEPEST_IN_12, Slope.RISE_RULE));
  }

  /** A slope in degrees, from its rise in 12. */
  public static Figure<Ratio> degrees(Figure<Ratio> riseIn12) {
    return riseIn12
        .as("pitch", Units.RATIO)
        .arctangent()
        .times(DEGREES_IN_A_RADIAN)
        .as("slope_in_degrees", Units.RATIO, Source.derived("angle of the slope"))
        .symbol("θ");
  }

  /** The importance factor, which ASCE 7-22 has put into its maps. */
  public static Figure<Ratio> importance(Figure<Ratio> importance, Choice<LoadEdition> edition) {
    var factor =
        importance.within(
            "importance", Units.RATIO, Limits.between(0.8, 1.2, "1 for a house, risk category II"));
    var stands =
        Condition.any(
            edition.is(LoadEdition.ASCE7_10),
            edition.is(LoadEdition.ASCE7_16),
            factor.isTheSameAs(ONE));
    return factor
        .onlyIf(
            stands,
            "importance is %s; under ASCE 7-22 it must be 1, for its ground snow maps, one for each"
                    .formatted(factor)
                + " risk category, hold it already")
        .as("importance_factor", Units.RATIO)
        .symbol("I_s");
  }

  /** The edition whose print stands for this one: 7-10 is given what was read of 7-16. */
  public static Choice<LoadEdition> since2016(Choice<LoadEdition> edition) {
    return Choice.choose(edition.is(LoadEdition.ASCE7_10), LoadEdition.ASCE7_16, edition)
        .as("printed_edition", Source.fromMemory("ASCE 7-10 has the values of 7-16 here"));
  }

  public static Figure<Length> eaveToRidge(Figure<Length> run) {
    return run.within(
            "eave_to_ridge_ft", Units.FOOT, Limits.between(LEAST_RUN_FT, MOST_RUN_FT, RUN_RULE))
        .symbol("W");
  }

  public static <E> Choice<E> word(String name, OneOf<E> word) {
    return word.choice().argument(name);
  }

  public static <Q extends Quantity> Figure<Q> constant(
      String name, double number, Unit<Q> unit, String symbol, Source source) {
    return Figure.constant(name, number, unit, source).symbol(symbol);
  }
}
