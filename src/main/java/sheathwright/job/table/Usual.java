package sheathwright.job.table;

import java.math.BigDecimal;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * What firms give for a number. Anything else that is allowed is taken, and asked about. Common
 * practice, no source.
 *
 * @param least the least that is usual
 * @param most the greatest
 * @param mayBeNone whether 0 is usual too
 */
record Usual(double least, double most, boolean mayBeNone) {

  /** Anything that is allowed. */
  static final Usual ANY = new Usual(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true);

  /** The question about a number that nobody gives, with what may have been meant. */
  Optional<String> question(String given, Figure<?> figure) {
    double number = figure.value();
    if (includes(number)) {
      return Optional.empty();
    }
    Unit<?> unit = figure.unit();
    double hundredfold = BigDecimal.valueOf(number).movePointRight(2).doubleValue();
    boolean isFraction = unit.equals(Units.PERCENT) && number < 1 && includes(hundredfold);
    return Optional.of(
        "%s is given, but from %s to %s%s is usual%s; %s"
            .formatted(
                given,
                Shown.plain(least),
                Shown.plain(most),
                unit.symbol().isEmpty() ? "" : " " + unit,
                mayBeNone ? ", or 0" : "",
                isFraction
                    ? "did you mean " + Shown.plain(hundredfold) + "?"
                    : "is that what you mean?"));
  }

  private boolean includes(double number) {
    return number == 0 ? mayBeNone : number >= least && number <= most;
  }
}
