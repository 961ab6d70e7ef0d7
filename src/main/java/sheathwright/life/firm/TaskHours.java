package sheathwright.life.firm;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.forecast.BookHours;
import sheathwright.forecast.FirmRecords;
import sheathwright.forecast.FittedHours;
import sheathwright.forecast.HoursRate;
import sheathwright.forecast.LineFit;

/**
 * The hours of one task by all rows of the logs: so many for each visit, and so many for each of
 * what is counted.
 *
 * @param rows of the logs
 * @param line through them; none where there are too few, or they tell of none
 * @param lack why there is none
 */
record TaskHours(List<Done> rows, Optional<LineFit> line, String lack) {

  /** An error below which a log was not kept by the clock. */
  private static final double NO_ERROR = 0.000001;

  static TaskHours of(List<Done> rows) {
    if (rows.size() < LineFit.FEWEST) {
      return none(
          rows,
          "%s row%s: at least %s needed"
              .formatted(rows.size(), rows.size() == 1 ? "" : "s", LineFit.FEWEST));
    }
    if (rows.stream().mapToDouble(Done::quantity).distinct().count() == 1) {
      return none(
          rows,
          "every row has the same quantity: what a visit and what one more takes is not told");
    }
    LineFit line = LineFit.of(rows.stream().map(Done::point).toList());
    if (line.each() <= 0) {
      return none(rows, "by the log more of it takes no more hours: look at its rows");
    }
    if (line.error() < NO_ERROR) {
      return none(rows, "the rows lie on one line exactly, which hours by the clock never do");
    }
    return new TaskHours(rows, Optional.of(line), "");
  }

  private static TaskHours none(List<Done> rows, String lack) {
    return new TaskHours(rows, Optional.empty(), lack);
  }

  /**
   * What follows for a rate.
   *
   * @param key of the rate
   * @param book what the office reckons with
   */
  Proposal proposal(String key, Old book) {
    if (line.isEmpty()) {
      return Proposal.none(key, book.shown(), rows.size(), lack);
    }
    if (book.value().isEmpty()) {
      return Proposal.none(key, book.shown(), rows.size(), book.lack(key));
    }
    try {
      HoursRate rate =
          FirmRecords.hoursRate(
              FittedHours.hours(hours(line.get().each()))
                  .error(hours(line.get().error()))
                  .rows(Figure.of(rows.size(), Units.RATIO)),
              BookHours.hours(hours(book.value().get())));
      double each = rate.hours().value();
      double off = Proposal.NINE_OF_TEN * line.get().error() * Math.sqrt(rate.weight().value());
      return Proposal.of(
              key, book.shown(), each, rows.size(), Proposal.range(each - off, each + off))
          .visit(line.get().start());
    } catch (RefusedException refused) {
      return Proposal.none(key, book.shown(), rows.size(), refused.getMessage());
    }
  }

  private static Figure<Time> hours(double number) {
    return Figure.of(number, Units.HOUR);
  }
}
