package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;

/**
 * The hours of one unit of work as the office's book has them.
 *
 * @param hours for one unit
 * @param spread how far firms lie from the book, as a standard deviation in percent of it
 */
public record BookHours(
    @Column(value = "book_h", least = 0.0001, most = 100, rule = "hours of one unit, by the book")
        Figure<Time> hours,
    @Column(
            value = "book_spread_pct",
            preset = "25",
            least = 1,
            most = 200,
            rule = "a guess: firms differ by about a quarter")
        Figure<Ratio> spread) {

  private static final Columns COLUMNS = Columns.of(BookHours.class);

  public BookHours {
    hours = COLUMNS.let("hours", hours);
    spread = COLUMNS.let("spread", spread);
  }

  /** Hours of one unit, with the usual spread. */
  public static BookHours hours(Figure<Time> each) {
    return new BookHours(each, null);
  }

  public BookHours spread(Figure<Ratio> percent) {
    return new BookHours(hours, percent);
  }
}
