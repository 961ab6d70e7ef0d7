package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;

/**
 * The hours of one unit of work as the firm's own log gives them.
 *
 * @param hours for one unit, the slope of a line through the log's days
 * @param error its standard error
 * @param rows of the log that it was fitted to
 */
public record FittedHours(
    @Column(value = "fitted_h", least = 0.0001, most = 100, rule = "hours of one unit, by the log")
        Figure<Time> hours,
    @Column(
            value = "se_h",
            least = 0.000001,
            most = 100,
            rule = "the standard error of the fit, in hours of one unit")
        Figure<Time> error,
    @Column(
            value = "rows",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 1,
            most = 100_000,
            rule = "rows of the log that the line was fitted to")
        Figure<Ratio> rows) {

  private static final Columns COLUMNS = Columns.of(FittedHours.class);

  public FittedHours {
    hours = COLUMNS.let("hours", hours);
    error = COLUMNS.let("error", error);
    rows = COLUMNS.let("rows", rows);
  }

  /** Hours of one unit; how sure they are is still to be said. */
  public static FittedHours hours(Figure<Time> each) {
    return new FittedHours(each, null, null);
  }

  public FittedHours error(Figure<Time> standard) {
    return new FittedHours(hours, standard, rows);
  }

  public FittedHours rows(Figure<Ratio> many) {
    return new FittedHours(hours, error, many);
  }
}
