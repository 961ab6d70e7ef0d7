package sheathwright.workbook.letterhead;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.table.Dates;
import sheathwright.job.table.Field;

/**
 * What a job tells in words, and letterheads may show.
 *
 * @param texts by the words that stand for them
 */
public record Told(Map<String, String> texts) {

  /**
   * What a job tells.
   *
   * @param number of the document; empty as long as it has none
   * @param on the day that it is written
   */
  public static Told of(Job job, String number, LocalDate on) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (Field<Choice<String>> fact :
        List.of(JobFields.CUSTOMER, JobFields.SITE, JobFields.JOB_NAME, JobFields.PREPARED_BY)) {
      texts.put(fact.name(), job.fact(fact).value());
    }
    texts.put("number", number);
    texts.put("date", Dates.inWords(on));
    texts.put(
        "good_until", Dates.inWords(on.plusDays((long) job.fact(JobFields.VALID_DAYS).value())));
    return new Told(texts);
  }

  /** The same of a quote that is not issued yet. */
  public static Told ofDraft(Job job) {
    return of(
        job,
        job.isNumbered() ? job.fact(JobFields.QUOTE_NUMBER).value() : "",
        Dates.read(job.fact(JobFields.QUOTE_DATE).value()));
  }
}
