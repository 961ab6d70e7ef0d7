package sheathwright.life.record;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.life.ZoneFields;
import sheathwright.job.table.Moment;

/** A quote going out: numbered, dated, kept, and listed among what was sent. */
public final class Issuing {

  private static final int LONGEST_NUMBER = 40;

  private final JobFolder folder;
  private final Issue issue;
  private final TableText facts;
  private final String recordHash;
  private final Estimate estimate;

  /**
   * The next issue of a job's quote.
   *
   * @param on when it goes out; its day becomes the date of the quote
   * @throws sheathwright.job.table.ProblemsException if the job's stage, or the day, does not allow
   *     it, or it would say what the last one said
   */
  public Issuing(JobFolder folder, Moment on) {
    this.folder = folder;
    folder.require(Step.ISSUE);
    Optional<SentDocument> last = folder.newestIssue();
    last.ifPresent(before -> folder.requireNotBefore(on, before.document(), before.on()));
    folder.requireNotBefore(on, "the day it was looked at", folder.day(LifeFields.LOOKED_ON));
    String quoteNumber = folder.job().fact(JobFields.QUOTE_NUMBER).value();
    if (quoteNumber.length() > LONGEST_NUMBER) {
      throw folder.refused(
          "job.csv, quote_number has %d characters; what names documents and their files takes at most %d"
              .formatted(quoteNumber.length(), LONGEST_NUMBER));
    }
    int number = last.map(before -> Issue.numberOf(before.document())).orElse(0) + 1;
    issue = new Issue(quoteNumber, number, on);
    facts = facts(on.day());
    JobTables tables = folder.with(facts);
    recordHash = Fingerprint.ofQuote(tables);
    last.filter(before -> before.recordHash().equals(recordHash))
        .ifPresent(
            before -> {
              throw folder.refused(
                  "nothing that the owner pays or gets has changed since %s, which is kept as %s; change a table, or give another day"
                      .formatted(before.document(), before.in(folder.path())));
            });
    estimate = new Estimate(Job.of(tables));
  }

  private TableText facts(LocalDate on) {
    TableText text = folder.facts();
    if (!folder.day(JobFields.QUOTE_DATE).equals(on.toString())) {
      text = text.with(JobFolder.KEYS, JobFields.QUOTE_DATE, on.toString());
    }
    return folder.stage().isAtLeast(Stage.QUOTED)
        ? text
        : text.with(JobFolder.KEYS, LifeFields.STAGE, Stage.QUOTED.word());
  }

  public Issue issue() {
    return issue;
  }

  /** The job as it is on that day, worked out. */
  public Estimate estimate() {
    return estimate;
  }

  /**
   * Keeps the documents, and copies of them where somebody wants them, and lists the quote.
   *
   * @param office the estimate's bytes
   * @param homeowner the quote's
   * @param copies where copies go; none, if empty
   * @return the quote as it is listed
   */
  public SentDocument write(
      byte[] office, byte[] homeowner, Optional<Path> copies, boolean mayReplace) {
    BigDecimal total = Cents.of(estimate.total());
    SentDocument quote =
        new SentDocument(
            issue.document(),
            SentDocument.fileName(issue.document(), ""),
            Fingerprint.of(homeowner),
            recordHash,
            Optional.of(total),
            issue.on().toString());
    Writing writing =
        new Writing(folder.path())
            .kept(quote.file(), homeowner)
            .kept(SentDocument.fileName(issue.document(), "-estimate"), office);
    copies.ifPresent(
        place ->
            writing
                .copied(place.resolve("quote.xlsx"), homeowner, mayReplace)
                .copied(place.resolve("estimate.xlsx"), office, mayReplace));
    if (estimate.job().lines(JobTable.PLACES).isEmpty()) {
      writing.with(places());
    }
    writing
        .with(facts)
        .with(folder.text(JobTable.SENT, OrderFields.SENT).withRow(quote.row()))
        .write();
    return quote;
  }

  /** The places as this document names them, so that no later change of the map renames one. */
  private TableText places() {
    TableText table = folder.text(JobTable.PLACES, ZoneFields.PLACES_NAMED);
    for (Map<String, String> row : estimate.deck().mapRecord().rows()) {
      table = table.withRow(row);
    }
    return table;
  }
}
