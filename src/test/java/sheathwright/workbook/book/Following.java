package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.figure.Check;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.page.Agreement;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/** Whether a workbook, edited and recalculated elsewhere, says what Java says of the same edit. */
final class Following {

  /** Where an input was read: its table and line. */
  static final Pattern PLACE = Pattern.compile("(\\w+)\\.csv, line (\\d+)");

  private Following() {}

  /**
   * A workbook as it was made.
   *
   * @param liveChecks how many of its checks a cell can follow; the others are told in words
   */
  record Made(byte[] bytes, Book book, long liveChecks) {}

  static Made made(Function<Estimate, JobBook> maker, Estimate estimate) {
    JobBook made = maker.apply(estimate);
    long live =
        Stream.of(
                estimate.framing().checks(), estimate.loadPath().checks(), estimate.site().checks())
            .flatMap(List::stream)
            .filter(Check::isLive)
            .count();
    return new Made(made.bytes(), made.book(), live);
  }

  /** The table with the input's cell changed. */
  static RowSource changed(RowSource file, long line, Traced input, String text) {
    int column = file.header().indexOf(input.name());
    int last = file.header().indexOf("value") + file.header().indexOf("usd") + 1;
    return Perturbed.with(file, line, column >= 0 ? column : last, text);
  }

  /** The workbook of the job with one table changed, unless the job is refused. */
  static Optional<Made> made(
      Function<Estimate, JobBook> maker, JobTables tables, String name, RowSource changed) {
    Map<String, RowSource> files = new LinkedHashMap<>(tables.files());
    files.put(name, changed);
    return made(maker, files);
  }

  /** The workbook of a job that has these tables, unless it is refused. */
  static Optional<Made> made(Function<Estimate, JobBook> maker, Map<String, RowSource> files) {
    try {
      return Optional.of(made(maker, new Estimate(Job.of(new JobTables(files)))));
    } catch (ProblemsException notAllowed) {
      return Optional.empty();
    }
  }

  static void assertFollows(String what, Engine edited, byte[] fresh) {
    Map<String, Object> recalculated = edited.file().withoutStates(edited.values());
    assertThat(Agreement.differences(Cells.comparable(fresh), recalculated)).as(what).isEmpty();
  }

  /**
   * The same where an input of something solved was changed: what does not rest on what was solved
   * follows. Lists of what was solved may be longer or shorter when they are solved again, so cells
   * are told by their names and not by where they stand.
   */
  static void assertFollowsBesideWhatWasSolved(
      String what, Engine edited, byte[] fresh, Book book) {
    WrittenFile written = WrittenFile.of(fresh);
    Map<String, Object> expected = byName(written, written.values(), Set.of());
    Map<String, Object> recalculated =
        byName(edited.file(), edited.values(), edited.solvedCells(book));
    recalculated.keySet().retainAll(expected.keySet());
    expected.keySet().retainAll(recalculated.keySet());
    assertThat(recalculated).as(what).hasSizeGreaterThan(60);
    assertThat(Agreement.differences(expected, recalculated)).as(what).isEmpty();
  }

  private static Map<String, Object> byName(
      WrittenFile file, Map<String, Object> values, Set<String> except) {
    Map<String, Object> named = new LinkedHashMap<>();
    file.names()
        .forEach(
            (name, cells) -> {
              boolean isItsOwn = !name.startsWith("state_of_");
              for (int i = 0; isItsOwn && i < cells.size(); i++) {
                if (values.containsKey(cells.get(i)) && !except.contains(cells.get(i))) {
                  named.put(name + "!" + i + " of " + cells.size(), values.get(cells.get(i)));
                }
              }
            });
    file.labeled("Working")
        .forEach(
            (label, address) -> {
              if (values.containsKey(address) && !except.contains(address)) {
                named.put(label, values.get(address));
              }
            });
    return named;
  }

  /** Leaves a workbook, and what it should say, for engines that read files. */
  static void keepForOtherEngines(Path folder, String name, Engine edited, byte[] fresh) {
    Samples.keep(folder.resolve(name + ".xlsx"), edited.bytes());
    Samples.keep(folder.resolve("expected").resolve(name + ".xlsx"), fresh);
  }
}
