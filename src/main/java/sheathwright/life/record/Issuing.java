package sheathwright.life.record;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.file.Manifest;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.table.Moment;
import sheathwright.job.zone.ZoneFields;

/** A quote going out: numbered, dated, kept, and listed among what was sent. */
public final class Issuing {

  private static final int LONGEST_NUMBER = 40;

  private final JobFolder folder;
  private final Issue issue;
  private final Optional<NextNumber> next;
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
    next = folder.job().isNumbered() ? Optional.empty() : Optional.of(next(folder));
    String quoteNumber =
        next.map(NextNumber::number)
            .orElseGet(() -> folder.job().fact(JobFields.QUOTE_NUMBER).value());
    if (quoteNumber.length() > LONGEST_NUMBER) {
      throw folder.refused(
          "%s has %s characters; what names documents and their files takes at most %s"
              .formatted(
                  next.isPresent() ? "firm.csv, next_quote_number" : "job.csv, quote_number",
                  quoteNumber.length(),
                  LONGEST_NUMBER));
    }
    int number = last.map(before -> Issue.numberOf(before.document())).orElse(0) + 1;
    issue = new Issue(quoteNumber, number, on);
    facts = next.isPresent() ? numbered(facts(on.day()), quoteNumber) : facts(on.day());
    JobTables tables = folder.with(facts);
    recordHash = Fingerprint.ofQuote(tables);
    last.filter(before -> Fingerprint.isOfQuote(before.recordHash(), tables))
        .ifPresent(
            before -> {
              throw folder.refused(
                  "nothing that the owner pays or gets has changed since %s, which is kept as %s; change a table, or give another day"
                      .formatted(before.document(), before.in(folder.path())));
            });
    estimate = new Estimate(Job.of(tables));
  }

  /** The number that the office's firm.csv has for its next quote. */
  private static NextNumber next(JobFolder folder) {
    return new NextNumber(
        folder
            .tables()
            .fromAbove()
            .getOrDefault(JobTable.FIRM, folder.path().resolve(JobTable.FIRM.file())),
        folder.job().firm().said(FirmKeys.NEXT_QUOTE_NUMBER).orElseThrow());
  }

  private static TableText numbered(TableText facts, String number) {
    return facts.with(JobFolder.KEYS, JobFields.QUOTE_NUMBER, number);
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
            Manifest.hashIn(homeowner),
            recordHash,
            Optional.of(total),
            issue.on().toString());
    Writing writing =
        new Writing(folder.path())
            .kept(quote.file(), homeowner)
            .kept(SentDocument.fileName(issue.estimate(), ""), office);
    copies.ifPresent(
        place ->
            writing
                .copied(place.resolve("quote.xlsx"), homeowner, mayReplace)
                .copied(place.resolve("estimate.xlsx"), office, mayReplace));
    if (estimate.job().lines(JobTable.PLACES).isEmpty() && estimate.deck().hasSheets()) {
      writing.with(places());
    }
    keepPriceBook(writing);
    writing.with(facts).with(quote.listedIn(folder.text(JobTable.SENT, OrderFields.SENT)));
    next.ifPresentOrElse(number -> number.take(writing), writing::write);
    return quote;
  }

  /**
   * The office's price book as the quote was made from it, in the job's own folder: what it costs
   * next week changes nothing of what was sent.
   */
  private void keepPriceBook(Writing writing) {
    folder
        .tables()
        .fromAbove()
        .forEach(
            (table, place) -> {
              if (table != JobTable.FIRM) {
                writing.with(TableText.of(place, List.of()));
              }
            });
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
