package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What a firm's own records tell: kept sheets that failed, hours that work took. */
public final class FirmRecords {

  private static final Source EXACT =
      Source.derived("exact one-sided limit of a share, Clopper and Pearson 1934");
  private static final Source WEIGHED =
      Source.derived(
          "mean weighed by precision; the idea of credibility, Bühlmann 1967, from memory");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private FirmRecords() {}

  /**
   * How often an old sheet that was kept has failed under the new covering.
   *
   * <pre>
   * rate = failed ÷ kept
   * at most = the share for which so few failures have a chance of 1 − confidence (beta distribution)
   * </pre>
   *
   * <p>Does not cover failures that nobody has called about yet: count jobs that are a few years
   * old.
   *
   * <pre>{@code
   * failRate(KeptSheets.kept(sheets(400)).failed(sheets(2)), pct(95)).atMost() // 1.57 %
   * }</pre>
   *
   * @param sheets kept on finished jobs, and how many of them failed
   * @param confidence how sure one wants to be, 50 % to 99.99 %
   * @return the share counted, and what it could be at most
   * @throws RefusedException if more failed than were kept
   * @see "Clopper and Pearson 1934"
   */
  @LibraryFunction(words = {"callback", "warranty", "failed", "leak later", "risk"})
  public static FailRate failRate(
      KeptSheets sheets,
      @Column(value = "confidence_pct", preset = "95") Figure<Ratio> confidence) {
    var sure = confidence.within("confidence_pct", Units.PERCENT, Forecasts.CONFIDENCE);
    Reading reading = new Reading();
    double n = reading.number("kept sheets", sheets.kept(), Units.SHEET);
    double x = reading.number("failed", sheets.failed(), Units.SHEET);
    double chance = reading.number("confidence", sure, Units.PERCENT) / 100;
    if (x > n) {
      throw new RefusedException(
          "failed exceeds the sheets kept: %s of %s; it must be at most as many"
              .formatted(sheets.failed(), sheets.kept()),
          reading.values());
    }
    double atMost = ShareLimits.atMost(x, n, chance);
    return new FailRate(
        sheets.failed().dividedBy(sheets.kept()).as("rate_pct", Units.PERCENT, Source.ARITHMETIC),
        reading.solution("fail_rate").figure("at_most_pct", atMost * 100, Units.PERCENT, EXACT));
  }

  /**
   * The hours of one unit of work, out of the firm's own log and the office's book.
   *
   * <pre>
   * weight = 1/se² ÷ (1/se² + 1/(spread × book)²)
   * hours  = weight × fitted + (1 − weight) × book
   * </pre>
   *
   * <p>Does not cover a change of crew, tools or kind of roof since the log was kept.
   *
   * <pre>{@code
   * hoursRate(FittedHours.hours(hours(0.964286)).error(hours(0.074231)).rows(number(3)), BookHours.hours(hours(0.90))).hours() // 0.958 h
   * }</pre>
   *
   * @param fitted hours of one unit by the log, with their standard error and rows
   * @param book hours of one unit by the book, with how far firms lie from it
   * @return hours of one unit, and the weight of the log in them
   * @throws RefusedException if a number lies outside its range, or the log has fewer than three
   *     rows
   * @see "precision-weighted mean of a normal with known variances; Bühlmann 1967 for the idea,
   *     from memory"
   */
  @LibraryFunction(words = {"labor", "how long", "log", "productivity", "calibrate"})
  public static HoursRate hoursRate(FittedHours fitted, BookHours book) {
    var enough =
        fitted
            .error()
            .onlyIf(
                fitted.rows().isAtLeast(Figure.of(3, Units.RATIO)),
                "a line and its error need three rows of the log");
    var ofLog = ONE.dividedBy(enough.squared());
    var spread = book.spread().times(book.hours()).as("book_spread_h", Units.HOUR);
    var ofBook = ONE.dividedBy(spread.squared());
    var weight = ofLog.dividedBy(ofLog.plus(ofBook)).as("weight", Units.RATIO, WEIGHED);
    var hours =
        weight
            .times(fitted.hours())
            .plus(ONE.minus(weight).times(book.hours()))
            .as("hours", Units.HOUR, WEIGHED);
    return new HoursRate(hours, weight);
  }
}
