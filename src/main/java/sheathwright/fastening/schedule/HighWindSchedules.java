package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.loads.wind.Exposure;
import sheathwright.published.Published;
import sheathwright.wood.Nds;

/** The ring-shank schedule of the one state code that prints one for high wind. */
public final class HighWindSchedules {

  private static final Table TABLE =
      Published.table("fbc-r/2023/roof-nailing.csv", "high_wind_nailing", "high-wind nailing", 2);
  private static final Source SOURCE = TABLE.source();
  private static final Figure<Ratio> HEAVIER =
      Nds.number("heavier_framing_gravity", 0.49, "0.49", SOURCE);
  private static final Figure<Length> SIX = inch("six_in", 6);
  private static final Figure<Length> FOUR = inch("four_in", 4);
  private static final Figure<Length> THREE = inch("three_in", 3);
  private static final Figure<Length> TWELVE = inch("twelve_in", 12);

  /** The two weights of framing that the table prints. */
  private enum Framing implements Option<Framing> {
    FROM_0_42("from-0.42"),
    FROM_0_49("from-0.49");

    private final String word;

    Framing(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private HighWindSchedules() {}

  private static Figure<Length> inch(String name, double inches) {
    return Figure.constant(name, inches, Units.INCH, SOURCE).symbol((int) inches + " in");
  }

  /**
   * The spacing that the 2023 high-wind house code prints for ring-shank nails in roof panels.
   *
   * <pre>
   * edge  = 6 in, 4 in or 3 in, the greatest that is printed for the next larger printed wind
   * field = the same, or 12 in where the table prints 6/12
   * </pre>
   *
   * <p>Does not cover rafters further apart than 24 in, other nails than rsrs-03, or rsrs-01 and
   * rsrs-04 where the panel is 15/32 in or thinner, nor the least panel thickness of the same
   * section. The printed spacing holds within 4 ft of the perimeter, ridges and hips; further in 6
   * in are allowed. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * highWindSchedule(mph(160), EXPOSURE_C, number(0.42)).edge() // 4 in
   * highWindSchedule(mph(115), EXPOSURE_B, number(0.5)).field() // 12 in
   * }</pre>
   *
   * @param wind ultimate wind speed, 85 mph to 180 mph
   * @param exposure of the site
   * @param specificGravity G of the rafters, 0.42 to 0.8; the table prints 0.42 and 0.49
   * @return spacings in inches on panel edges and in the field
   * @throws RefusedException if a number lies outside its range
   * @see "FBC-Residential 2023 section R803.2.3.1, two copies read"
   */
  @LibraryFunction(words = {"hurricane", "ring shank"})
  public static HighWindSpacing highWindSchedule(
      @Column("wind_mph") Figure<Speed> wind,
      @Column("exposure") OneOf<Exposure> exposure,
      @Column("specific_gravity") Figure<Ratio> specificGravity) {
    Choice<Exposure> site = exposure.choice().argument("exposure");
    var mph =
        wind.within(
            "wind_mph", Units.MPH, Limits.between(85, 180, "ultimate, from the code's map"));
    var gravity =
        specificGravity.within(
            "specific_gravity",
            Units.RATIO,
            Limits.between(0.42, Nds.MOST_GRAVITY, "the table begins at 0.42"));

    var framing =
        Choice.choose(gravity.isAtLeast(HEAVIER), Framing.FROM_0_49, Framing.FROM_0_42)
            .as("framing");
    Unit<Speed> unit = Units.MPH;
    var narrow =
        Figure.choose(mph.isAtMost(TABLE.number(unit, "four_mph", site, framing)), FOUR, THREE)
            .as("four_or_three_in", Units.INCH);
    var edge =
        Figure.choose(mph.isAtMost(TABLE.number(unit, "six_mph", site, framing)), SIX, narrow)
            .as("edge_spacing_in", Units.INCH, SOURCE);
    var field =
        Figure.choose(
                mph.isAtMost(TABLE.number(unit, "six_twelve_mph", site, framing)), TWELVE, edge)
            .as("field_spacing_in", Units.INCH, SOURCE);
    return new HighWindSpacing(edge, field);
  }
}
