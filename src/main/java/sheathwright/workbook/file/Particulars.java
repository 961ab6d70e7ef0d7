package sheathwright.workbook.file;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import sheathwright.job.Job;
import sheathwright.job.JobFields;

/**
 * What a file says of itself where its cells are not opened: in a list of files, a search, or a
 * reader's voice.
 *
 * @param title which document it is, and of which job
 * @param subject what it is about
 * @param company whose document it is; empty if nobody's
 * @param on the day that it bears, if it bears one
 */
public record Particulars(String title, String subject, String company, Optional<LocalDate> on) {

  /** Those of a document that belongs to no job and bears no day. */
  public static Particulars of(String title, String subject) {
    return new Particulars(title, subject, "", Optional.empty());
  }

  /** Those of a job's document. */
  public static Particulars of(Job job, String document, Optional<LocalDate> on) {
    return new Particulars(
        "%s: %s".formatted(capital(document), job.fact(JobFields.JOB_NAME).value()),
        "Repair of a wood roof deck, " + job.fact(JobFields.SITE).value(),
        job.fact(JobFields.PREPARED_BY).value(),
        on);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.US) + words.substring(1);
  }
}
