package sheathwright.job.life;

import java.time.LocalDate;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.job.table.Dates;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedTable;

/**
 * How long a price holds.
 *
 * @param job the table of the job's facts
 * @param from the fact that says of which day the quote is
 * @param days the fact that says how long it is good from then on
 */
public record Validity(KeyedTable job, Field<Choice<String>> from, Field<Figure<Ratio>> days) {

  /** The last day on which the quote is good; none, where the job does not say. */
  public Optional<LocalDate> until() {
    boolean isSaid = job.facts().knows(from) && job.facts().knows(days);
    return isSaid
        ? Optional.of(day(from).plusDays((long) job.facts().fact(days).value()))
        : Optional.empty();
  }

  /** Asks about prices that hold a shorter time than the quote made of them. */
  public void ask() {
    if (until().isPresent() && job.facts().knows(LifeFields.PRICE_UNTIL)) {
      LocalDate prices = day(LifeFields.PRICE_UNTIL);
      if (prices.isBefore(until().get())) {
        job.question(
            LifeFields.PRICE_UNTIL,
            "prices hold until %s, but the quote is good until %s; is that what you mean?"
                .formatted(Dates.inWords(prices), Dates.inWords(until().get())));
      }
    }
  }

  private LocalDate day(Field<Choice<String>> field) {
    return LocalDate.parse(job.facts().fact(field).value());
  }
}
