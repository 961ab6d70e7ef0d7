package sheathwright.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.JsonRows;
import sheathwright.cli.pipe.Voice;
import sheathwright.cli.pipe.Watch;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.job.Estimate;
import sheathwright.job.season.Season;
import sheathwright.job.table.Printable;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.JobWorkbook;
import sheathwright.life.record.Step;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.told.Photos;

/** Says whether a job can be quoted, and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Work a job out as quote does, and write nothing: exit status 0 if quote would write its workbooks, else 3 with everything"
          + " that is in the way.",
      "What stops the repair of the rafters, and what is asked about, is said on standard error; neither keeps a quote from"
          + " being written."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  sheathwright check my-job", "  sheathwright check jobs/* --json"})
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "JOB",
      description = "the job's folder, a season of them, or a workbook; one or more")
  private List<Path> jobs;

  @Mixin private LetterheadOption letterhead;

  @Option(
      names = "--json",
      description =
          "an array of objects, one for each job: total_usd, worst_usd, stops, questions, error")
  private boolean isJson;

  @Override
  public Integer call() throws IOException {
    Watch watch = Watch.over(spec);
    List<Map<String, Object>> rows = new ArrayList<>();
    int status = 0;
    for (int i = 0; i < jobs.size(); i++) {
      watch.show(Shown.text("%,d of %,d: %s", i + 1, jobs.size(), jobs.get(i)));
      try {
        Map<String, Estimate> worked = worked(jobs.get(i));
        watch.clear();
        worked.forEach((name, estimate) -> rows.add(passed(name, new Outcome(estimate))));
      } catch (RuntimeException | OutOfMemoryError | StackOverflowError thrown) {
        Failure failure = Failure.of(thrown);
        watch.clear();
        spec.commandLine().getErr().println(Printable.lines(failure.line()));
        rows.add(row(jobs.get(i).toString(), Optional.empty(), failure.line()));
        status = status == 1 ? status : failure.status();
      }
    }
    if (isJson) {
      JsonRows.write(spec.commandLine().getOut(), rows);
    }
    return status;
  }

  private Map<String, Object> passed(String name, Outcome outcome) {
    if (!isJson) {
      Voice.say(spec, name + ": quote would write it");
      outcome.say(spec);
    }
    outcome.warn(spec.commandLine().getErr());
    return row(name, Optional.of(outcome), null);
  }

  private static Map<String, Object> row(String name, Optional<Outcome> outcome, String error) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("job", name);
    row.put(
        "total_usd",
        outcome.map(each -> each.estimate().total()).map(CheckCommand::number).orElse(null));
    row.put(
        "worst_usd",
        outcome
            .map(each -> each.estimate().quote().worstCase())
            .map(CheckCommand::number)
            .orElse(null));
    row.put("stops", outcome.map(Outcome::stops).orElse(List.of()));
    row.put("questions", outcome.map(Outcome::questions).orElse(List.of()));
    row.put("error", error);
    return row;
  }

  private static BigDecimal number(Figure<?> figure) {
    return new BigDecimal(figure.plain());
  }

  /** The estimates whose workbooks were made and thrown away, each by its job's name. */
  private Map<String, Estimate> worked(Path job) {
    if (Season.isOne(job)) {
      return new SeasonQuotes(Season.in(job), Optional.empty(), false).worked(spec);
    }
    if (JobWorkbook.isNamed(job)) {
      JobWorkbook workbook = JobWorkbook.in(job);
      Estimate estimate = workbook.estimate();
      draft(JobBooks.of(estimate, workbook.revisions()), estimate, workbook.folder());
      return Map.of(job.toString(), estimate);
    }
    JobFolder folder = JobFolder.in(job);
    Estimate estimate = new Estimate(folder.job());
    if (folder.isAgreed()) {
      folder.bytes(folder.agreedQuote());
      JobBook.estimate(estimate).bytes();
    } else {
      folder.require(Step.DRAFT);
      draft(JobBooks.of(estimate, Photos.of(folder.job(), job)), estimate, job);
    }
    return Map.of(job.toString(), estimate);
  }

  private void draft(JobBooks books, Estimate estimate, Path place) {
    letterhead.before(
        books.homeowner(), LetterKind.QUOTE, estimate.job(), Told.ofDraft(estimate.job()), place);
  }
}
