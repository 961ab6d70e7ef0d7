package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;

/**
 * One slope of a roof in plan and pitch.
 *
 * @param run on the horizontal projection, from the eave edge to below the ridge
 * @param rise rise in 12 of run
 */
public record Slope(
    @Column(
            value = "run_ft",
            least = 0.5,
            most = 200,
            rule = "from the eave edge to below the ridge, half the width of a gable")
        Figure<Length> run,
    @Column(value = "rise_in_12", least = 0, most = 24, rule = Slope.RISE_RULE)
        Figure<Ratio> rise) {

  /** What a rise is, wherever one is a column. */
  public static final String RISE_RULE = "inches of rise in 12 of run; 6 is a middling roof";

  private static final Columns COLUMNS = Columns.of(Slope.class);

  public Slope {
    run = COLUMNS.let("run", run);
    rise = COLUMNS.let("rise", rise);
  }

  /** A slope over this run; its rise is still to be said. */
  public static Slope run(Figure<Length> onTheFlat) {
    return new Slope(onTheFlat, null);
  }

  public Slope rise(Figure<Ratio> in12) {
    return new Slope(run, in12);
  }

  /** A rise by itself, held to the same range. */
  static Figure<Ratio> pitch(Figure<Ratio> rise) {
    return COLUMNS.let("rise", rise).as("pitch", Units.RATIO);
  }
}
