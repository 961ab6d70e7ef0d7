package sheathwright.workbook.home;

import java.util.Optional;
import sheathwright.job.Job;
import sheathwright.job.life.LifeFields;
import sheathwright.job.office.FirmKeys;
import sheathwright.workbook.book.Letter;

/**
 * The firm's own words on page 1: of payment, of canceling, of its warranty. What a job says of
 * canceling goes before what the firm says.
 */
record FirmTerms(Optional<String> payment, Optional<String> cancel, Optional<String> warranty) {

  static FirmTerms of(Job job) {
    Optional<String> ofThisJob =
        job.knows(LifeFields.CANCEL_RULE)
            ? Optional.of(job.fact(LifeFields.CANCEL_RULE).value())
            : Optional.empty();
    Optional<String> ofTheFirm = job.firm().said(FirmKeys.CANCEL_WORDS);
    return new FirmTerms(
        job.firm().said(FirmKeys.PAYMENT_WORDS),
        ofTheFirm.isPresent() ? ofThisJob.or(() -> ofTheFirm) : Optional.empty(),
        job.firm().said(FirmKeys.WARRANTY_WORDS));
  }

  /** Writes them; nothing, where the firm has none. */
  void write(Letter letter) {
    if (payment.isPresent() || cancel.isPresent() || warranty.isPresent()) {
      letter.tab().heading("Our terms");
      payment.ifPresent(words -> letter.fact("Payment", words));
      cancel.ifPresent(words -> letter.fact("If you cancel", words));
      warranty.ifPresent(words -> letter.fact("Warranty", words));
    }
  }
}
