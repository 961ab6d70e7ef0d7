package sheathwright.life.doubt;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.YesNo;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.Stage;
import sheathwright.job.table.Dates;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemLines;
import sheathwright.life.found.SheetsSettled;

/**
 * What an estimate is asked about: what stood in the tables and is hardly what was meant, and what
 * only the job as a whole shows.
 *
 * @param all in the order of the tables
 */
public record Doubts(List<Problem> all) {

  /** Those of an estimate. */
  public static Doubts of(Estimate estimate, SheetsSettled settled) {
    List<Problem> all = new ArrayList<>(estimate.job().questions());
    tooFewSheets(estimate, settled).ifPresent(all::add);
    coveringStays(estimate.job()).ifPresent(all::add);
    return new Doubts(all);
  }

  /** The same, settled here. */
  public static Doubts of(Estimate estimate) {
    return of(estimate, SheetsSettled.of(estimate));
  }

  /**
   * Until the deck is open, what is marked is what is known to be bad: the price should hold it.
   */
  private static Optional<Problem> tooFewSheets(Estimate estimate, SheetsSettled settled) {
    Job job = estimate.job();
    Figure<Sheets> marked = settled.found();
    boolean isOpen = job.stage().value().isAtLeast(Stage.OPENED);
    boolean isKnown = marked.refusal().isEmpty() && estimate.plannedSheets().refusal().isEmpty();
    return isOpen || !isKnown || marked.value() <= estimate.plannedSheets().value()
        ? Optional.empty()
        : Optional.of(
            job.asked(
                JobFields.PLANNED_SHEETS,
                "%s in the price, but the marks call for %s already; is that what you mean?"
                    .formatted(are(estimate.plannedSheets()), marked)));
  }

  /** Nobody opens a deck whose old covering stays on it. */
  private static Optional<Problem> coveringStays(Job job) {
    boolean stays =
        job.knows(LifeFields.COVERING_OFF)
            && job.fact(LifeFields.COVERING_OFF).is(YesNo.NO).holds();
    return stays && job.stage().value().isAtLeast(Stage.OPENED)
        ? Optional.of(
            job.asked(
                LifeFields.COVERING_OFF,
                "it is no, but the job is %s, and a deck is seen only with the covering off; is that what you mean?"
                    .formatted(job.stage().value().word())))
        : Optional.empty();
  }

  private static String are(Figure<Sheets> sheets) {
    return sheets + (sheets.value() == 1 ? " is" : " are");
  }

  /** That a draft's price is no longer good. */
  public static Optional<Problem> outdated(Job job, LocalDate today) {
    return job.validity()
        .until()
        .filter(today::isAfter)
        .map(
            until ->
                job.asked(
                    JobFields.QUOTE_DATE,
                    "the price was good until %s, which has passed; --issue --on DATE gives it a new day"
                        .formatted(Dates.inWords(until))));
  }

  /** A line each. */
  public List<String> lines() {
    return ProblemLines.of(all);
  }
}
