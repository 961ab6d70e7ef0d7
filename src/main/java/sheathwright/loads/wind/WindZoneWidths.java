package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Marked;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.roof.Slope;

/** How wide the zones are in which the wind pulls harder, and how high the roof stands. */
public final class WindZoneWidths {

  private static final Source FIGURES = Source.secondHand("ASCE 7-10, notes of Figure 30.4-2A");
  private static final Figure<Ratio> TENTH = constant("width_share", 0.1);
  private static final Figure<Ratio> OF_HEIGHT = constant("height_share", 0.4);
  private static final Figure<Ratio> LEAST_SHARE = constant("least_width_share", 0.04);
  private static final Figure<Length> LEAST =
      Figure.constant("least_zone_width_ft", 3, Units.FOOT, FIGURES).symbol("3 ft");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private WindZoneWidths() {}

  /**
   * How wide the strips along eave, rake, ridge and hip are in which the wind pulls harder, on the
   * flat.
   *
   * <pre>
   * a = the lesser of 0.1 × least width and 0.4 × height, but not under 0.04 × least width, nor 3 ft
   * </pre>
   *
   * <p>Does not cover roofs of 7 degrees or less under ASCE 7-16 and 7-22, whose zones go by the
   * height. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * zoneWidth(ft(28), RoofHeight.mean(ft(20))) // 3' 0"
   * zoneWidth(ft(120), RoofHeight.mean(ft(12))) // 4' 9-5/8"
   * }</pre>
   *
   * @param leastWidth the lesser of the house's two widths, 8 ft to 300 ft
   * @param height of the roof
   * @return feet on the horizontal projection
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-10, notes of Figure 30.4-2A, secondary source"
   */
  @LibraryFunction(words = {"corner zone", "edge zone"})
  @Column(value = "zone_width_ft", marked = Marked.UP)
  public static Figure<Length> zoneWidth(
      @Column("least_width_ft") Figure<Length> leastWidth, RoofHeight height) {
    var width =
        leastWidth.within(
            "least_width_ft", Units.FOOT, Limits.between(8, 300, "the house's shorter side"));
    var lesser =
        width
            .times(TENTH)
            .in(Units.FOOT)
            .min(height.mean().times(OF_HEIGHT).in(Units.FOOT))
            .as("zone_by_size_ft", Units.FOOT, FIGURES);
    return lesser
        .max(width.times(LEAST_SHARE).in(Units.FOOT))
        .max(LEAST)
        .as("zone_width_ft", Units.FOOT, FIGURES);
  }

  /**
   * How high a roof stands on the average of eave and ridge, as wind loads want it.
   *
   * <pre>
   * height = eave height + run × rise ÷ 12 ÷ 2
   * </pre>
   *
   * <p>Does not cover roofs under 10 degrees, for which the eave height may be taken, and ridges of
   * unequal height. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * meanRoofHeight(ft(10), Slope.run(ft(16)).rise(pitch(6))) // 14' 0"
   * }</pre>
   *
   * @param eave of the eave above the ground, 1 ft to 60 ft
   * @param slope from the eave up
   * @return feet above the ground
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-16, definition of mean roof height, secondary source"
   */
  @LibraryFunction
  @Column("height_ft")
  public static Figure<Length> meanRoofHeight(
      @Column("eave_height_ft") Figure<Length> eave, Slope slope) {
    var low = eave.within("eave_height_ft", Units.FOOT, Limits.between(1, 60, "9 is usual"));
    var pitch = slope.rise().as("pitch", Units.RATIO);
    var climb = slope.run().times(pitch).as("climb_ft", Units.FOOT);
    return low.plus(climb.dividedBy(TWO).in(Units.FOOT))
        .as("height_ft", Units.FOOT, Source.secondHand("ASCE 7-16, mean roof height"));
  }

  private static Figure<Ratio> constant(String name, double number) {
    return Figure.constant(name, number, Units.RATIO, FIGURES).symbol(String.valueOf(number));
  }
}
