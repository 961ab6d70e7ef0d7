package sheathwright.life.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.file.FileTrouble;
import sheathwright.job.file.NewFiles;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.Stage;
import sheathwright.job.office.OfficeFolder;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;

/** A job's folder as a step of its life finds it. */
public final class JobFolder {

  /** The headings of the table of the job's facts. */
  static final Keys KEYS = JobTable.JOB.keys().orElseThrow();

  private final Path path;
  private final JobTables tables;
  private final Job job;
  private final List<SentDocument> sent;

  private JobFolder(Path path, JobTables tables) {
    this.path = path;
    this.tables = tables;
    job = Job.of(tables);
    sent = job.lines(JobTable.SENT).stream().map(SentDocument::of).toList();
  }

  /** A job whose tables are at hand, in the folder where its pictures and what was sent lie. */
  public static JobFolder of(Path path, JobTables tables) {
    return new JobFolder(path, tables);
  }

  /**
   * The job in a folder; what a run that died has left there is put right first.
   *
   * @throws ProblemsException with everything that is wrong with its tables
   */
  public static JobFolder in(Path path) {
    putRight(path);
    return of(path, JobTables.in(path));
  }

  /** Puts right what a run that died has left in a job's folder and above it. */
  public static void putRight(Path path) {
    Path firm = path.toAbsolutePath().normalize().getParent();
    NewFiles.putRight(
        Stream.of(path, path.resolve(SentDocument.FOLDER), firm, OfficeFolder.of(path).top())
            .filter(Objects::nonNull)
            .distinct()
            .toList());
  }

  public Path path() {
    return path;
  }

  public Job job() {
    return job;
  }

  JobTables tables() {
    return tables;
  }

  /** How far the job has come: what was agreed is opened on the day that the office gives. */
  public Stage stage() {
    Stage said = job.stage().value();
    return said == Stage.AGREED && job.knows(LifeFields.OPENED_ON) ? Stage.OPENED : said;
  }

  /** Whether what was agreed is printed again instead of a quote. */
  public boolean isAgreed() {
    return stage().isAtLeast(Stage.AGREED);
  }

  /**
   * Refuses a step that the job's stage does not allow.
   *
   * @throws ProblemsException with the stage, what is needed and what to run
   */
  public void require(Step step) {
    if (!step.isAllowedAt(stage())) {
      throw refused(step.refusal(stage(), path.toString()));
    }
  }

  /**
   * Refuses a day before something that has already happened.
   *
   * @throws ProblemsException if it is
   */
  void requireNotBefore(Moment on, String what, String happened) {
    if (!happened.isEmpty() && on.isBefore(Moment.read(happened))) {
      throw refused(
          "--on %s is before %s, %s; give that or a later one".formatted(on, what, happened));
    }
  }

  /**
   * The day on which the old covering came off.
   *
   * @throws ProblemsException if the job does not say
   */
  String openedOn() {
    if (!job.knows(LifeFields.OPENED_ON)) {
      throw refused(
          "job.csv has no opened_on; write the day on which the old covering came off behind it, such as opened_on,2027-05-17");
    }
    return day(LifeFields.OPENED_ON);
  }

  /**
   * Refuses to go on where something that must hold does not.
   *
   * @throws ProblemsException with all of it
   */
  void requireAll(List<Estimate.Tie> ties) {
    List<Problem> broken =
        ties.stream()
            .filter(tie -> !tie.holds().holds())
            .map(tie -> new Problem(path.toString(), 0, "", "this does not hold: " + tie.what()))
            .toList();
    if (!broken.isEmpty()) {
      throw new ProblemsException(broken);
    }
  }

  /**
   * Refuses to go on where a table is there that the step writes anew.
   *
   * @throws ProblemsException if it is there
   */
  void requireMissing(JobTable table) {
    if (has(table)) {
      throw refused(
          "%s is there, but the job is at the stage %s; if nothing was agreed, take the file away"
              .formatted(table.file(), stage().word()));
    }
  }

  /** Whether the job has a table. */
  boolean has(JobTable table) {
    return tables.files().containsKey(table.word());
  }

  /** The day of one of the job's facts; empty where it does not say. */
  String day(Field<Choice<String>> field) {
    return job.knows(field) ? job.fact(field).value() : "";
  }

  /** What was sent, in the order of the table. */
  List<SentDocument> sent() {
    return sent;
  }

  /** Whether a document's name begins with the number of this job's quote. */
  public boolean isNumberOf(String document) {
    return document.startsWith(job.fact(JobFields.QUOTE_NUMBER).value() + " ");
  }

  /** The issue of the quote that went out last. */
  public Optional<SentDocument> newestIssue() {
    return sent.stream()
        .filter(document -> Issue.numberOf(document.document()) > 0)
        .max(Comparator.comparingInt(document -> Issue.numberOf(document.document())));
  }

  /**
   * The quote that was agreed.
   *
   * @throws ProblemsException if the table of what was agreed does not name one that was sent
   */
  public SentDocument agreedQuote() {
    String named =
        job.lines(JobTable.AGREED).stream()
            .filter(row -> row.of(AgreedFields.ITEM).value().equals(Agreeing.TOTAL))
            .map(row -> row.of(AgreedFields.WORDS).value())
            .findFirst()
            .orElseThrow(
                () ->
                    refused(
                        "the job is at the stage %s, but agreed.csv says of no total that it was agreed; write quoted behind stage in job.csv and %s"
                            .formatted(stage().word(), Step.wayTo(Stage.AGREED, path.toString()))));
    return document(named);
  }

  /** A document that was sent, by what it is called. */
  SentDocument document(String name) {
    return sent.stream()
        .filter(document -> document.document().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                refused(
                    "\"%s\" was not sent; sent.csv has %s"
                        .formatted(
                            name,
                            sent.isEmpty()
                                ? "nothing"
                                : String.join(
                                    ", ", sent.stream().map(SentDocument::document).toList()))));
  }

  /**
   * The file of a document, as it was sent.
   *
   * @throws ProblemsException if it is not there, or is not the one that was sent
   */
  public byte[] bytes(SentDocument document) {
    Path file = document.in(path);
    try {
      byte[] bytes = Files.readAllBytes(file);
      if (!Fingerprint.of(bytes).equals(document.fileHash())) {
        throw refused(
            "%s is not the file that was sent as %s: its SHA-256 is not the one in sent.csv; put that file back"
                .formatted(file, document.document()));
      }
      return bytes;
    } catch (IOException gone) {
      throw refused(
          "%s, which was sent as %s, cannot be read: %s; put it back"
              .formatted(file, document.document(), FileTrouble.of(gone)));
    }
  }

  /** A table's text, or that of a new one with these columns. */
  TableText text(JobTable table, List<Field<?>> columns) {
    return text(path.resolve(table.file()), columns);
  }

  /** The same, wherever it lies. */
  TableText text(Path file, List<Field<?>> columns) {
    return Files.exists(file)
        ? TableText.of(file, columns)
        : TableText.empty(file.getFileName().toString(), columns, facts().separator());
  }

  /** The text of the job's facts. */
  TableText facts() {
    return TableText.of(path.resolve(JobTable.JOB.file()), List.of());
  }

  /** The tables as they will be when some are written. */
  public JobTables with(TableText... written) {
    Map<String, RowSource> files = new LinkedHashMap<>(tables.files());
    for (TableText text : written) {
      String word = text.name().substring(0, text.name().length() - JobTable.ENDING.length());
      files.put(word, text.parsed());
    }
    return new JobTables(files, tables.folder());
  }

  /** One thing that is wrong with the job as a whole. */
  ProblemsException refused(String message) {
    return refused(List.of(message));
  }

  /** The same of several. */
  ProblemsException refused(List<String> messages) {
    return new ProblemsException(
        messages.stream().map(message -> new Problem(path.toString(), 0, "", message)).toList());
  }

  /** A command for this job, as it is to be typed. */
  public String command(String name, String options) {
    return Step.command(name, path.toString(), options);
  }

  /** A command to be run next with this job. */
  public String next(String name, String options) {
    return "next: " + command(name, options);
  }

  /** What is to be done next with a job that is agreed. */
  public String nextOnceAgreed() {
    return switch (stage()) {
      case ASKED, SURVEYED, QUOTED, AGREED ->
          "next: %s, what is found into marks.csv, and run %s"
              .formatted(
                  Step.wayTo(Stage.OPENED, path.toString()), command("change-order", "--on DATE"));
      case OPENED -> next("change-order", "--on DATE");
      case CLOSED -> "the job is closed; nothing more is written for it";
    };
  }
}
