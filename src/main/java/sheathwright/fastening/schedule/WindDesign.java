package sheathwright.fastening.schedule;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Whether a house may have to be designed for wind, and not only nailed by the code's table. */
public enum WindDesign implements Option<WindDesign> {
  NOT_BY_SPEED("not by this wind speed"),
  MAY_BE_REQUIRED("wind design may be required here, IRC R301.2.1.1 and its map");

  /** Where the prescriptive code says what it answers to. */
  static final Source PRESCRIPTIVE = Source.fromMemory("IRC R301.2.1.1");

  private static final Figure<Speed> MAPPED =
      Figure.constant("mapped_wind_mph", 115, Units.MPH, PRESCRIPTIVE).symbol("115 mph");

  private final String word;

  WindDesign(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** What a wind speed of the code's map asks for. */
  public static Choice<WindDesign> at(Figure<Speed> wind) {
    return Choice.choose(wind.isAtLeast(MAPPED), MAY_BE_REQUIRED, NOT_BY_SPEED)
        .as("wind_design", PRESCRIPTIVE);
  }
}
