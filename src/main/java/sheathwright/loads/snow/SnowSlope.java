package sheathwright.loads.snow;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;
import sheathwright.loads.LoadArguments;
import sheathwright.roof.Slope;

/**
 * One slope of a hip or gable roof, from which wind carries snow over the ridge.
 *
 * @param rise rise in 12 of run
 * @param eaveToRidge W on the horizontal projection
 * @param simpleRafters whether each rafter runs from eave to ridge by itself, carried at both ends
 */
public record SnowSlope(
    @Column(
            value = "rise_in_12",
            least = 0,
            most = LoadArguments.STEEPEST_IN_12,
            rule = Slope.RISE_RULE)
        Figure<Ratio> rise,
    @Column(
            value = "eave_to_ridge_ft",
            least = LoadArguments.LEAST_RUN_FT,
            most = LoadArguments.MOST_RUN_FT,
            rule = LoadArguments.RUN_RULE,
            symbol = "W")
        Figure<Length> eaveToRidge,
    @Column(value = "simple_rafters", preset = "yes") OneOf<YesNo> simpleRafters) {

  private static final Columns COLUMNS = Columns.of(SnowSlope.class);

  public SnowSlope {
    rise = COLUMNS.let("rise", rise);
    eaveToRidge = COLUMNS.let("eaveToRidge", eaveToRidge);
    simpleRafters = COLUMNS.let("simpleRafters", simpleRafters);
  }

  /** A slope so steep; how far it runs is still to be said. */
  public static SnowSlope rise(Figure<Ratio> in12) {
    return new SnowSlope(in12, null, null);
  }

  public SnowSlope eaveToRidge(Figure<Length> run) {
    return new SnowSlope(rise, run, simpleRafters);
  }

  public SnowSlope simpleRafters(OneOf<YesNo> areSimple) {
    return new SnowSlope(rise, eaveToRidge, areSimple);
  }
}
