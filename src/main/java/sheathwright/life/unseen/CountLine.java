package sheathwright.life.unseen;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Units;
import sheathwright.forecast.Chances;

/**
 * One number of bad places with its chances: a line of the list that all prices are worked out
 * from.
 *
 * @param bad so many places
 * @param chance that it is just so many
 * @param reached chance that it is no more
 * @param beyond how many more there are on average, none counted where there are fewer
 * @param sheets what they count on the bill
 */
record CountLine(
    Figure<Sheets> bad,
    Figure<Ratio> chance,
    Figure<Ratio> reached,
    Figure<Sheets> beyond,
    Figure<Sheets> sheets) {

  /** What is rarer changes no cent: it is counted with the last line. */
  private static final double NEVER = 1e-7;

  /**
   * The lines of a forecast, from none up.
   *
   * @param perPlace sheets that a place counts on the bill
   */
  static List<CountLine> of(JobForecast forecast, Figure<Ratio> perPlace) {
    Chances chances = forecast.chances();
    List<CountLine> lines = new ArrayList<>();
    int last = 0;
    while (chances.moreThan(last) > NEVER) {
      last++;
    }
    for (int count = 0; count <= last; count++) {
      boolean isLast = count == last;
      Figure<Sheets> bad = forecast.places("", count);
      lines.add(
          new CountLine(
              bad,
              forecast.chance("", isLast ? chances.moreThan(count - 1) : chances.of(count)),
              forecast.chance("", isLast ? 1 : 1 - chances.moreThan(count)),
              forecast.places("", isLast ? 0 : chances.beyond(count)),
              bad.times(perPlace).in(Units.SHEET)));
    }
    return lines;
  }
}
