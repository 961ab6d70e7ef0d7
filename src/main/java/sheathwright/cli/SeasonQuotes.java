package sheathwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import sheathwright.cli.pipe.Today;
import sheathwright.cli.pipe.Voice;
import sheathwright.cli.pipe.Watch;
import sheathwright.figure.Shown;
import sheathwright.job.Estimate;
import sheathwright.job.season.Season;
import sheathwright.job.season.SeasonJob;
import sheathwright.job.table.Printable;
import sheathwright.life.doubt.Doubts;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Step;
import sheathwright.life.record.Writing;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.JobBooks;

/**
 * The workbooks of all jobs of a season, written together or not at all: each job's two into a
 * folder of its name. What was agreed is printed again; a job that is nothing to be quoted yet, or
 * no longer, is left out and said.
 *
 * @param place the folder above theirs; nothing where each job's own folder is meant
 * @param force whether workbooks that exist are replaced
 */
record SeasonQuotes(Season season, Optional<Path> place, boolean force) {

  /** A job with its two workbooks; none where it cannot be quoted at its stage. */
  private record Made(
      String name, Path folder, boolean isAgreed, Estimate estimate, Optional<JobBooks> books) {}

  /**
   * Writes them, and says what each comes to.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with any job
   */
  void write(CommandSpec command) {
    List<Made> all = made(command);
    Writing writing = new Writing(season.folder());
    for (Made job : all) {
      job.books()
          .ifPresent(
              books ->
                  writing
                      .copied(job.folder().resolve("estimate.xlsx"), books.office(), force)
                      .copied(job.folder().resolve("quote.xlsx"), books.homeowner(), force));
    }
    writing.write();
    all.forEach(job -> said(job, command));
  }

  /**
   * Those of which workbooks can be made, each by its name, and nothing written.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with any job
   */
  Map<String, Estimate> worked(CommandSpec command) {
    Map<String, Estimate> worked = new LinkedHashMap<>();
    for (Made job : made(command)) {
      if (job.books().isPresent()) {
        worked.put(job.name(), job.estimate());
      } else {
        leaveOut(job, command);
      }
    }
    return worked;
  }

  private List<Made> made(CommandSpec command) {
    Watch watch = Watch.over(command);
    int[] begun = {0};
    try {
      return season.ofEach(
          job -> {
            watch.show(Shown.text("%,d of %,d: %s", ++begun[0], season.jobs().size(), job.name()));
            return made(job);
          });
    } finally {
      watch.clear();
    }
  }

  private Made made(SeasonJob one) {
    JobFolder job = JobFolder.of(one.folder(), one.tables());
    Estimate estimate = new Estimate(job.job());
    Path folder = place.orElse(one.folder());
    boolean isShared = one.folder().equals(season.folder());
    return new Made(
        one.name(),
        place.isPresent() || isShared ? folder.resolve(one.name()) : folder,
        job.isAgreed(),
        estimate,
        books(job, estimate));
  }

  private static Optional<JobBooks> books(JobFolder job, Estimate estimate) {
    if (job.isAgreed()) {
      byte[] agreed = job.bytes(job.agreedQuote());
      return Optional.of(new JobBooks(JobBook.estimate(estimate).bytes(), agreed));
    }
    return Step.DRAFT.isAllowedAt(job.stage())
        ? Optional.of(drafted(job, estimate))
        : Optional.empty();
  }

  private static JobBooks drafted(JobFolder job, Estimate estimate) {
    JobBooks books = JobBooks.of(estimate);
    byte[] homeowner =
        new LetterheadOption()
            .before(
                books.homeowner(),
                LetterKind.QUOTE,
                estimate.job(),
                Told.ofDraft(estimate.job()),
                job.path());
    return new JobBooks(books.office(), homeowner);
  }

  private static void leaveOut(Made job, CommandSpec command) {
    command
        .commandLine()
        .getErr()
        .println(
            Printable.line(
                job.name()
                    + ": left out, it is at the stage "
                    + job.estimate().job().stage().value().word()));
  }

  private static void said(Made job, CommandSpec command) {
    if (job.books().isEmpty()) {
      leaveOut(job, command);
      return;
    }
    PrintWriter err = command.commandLine().getErr();
    String name = job.name() + ": ";
    Voice.say(
        command,
        "%sthe homeowner pays %s; the rafters: %s; in %s"
            .formatted(
                name,
                new Outcome(job.estimate()).total(),
                job.estimate().framing().decision(),
                job.folder()));
    Doubts.of(job.estimate())
        .lines()
        .forEach(each -> err.println(Printable.line("question: " + name + each)));
    Doubts.outdated(job.estimate().job(), Today.day())
        .filter(outdated -> !job.isAgreed())
        .ifPresent(outdated -> err.println(Printable.line("question: " + name + outdated)));
    job.estimate().ties().stream()
        .filter(tie -> !tie.holds().holds())
        .forEach(tie -> err.println(Printable.line(name + "check: " + tie.what())));
  }
}
