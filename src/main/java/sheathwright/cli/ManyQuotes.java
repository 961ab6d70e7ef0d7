package sheathwright.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import sheathwright.cli.pipe.Voice;
import sheathwright.cli.pipe.Watch;
import sheathwright.figure.Shown;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.table.Printable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.doubt.Doubts;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Step;
import sheathwright.life.record.Writing;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.JobBooks;

/**
 * The quotes of many jobs, one after the other in the order in which they were named: each is
 * written whole or not at all, and one that is refused stops no other. Nothing of a job is kept
 * when the next begins.
 */
final class ManyQuotes {

  private final List<Path> named;
  private final List<Path> folders;
  private final Optional<Path> place;
  private final boolean mayReplace;
  private final CommandSpec command;
  private final PrintWriter err;
  private final Watch watch;
  private int refused;

  /** The workbooks of one job, and how often it is asked whether something is meant. */
  private record Made(JobBooks books, Estimate estimate, int questions) {}

  /**
   * Those of jobs in these folders.
   *
   * @param named what was named: plain files among it, such as an office's tables, are no jobs
   * @param place where a folder is made for each job; none where each job's own is meant
   * @param command that is asked for them
   */
  ManyQuotes(List<Path> named, Optional<Path> place, boolean mayReplace, CommandSpec command) {
    this.named = named;
    this.folders = named.stream().filter(path -> !Files.isRegularFile(path)).distinct().toList();
    this.place = place;
    this.mayReplace = mayReplace;
    this.command = command;
    this.err = command.commandLine().getErr();
    this.watch = Watch.over(command);
  }

  /**
   * Makes them, and says a line of each.
   *
   * @return the exit status: whether any was refused, or met a fault of the program's own
   * @throws ProblemsException if none of them is a folder, or two jobs would go into one
   */
  int status() {
    requireApart();
    passedOver();
    int status = 0;
    for (int i = 0; i < folders.size(); i++) {
      watch.show(Shown.text("%,d of %,d: %s", i + 1, folders.size(), folders.get(i)));
      try {
        String line = quoted(folders.get(i));
        watch.clear();
        Voice.say(command, line);
      } catch (RuntimeException | OutOfMemoryError | StackOverflowError thrown) {
        Failure failure = Failure.of(thrown);
        refused++;
        status = status == 1 ? status : failure.status();
        complain(folders.get(i) + ": " + inOneLine(thrown, failure, folders.get(i)));
      }
    }
    watch.clear();
    if (refused > 0) {
      err.println(Shown.text("%,d of %,d jobs refused", refused, folders.size()));
    }
    return status;
  }

  /** Says which plain files were named, but for tables that lie above jobs. */
  private void passedOver() {
    named.stream()
        .filter(path -> !folders.contains(path))
        .filter(Files::isRegularFile)
        .filter(path -> !path.toString().endsWith(JobTable.ENDING))
        .forEach(path -> complain(path + ": passed over, it is no folder"));
  }

  private void requireApart() {
    if (folders.isEmpty()) {
      String message = "none of these is a folder; a job is a folder of CSV files";
      throw new ProblemsException(List.of(new Problem(named.get(0).toString(), 0, "", message)));
    }
    Map<Path, Path> places = new LinkedHashMap<>();
    for (Path folder : folders) {
      Path other = places.put(place(folder).toAbsolutePath().normalize(), folder);
      if (other != null) {
        String message =
            "its workbooks would go into %s, as those of %s do; name one of the two"
                .formatted(place(folder), other);
        throw new ProblemsException(List.of(new Problem(folder.toString(), 0, "", message)));
      }
    }
  }

  private Path place(Path folder) {
    Path named = folder.toAbsolutePath().normalize().getFileName();
    return place.isPresent() && named != null ? place.get().resolve(named) : folder;
  }

  private String quoted(Path folder) {
    Made made = made(JobFolder.in(folder));
    Path office = place(folder).resolve("estimate.xlsx");
    Path homeowner = place(folder).resolve("quote.xlsx");
    new Writing(folder)
        .copied(office, made.books().office(), mayReplace)
        .copied(homeowner, made.books().homeowner(), mayReplace)
        .write();
    return "%s: the homeowner pays %s, at worst %s, %s; %s, %s"
        .formatted(
            folder,
            made.estimate().total(),
            made.estimate().quote().worstCase(),
            made.questions() == 1 ? "1 question" : made.questions() + " questions",
            office,
            homeowner);
  }

  private static Made made(JobFolder job) {
    Estimate estimate = new Estimate(job.job());
    int questions = Doubts.of(estimate).all().size();
    if (job.isAgreed()) {
      byte[] agreed = job.bytes(job.agreedQuote());
      return new Made(
          new JobBooks(JobBook.estimate(estimate).bytes(), agreed), estimate, questions);
    }
    job.require(Step.DRAFT);
    return new Made(JobBooks.of(estimate), estimate, questions);
  }

  /** The first thing that is wrong with a job, and how to see the rest. */
  private static String inOneLine(Throwable thrown, Failure failure, Path folder) {
    List<String> lines = failure.line().lines().toList();
    long more =
        thrown instanceof ProblemsException wrong
            ? wrong.problems().size() - 1L
            : lines.size() - 1L;
    String first = lines.get(0);
    String own = folder + ": ";
    return (first.startsWith(own) ? first.substring(own.length()) : first)
        + (more > 0 ? Shown.text("; and %,d more, which quote says of this job alone", more) : "");
  }

  private void complain(String line) {
    watch.clear();
    err.println(Printable.line(line));
  }
}
