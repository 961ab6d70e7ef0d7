package sheathwright.life.record;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Shown;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.Stage;
import sheathwright.job.table.Moment;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.bill.AgreedRows;
import sheathwright.life.bill.Agreement;

/** A quote being agreed to: what it says is frozen, and the job goes on from there. */
public final class Agreeing {

  static final String TOTAL = "total";

  private static final String KIND_OF_RETURNED = "-returned";
  private static final double HALF_A_CENT = 0.005;

  private final JobFolder folder;
  private final Moment on;
  private final SentDocument quote;
  private final byte[] document;
  private final Writing writing;
  private final Agreement agreement;
  private final Estimate estimate;
  private final boolean makesStages;
  private final Optional<Taking> taking;

  /**
   * The quote as the owner sent it back.
   *
   * @param document which issue of the quote it says that it is
   * @param file as it came back
   * @param taken what the owner was free to change, and did
   */
  public record Returned(String document, byte[] file, List<Taking.Input> taken) {

    public Returned {
      file = file.clone();
    }

    @Override
    public byte[] file() {
      return file.clone();
    }
  }

  /**
   * What the owner agrees to.
   *
   * @param name which issue of the quote; the newest, if it is not said
   * @throws ProblemsException if the job's stage or the day does not allow it, no quote was issued,
   *     its file is not the one that was sent, or the tables say something else by now
   */
  public Agreeing(JobFolder folder, Moment on, Optional<String> name) {
    this(folder, on, name, Optional.empty());
  }

  /**
   * What the owner agrees to by sending a quote back, with the options ticked in it.
   *
   * @param returned a file in which nothing else was changed
   * @throws ProblemsException for the same reasons, or if the tables do not take its ticks
   */
  public Agreeing(JobFolder folder, Moment on, Returned returned) {
    this(folder, on, Optional.of(returned.document()), Optional.of(returned));
  }

  private Agreeing(
      JobFolder before, Moment on, Optional<String> name, Optional<Returned> returned) {
    before.require(Step.AGREE);
    taking =
        returned.map(Returned::taken).filter(any -> !any.isEmpty()).map(any -> taken(before, any));
    folder = taking.map(Taking::after).orElse(before);
    this.on = on;
    quote = quote(name);
    folder.requireNotBefore(on, quote.document(), quote.on());
    folder.requireMissing(JobTable.AGREED);
    document = folder.bytes(quote);
    if (!Fingerprint.isOfQuote(quote.recordHash(), folder.tables())) {
      throw differs(
          "the tables do not say any more what %s has the owner pay and get"
              .formatted(quote.document()));
    }
    makesStages = !folder.has(JobTable.STAGES);
    TableText stages = folder.text(JobTable.STAGES, AgreedFields.STAGES);
    if (makesStages) {
      stages = stages.withRow(onePayment());
    }
    estimate = new Estimate(Job.of(folder.with(stages)));
    if (quote.total().filter(Cents.of(estimate.total())::equals).isEmpty()) {
      throw differs(
          "%s comes to %s, the tables come to %s"
              .formatted(
                  quote.document(),
                  quote.total().map(sum -> "$" + sum).orElse("nothing"),
                  estimate.total()));
    }
    TableText agreed = folder.text(JobTable.AGREED, AgreedFields.AGREED);
    for (Map<String, String> row : AgreedRows.of(estimate)) {
      agreed = agreed.withRow(withDocument(row));
    }
    TableText facts =
        folder
            .facts()
            .with(JobFolder.KEYS, LifeFields.STAGE, Stage.AGREED.word())
            .with(JobFolder.KEYS, LifeFields.AGREED_ON, on.toString());
    writing = new Writing(folder.path()).with(agreed).with(facts);
    if (makesStages) {
      writing.with(stages);
    }
    taking.ifPresent(options -> options.into(writing));
    returned.ifPresent(
        file ->
            writing.kept(SentDocument.fileName(quote.document(), KIND_OF_RETURNED), file.file()));
    JobTables tables = folder.with(agreed, facts, stages);
    agreement = Agreement.of(Job.of(tables).lines(JobTable.AGREED));
    folder.requireAll(agreement.ties());
  }

  /** The owner ticks options; nothing else of the tables is his. */
  private static Taking taken(JobFolder folder, List<Taking.Input> inputs) {
    Taking taking = new Taking(folder, inputs);
    if (!taking.tables().equals(List.of(JobTable.OPTIONS.file()))) {
      throw folder.refused(
          "what came back changes %s, and an owner ticks nothing but options; take it with audit --take, issue the quote anew, and let that be agreed"
              .formatted(String.join(" and ", taking.tables())));
    }
    return taking;
  }

  private SentDocument quote(Optional<String> name) {
    if (name.isPresent()) {
      SentDocument named = folder.document(name.get());
      if (Issue.numberOf(named.document()) == 0) {
        throw folder.refused(
            "\"%s\" is no quote; name an issue of the quote, such as %s"
                .formatted(
                    named.document(),
                    folder.newestIssue().map(SentDocument::document).orElse("QH-01 issue 1")));
      }
      return named;
    }
    return folder
        .newestIssue()
        .orElseThrow(
            () ->
                folder.refused(
                    "no quote was issued yet, so there is nothing to agree to; "
                        + Step.wayTo(Stage.QUOTED, folder.path().toString())));
  }

  private ProblemsException differs(String what) {
    return folder.refused(
        "%s, and its prices count; put the tables back, or let the new ones be agreed: %s"
            .formatted(what, Step.wayTo(Stage.QUOTED, folder.path().toString())));
  }

  private static Map<String, String> onePayment() {
    Map<String, String> row = new LinkedHashMap<>();
    row.put(AgreedFields.STAGE.name(), "final");
    row.put(AgreedFields.PART.name(), "100");
    row.put(AgreedFields.WHEN.name(), "when the work is done");
    return row;
  }

  /** The total says which document it was agreed by. */
  private Map<String, String> withDocument(Map<String, String> row) {
    Map<String, String> told = new LinkedHashMap<>(row);
    if (TOTAL.equals(row.get(AgreedFields.ITEM.name()))) {
      told.put(AgreedFields.WORDS.name(), quote.document());
    }
    return told;
  }

  /**
   * Holds what is agreed against the document itself.
   *
   * @param said the numbers that it says, by name
   * @throws ProblemsException if one of them is another, or is not said
   */
  public void requireSaid(Map<String, Double> said) {
    estimate
        .quote()
        .told()
        .forEach(
            (name, figure) -> {
              Double number = said.get(name);
              boolean isSaid = number != null && Math.abs(number - figure.value()) <= HALF_A_CENT;
              boolean isNothing = number == null && figure.value() == 0;
              if (!isSaid && !isNothing) {
                throw differs(
                    "%s says %s of %s, the tables make it %s"
                        .formatted(
                            quote.document(),
                            number == null ? "nothing" : Shown.plain(number),
                            name,
                            figure.plain()));
              }
            });
  }

  /** The quote that is agreed to. */
  public SentDocument quote() {
    return quote;
  }

  /** Its file, as it was sent. */
  public byte[] document() {
    return document.clone();
  }

  /** What is agreed. */
  public Agreement agreement() {
    return agreement;
  }

  /** What the office should know before it relies on it, a line each. */
  public List<String> questions() {
    LocalDate until =
        LocalDate.parse(folder.day(JobFields.QUOTE_DATE))
            .plusDays((long) folder.job().fact(JobFields.VALID_DAYS).value());
    return on.day().isAfter(until)
        ? List.of(
            "the price was good until %s, and it is agreed on %s; is that what you mean?"
                .formatted(until, on))
        : List.of();
  }

  /** The options that were taken from what the owner sent back, a line each. */
  public List<String> taken() {
    return taking.map(Taking::lines).orElse(List.of());
  }

  /** The tables that it writes. */
  public List<String> tables() {
    return writing.tables();
  }

  /** Whether it had to say itself when the price is paid. */
  public boolean makesStages() {
    return makesStages;
  }

  /** Writes all of it. */
  public void write() {
    writing.write();
  }
}
