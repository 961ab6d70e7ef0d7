package sheathwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.firm.SeasonFiles;
import sheathwright.cli.pipe.Today;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.season.Season;
import sheathwright.life.doubt.Doubts;
import sheathwright.life.record.Issuing;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.JobWorkbook;
import sheathwright.life.record.Revisions;
import sheathwright.life.record.SentDocument;
import sheathwright.life.record.Step;
import sheathwright.life.record.Writing;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.told.Photos;

/** Makes a job's two workbooks. */
@Command(
    name = "quote",
    mixinStandardHelpOptions = true,
    description = {
      "Make a job's workbooks: estimate.xlsx for the office, and quote.xlsx for the homeowner, which holds no cost.",
      "The quote is a draft until it is issued; once it is agreed, the agreed one is printed again.",
      "A season of jobs is a folder of job folders, or one folder of tables that have a column job, with a line for each job in jobs.csv; each job's two go into a folder of its name.",
      "A job is a folder of small tables. It needs those marked *, in its folder or, of the office, above it, and the others as it has them:"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright quote demo-data/quince-hollow",
      "  sheathwright quote demo-data/mistwater-cottage -o out --force",
      "  sheathwright quote my-job --issue --on 2027-05-04",
      "  sheathwright quote my-job/estimate.xlsx -o next",
      "  sheathwright quote jobs/* --force"
    })
final class QuoteCommand implements Callable<Integer> {

  private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "JOB",
      description =
          "the job's folder, or a season of them; or an estimate.xlsx, changed in any spreadsheet program")
  private Path folder;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "JOB",
      description = "more jobs: a line is said of each, and one that is refused stops no other")
  private List<Path> others = List.of();

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write, of many jobs a folder each; else into the job's own folder")
  private Path output;

  @Option(names = "--force", description = "replace the workbooks if they exist")
  private boolean force;

  @Option(
      names = "--summary",
      description =
          "of a season: one table and one workbook of all its jobs, as the command season writes them, and no quotes")
  private boolean isSummary;

  @Mixin private LetterheadOption letterhead;

  /** Takes what the command is made of, and tells its help of the tables. */
  @Spec
  void take(CommandSpec described) {
    spec = described;
    List<String> lines = new ArrayList<>(List.of(described.usageMessage().description()));
    for (JobTable table : JobTable.values()) {
      String mark = table.isNeeded() ? "*" : " ";
      lines.add("  %s %-15s  %s".formatted(mark, table.file(), table.meaning()));
    }
    described.usageMessage().description(lines.toArray(String[]::new));
  }

  @ArgGroup(exclusive = false)
  private Sending sending;

  /** That it is sent, and when. */
  static final class Sending extends StepDay {
    @Option(
        names = "--issue",
        required = true,
        description =
            "send it, with --on: the quote gets its number, is kept in the folder sent, and listed in sent.csv")
    private boolean isMeant;
  }

  @Override
  public Integer call() {
    if (isSummary) {
      return summary();
    }
    if (!others.isEmpty()) {
      return many();
    }
    if (Season.isOne(folder)) {
      return season();
    }
    if (JobWorkbook.isNamed(folder)) {
      reissued();
      return 0;
    }
    JobFolder job = JobFolder.in(folder);
    if (sending != null) {
      issued(new Issuing(job, sending.on()), job);
    } else if (job.isAgreed()) {
      printed(job);
    } else {
      job.require(Step.DRAFT);
      drafted(job);
    }
    return 0;
  }

  private int summary() {
    if (sending != null || !others.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "--summary sums up one season and sends nothing; name its folder alone");
    }
    return SeasonFiles.of(folder, Optional.ofNullable(output), force)
        .write(line -> Voice.say(spec, line), spec.commandLine().getErr());
  }

  private int season() {
    if (sending != null) {
      throw new ParameterException(
          spec.commandLine(),
          "--issue sends the quote of one job, and %s is a season; name the folder of one job"
              .formatted(folder));
    }
    new SeasonQuotes(Season.in(folder), Optional.ofNullable(output), force).write(spec);
    return 0;
  }

  /** An estimate that somebody changed, worked out anew. */
  private void reissued() {
    if (sending != null) {
      throw new ParameterException(
          spec.commandLine(),
          "--issue takes the job's folder, which keeps what is sent; quote a workbook without it");
    }
    JobWorkbook job = JobWorkbook.in(folder);
    Revisions revisions = job.revisions();
    Estimate estimate = job.estimate();
    JobBooks books = JobBooks.of(estimate, revisions);
    written(books.office(), drafted(books, estimate, job.folder()), job.folder());
    say(
        "issue %s; its tab %s says what changed"
            .formatted(revisions.newest().number(), Revisions.HISTORY));
    said(estimate);
  }

  private int many() {
    if (sending != null) {
      throw new ParameterException(
          spec.commandLine(), "--issue sends one quote; name one job, and look at it before");
    }
    List<Path> all = new ArrayList<>(List.of(folder));
    all.addAll(others);
    return new ManyQuotes(all, Optional.ofNullable(output), force, spec).status();
  }

  private void drafted(JobFolder job) {
    Estimate estimate = new Estimate(job.job());
    JobBooks books = JobBooks.of(estimate, Photos.of(job.job(), folder));
    written(books.office(), drafted(books, estimate, folder), folder);
    said(estimate);
    Doubts.outdated(estimate.job(), Today.day())
        .ifPresent(each -> spec.commandLine().getErr().println("question: " + each));
    say(job.next("quote", "--issue --on DATE"));
  }

  private byte[] drafted(JobBooks books, Estimate estimate, Path place) {
    return letterhead.before(
        books.homeowner(), LetterKind.QUOTE, estimate.job(), Told.ofDraft(estimate.job()), place);
  }

  private void issued(Issuing issuing, JobFolder job) {
    Estimate estimate = issuing.estimate();
    JobBooks books = JobBooks.of(estimate, Photos.of(job.job(), folder), issuing.issue());
    byte[] homeowner =
        letterhead.before(
            books.homeowner(),
            LetterKind.QUOTE,
            estimate.job(),
            Told.of(estimate.job(), issuing.issue().document(), issuing.issue().on().day()),
            folder);
    SentDocument quote =
        issuing.write(books.office(), homeowner, Optional.ofNullable(output), force);
    say("issued " + quote.document() + ", kept as " + quote.in(folder));
    said(estimate);
    say(job.next("agree", "--on DATE"));
  }

  /** What was agreed, as it was sent, and the office's estimate as it stands today. */
  private void printed(JobFolder job) {
    Estimate estimate = new Estimate(job.job());
    SentDocument agreed = job.agreedQuote();
    written(JobBook.estimate(estimate).bytes(), job.bytes(agreed), folder);
    say(
        "the quote is the one that was agreed, %s, as it was sent; prices and rates change nothing in it"
            .formatted(agreed.document()));
    say(job.nextOnceAgreed());
  }

  private void written(byte[] office, byte[] homeowner, Path own) {
    Path place = output == null ? own : output;
    Path forOffice = place.resolve("estimate.xlsx");
    Path forHomeowner = place.resolve("quote.xlsx");
    new Writing(own)
        .copied(forOffice, office, force)
        .copied(forHomeowner, homeowner, force)
        .write();
    say("wrote " + forOffice + " and " + forHomeowner);
  }

  private void say(String line) {
    Voice.say(spec, line);
  }

  private void said(Estimate estimate) {
    Outcome outcome = new Outcome(estimate);
    outcome.say(spec);
    outcome.warn(spec.commandLine().getErr());
  }
}
