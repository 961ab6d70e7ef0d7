package sheathwright.life.back;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Step;
import sheathwright.life.record.TableText;
import sheathwright.life.record.Writing;

/**
 * Workbooks from the roof and the attic taken into a job's tables. A row that is new is added, a
 * cell that only they changed is changed; where two changed one cell differently both are said and
 * nothing is written. Taking in what was taken in changes nothing.
 */
public final class TakingIn {

  private final Path folder;
  private final Optional<JobFolder> job;
  private final List<String> changes = new ArrayList<>();
  private final List<TableText> written;

  /**
   * The tables of a job and what workbooks say.
   *
   * @throws ProblemsException with everything that is wrong with the workbooks, and each cell that
   *     two changed differently; with what is wrong with the job, if a crew's is among them, or if
   *     the job could be read before and could not any more
   */
  public TakingIn(Path folder, List<Path> workbooks) {
    this.folder = folder;
    requireFacts(folder);
    List<TableBook> books = workbooks.stream().map(TableBook::in).toList();
    boolean isCrewAmong = books.stream().anyMatch(CrewReading::isOf);
    JobFolder.putRight(folder);
    job = isCrewAmong ? Optional.of(JobFolder.in(folder)) : ifWhole(folder);
    job.ifPresent(known -> known.require(Step.TAKE_IN));
    TakenTables tables = new TakenTables(folder);
    for (TableBook book : books) {
      if (CrewReading.isOf(book)) {
        new CrewReading(tables, book, job.orElseThrow().stage()).take();
      } else if (SurveyReading.isOf(book)) {
        new SurveyReading(tables, book).take();
      } else {
        tables.problem(neither(book));
      }
    }
    written = tables.written(changes);
    job.ifPresent(whole -> Job.of(whole.with(written.toArray(TableText[]::new))));
  }

  private static void requireFacts(Path folder) {
    if (!Files.exists(folder.resolve(JobTable.JOB.file()))) {
      String message =
          "no %s is there to take anything into; begin the job with %s"
              .formatted(JobTable.JOB.file(), Step.command("new", folder.toString(), ""));
      throw new ProblemsException(List.of(new Problem(folder.toString(), 0, "", message)));
    }
  }

  /** A survey may fill in a job of which too little is known yet to be read. */
  private static Optional<JobFolder> ifWhole(Path folder) {
    try {
      return Optional.of(JobFolder.in(folder));
    } catch (ProblemsException unfinished) {
      return Optional.empty();
    }
  }

  private static Problem neither(TableBook book) {
    String message =
        "it is neither a crew's workbook nor a survey: no tab of it is called %sand a plane, and none %s; name one that the command crew or intake wrote"
            .formatted(CrewTabs.OF_A_PLANE, SurveyTabs.CALL);
    return new Problem(book.name(), 0, "", message);
  }

  /**
   * Writes what was taken in, all or nothing.
   *
   * @return what changed, a line each; none where nothing did
   */
  public List<String> write() {
    if (!written.isEmpty()) {
      Writing writing = new Writing(folder);
      written.forEach(writing::with);
      writing.write();
    }
    return List.copyOf(changes);
  }

  /** What is to be run next, where the job could not be read before. */
  public Optional<String> next() {
    return job.isPresent()
        ? Optional.empty()
        : Optional.of(
            "next: %s says what is still missing"
                .formatted(Step.command("quote", folder.toString(), "")));
  }
}
