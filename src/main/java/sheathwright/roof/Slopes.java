package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Lengths along a slope from lengths on the horizontal projection. */
public final class Slopes {

  private static final Source PYTHAGORAS = Source.derived("theorem of Pythagoras");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private Slopes() {}

  /**
   * How many times longer a rafter is than its horizontal run, and so how much larger a roof than
   * its plan.
   *
   * <pre>
   * slope factor = √(1 + (rise ÷ 12)²)
   * </pre>
   *
   * <p>Does not cover hips and valleys, which run across the slope (see {@code hip_valley_factor}).
   *
   * <pre>{@code
   * slopeFactor(pitch(9)) // 1.25
   * slopeFactor(pitch(5)) // 1.0833
   * }</pre>
   *
   * @param rise rise in 12 of run, 0 in 12 to 24 in 12
   * @return a factor of 1 or more
   * @throws RefusedException if the rise lies outside its range
   * @see "derived: theorem of Pythagoras"
   */
  @LibraryFunction(words = {"pitch", "multiplier", "true area"})
  @Column("slope_factor")
  public static Figure<Ratio> slopeFactor(@Column("rise_in_12") Figure<Ratio> rise) {
    var r = Slope.pitch(rise);
    return ONE.plus(r.squared()).squareRoot().as("slope_factor", Units.RATIO, PYTHAGORAS);
  }

  /**
   * How many times longer a hip or valley is than the run of the common rafters beside it, on a
   * roof of equal slopes and square corners.
   *
   * <pre>
   * hip and valley factor = √(2 + (rise ÷ 12)²)
   * </pre>
   *
   * <p>Does not cover slopes that differ, or corners that are not square: there the hip leaves 45°
   * in plan.
   *
   * <pre>{@code
   * hipValleyFactor(pitch(6)) // 1.5
   * hipValleyFactor(pitch(5)) // 1.4743
   * }</pre>
   *
   * @param rise rise in 12 of run, 0 in 12 to 24 in 12
   * @return a factor, from the square root of 2 up
   * @throws RefusedException if the rise lies outside its range
   * @see "derived: theorem of Pythagoras"
   */
  @LibraryFunction(words = {"hip rafter", "valley rafter"})
  @Column("hip_valley_factor")
  public static Figure<Ratio> hipValleyFactor(@Column("rise_in_12") Figure<Ratio> rise) {
    var r = Slope.pitch(rise);
    return TWO.plus(r.squared()).squareRoot().as("hip_valley_factor", Units.RATIO, PYTHAGORAS);
  }

  /**
   * How long a slope is from eave to ridge, when its horizontal run is known.
   *
   * <pre>
   * slope length = run × √(1 + (rise ÷ 12)²)
   * </pre>
   *
   * <p>Does not cover overhangs that the run leaves out: measure the run from the eave edge.
   *
   * <pre>{@code
   * slopeLength(ft(15), pitch(6)) // 16' 9-1/4"
   * }</pre>
   *
   * @param run on the horizontal projection, from the eave edge to below the ridge, 0.5 ft to 200
   *     ft
   * @param rise rise in 12 of run, 0 in 12 to 24 in 12
   * @return feet along the slope
   * @throws RefusedException if either number lies outside its range
   * @see "derived: theorem of Pythagoras"
   */
  @LibraryFunction(words = {"rafter length", "pitch", "true length"})
  @Column("slope_length_ft")
  public static Figure<Length> slopeLength(
      @Column("run_ft") Figure<Length> run, @Column("rise_in_12") Figure<Ratio> rise) {
    var slope = Slope.run(run).rise(rise);
    return slope
        .run()
        .times(slopeFactor(slope.rise()))
        .as("slope_length_ft", Units.FOOT, PYTHAGORAS);
  }
}
