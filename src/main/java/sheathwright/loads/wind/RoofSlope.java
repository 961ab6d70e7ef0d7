package sheathwright.loads.wind;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The slopes, in degrees, between which the printed roof coefficients change. */
enum RoofSlope implements Option<RoofSlope> {
  TO_7("to-7"),
  FROM_7("7-to-20"),
  FROM_20("20-to-27"),
  FROM_27("27-to-45"),
  AT_45("at-45");

  private static final Figure<Ratio> RISE_AT_45 = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> RISE_AT_7 = rise(7);
  private static final Figure<Ratio> RISE_AT_20 = rise(20);
  private static final Figure<Ratio> RISE_AT_27 = rise(27);

  private final String word;

  RoofSlope(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** Where a pitch of 0 in 12 to 12 in 12 belongs. */
  static Choice<RoofSlope> of(Figure<Ratio> riseIn12) {
    var pitch = riseIn12.as("pitch", Units.RATIO);
    var over27 =
        Choice.choose(pitch.isLessThan(RISE_AT_45), FROM_27, AT_45).as("slope_over_27_degrees");
    var over20 =
        Choice.choose(pitch.isAtMost(RISE_AT_27), FROM_20, over27).as("slope_over_20_degrees");
    var over7 =
        Choice.choose(pitch.isAtMost(RISE_AT_20), FROM_7, over20).as("slope_over_7_degrees");
    return Choice.choose(pitch.isAtMost(RISE_AT_7), TO_7, over7).as("slope_in_degrees");
  }

  private static Figure<Ratio> rise(int degrees) {
    return Figure.constant(
            "rise_at_%s_degrees".formatted(degrees),
            Math.tan(Math.toRadians(degrees)),
            Units.RATIO,
            Source.derived("tangent of the slope"))
        .symbol("tan %s°".formatted(degrees));
  }
}
