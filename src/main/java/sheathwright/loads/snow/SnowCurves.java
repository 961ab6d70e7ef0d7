package sheathwright.loads.snow;

import static sheathwright.loads.LoadArguments.NOTHING;
import static sheathwright.loads.LoadArguments.ONE;
import static sheathwright.loads.LoadArguments.constant;

import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.loads.LoadArguments;
import sheathwright.published.EditionTables;
import sheathwright.published.LoadEdition;

/** The curves by which snow grows less on steeper roofs. */
final class SnowCurves {

  private static final Source FIGURE =
      Source.secondHand("ASCE 7-16, Figure 7.4-1; of 7-22 the colder of two copies");
  private static final Table CURVES =
      EditionTables.table(
          "slope_curves",
          "slopes to which the roof slope factor is 1",
          1,
          FIGURE,
          Map.of(
              LoadEdition.ASCE7_16, "asce7/2016/slope-curves.csv",
              LoadEdition.ASCE7_22, "asce7/2022/slope-curves.csv"));
  private static final Figure<Ratio> COOL = constant("cool_to", 1.1, Units.RATIO, "1.1", FIGURE);
  private static final Figure<Ratio> NO_SNOW =
      constant("no_snow_from_degrees", 70, Units.RATIO, "70", FIGURE);

  private SnowCurves() {}

  /** C_s of a slope in degrees; a thermal factor between two curves takes the colder. */
  static Figure<Ratio> slopeFactor(
      SnowRoof roof, Figure<Ratio> degrees, Choice<LoadEdition> edition) {
    var overWarm =
        Choice.choose(
                roof.thermalFactor().isAtMost(COOL), Choice.literal("cool"), Choice.literal("cold"))
            .as("curve_over_warm");
    var curve =
        Choice.choose(roof.thermalFactor().isAtMost(ONE), Choice.literal("warm"), overWarm)
            .as("slope_curve");
    var surface =
        Choice.choose(
                roof.slippery().choice().is(YesNo.YES),
                Choice.literal("slippery"),
                Choice.literal("rough"))
            .as("surface");
    var start =
        CURVES
            .numberAt(Units.RATIO, surface, LoadArguments.since2016(edition), curve)
            .as("full_snow_to_degrees", Units.RATIO)
            .symbol("s_0");
    var falling =
        NO_SNOW
            .minus(degrees)
            .dividedBy(NO_SNOW.minus(start))
            .in(Units.RATIO)
            .max(NOTHING)
            .as("falling_slope_factor", Units.RATIO, FIGURE);
    return Figure.choose(degrees.isAtMost(start), ONE, falling)
        .as("roof_slope_factor", Units.RATIO, FIGURE)
        .symbol("C_s");
  }
}
