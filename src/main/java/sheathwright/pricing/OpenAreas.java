package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** How much of a roof a crew opens and closes in a day. */
public final class OpenAreas {

  private static final Figure<Ratio> CERTAIN = Figure.of(1, Units.RATIO);

  private OpenAreas() {}

  /**
   * How many squares of roof a crew may open today so that they are dry again by the evening.
   *
   * <pre>
   * squares = crew × hours × efficiency ÷ hours per square
   * </pre>
   *
   * <p>Does not cover weather, daylight, or what is found when the deck lies open: the hours of a
   * square hold tear-off, repair and dry-in together.
   *
   * <pre>{@code
   * openArea(WorkDay.crew(number(4)).hours(hours(8)).efficiency(pct(75)), hoursPerSquare(3)) // 8 squares
   * }</pre>
   *
   * @param day the crew, its hours and how much of them goes into the work
   * @param hoursPerSquare hours of labor from tear-off to dry-in for a square of 100 sq ft, 0.05 to
   *     100
   * @return squares that may be opened in a day
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction(
      words = {"how much may I open today", "tear off", "dry in", "open", "day", "rain", "crew"})
  @Column(value = "squares_per_day", unit = "square")
  public static Figure<Area> openArea(
      WorkDay day,
      @Column(value = "hours_per_square", unit = "h/square")
          Figure<Per<Time, Area>> hoursPerSquare) {
    var each =
        hoursPerSquare.within(
            "hours_per_square",
            Units.HOURS_PER_SQUARE,
            Limits.between(0.05, 100, "from tear-off to dry-in, 2 to 6 is usual"));
    var worked =
        day.crew().times(day.hours()).times(day.efficiency()).as("hours_worked_h", Units.HOUR);
    return worked.dividedBy(each).as("squares_per_day", Units.SQUARE, Source.COMMON_PRACTICE);
  }

  /**
   * From which chance of rain on a roof stays closed.
   *
   * <pre>
   * chance = cost of a lost day ÷ (damage × share of the roof that is open),   at most 100 %
   * </pre>
   *
   * <p>Does not cover people and their belongings: no price is put on a ceiling that falls on
   * somebody. Wind, lightning and wet footing keep a crew off the roof whatever this says.
   *
   * <pre>{@code
   * rainThreshold(RainRisk.lostDay(usd(780)).damage(usd(4200)).open(number(0.5))) // 37.14 %
   * }</pre>
   *
   * @param risk a lost day, the damage of rain into a wholly open roof, and how much is opened
   * @return the chance of rain from which on nothing is opened, in percent
   * @throws RefusedException if a number lies outside its range
   * @see "derived: arithmetic: both choices cost the same on average"
   */
  @LibraryFunction(words = {"weather", "open today", "tarp", "rain chance", "forecast"})
  @Column(value = "chance_pct")
  public static Figure<Ratio> rainThreshold(RainRisk risk) {
    return risk.lostDay()
        .dividedBy(risk.damage().times(risk.open()))
        .as("loss_ratio", Units.RATIO)
        .min(CERTAIN)
        .as("chance_pct", Units.PERCENT, Source.ARITHMETIC);
  }
}
