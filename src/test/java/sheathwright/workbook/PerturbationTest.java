package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.job.CsvFile;
import sheathwright.job.Estimate;
import sheathwright.job.FilledTable;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.ProblemsException;

/**
 * Changes each input of a written workbook, lets a foreign engine recalculate it, and compares
 * every cell with Java run again on the changed input. A branch that Java had cut out of the
 * workbook would show here.
 */
class PerturbationTest {

  private static final Pattern PLACE = Pattern.compile("(\\w+)\\.csv, line (\\d+)");

  /** Later readings are as the first ones; slower engines need not see them all. */
  private static final int READINGS_KEPT = 3;

  private static final Path FOLDER = Path.of("target", "perturbed");

  /** A way of making a workbook that also tells where its inputs stand. */
  private interface Maker<T> {
    Book book(T from, Consumer<byte[]> bytes);
  }

  private record Made(byte[] bytes, Book book) {}

  private static <T> Made made(Maker<T> maker, T from) {
    byte[][] bytes = new byte[1][];
    Book book = maker.book(from, written -> bytes[0] = written);
    return new Made(bytes[0], book);
  }

  static Stream<String> jobs() {
    return Samples.JOBS.stream();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void anEstimate_followsEachOfItsInputs(String job) {
    int changed = followsEachInput(job, EstimateBook::book, "estimate");
    assertThat(changed).isGreaterThan(20);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aQuote_followsEachOfItsInputs(String job) {
    int changed = followsEachInput(job, QuoteBook::book, "quote");
    assertThat(changed).isGreaterThan(20);
  }

  private static int followsEachInput(String job, Maker<Estimate> maker, String kind) {
    JobTables tables = Samples.tables(job);
    Made old = made(maker, new Estimate(Job.of(tables)));
    int changed = 0;
    for (Traced input : old.book().inputs().keySet()) {
      Matcher place = PLACE.matcher(input.source().text());
      boolean isLikeTheFirst =
          List.of("marks", "rafters").contains(place.matches() ? place.group(1) : "")
              && Long.parseLong(place.group(2)) > 3;
      boolean isTheNameOfAPlane = input.name().equals("plane"); // readings must name a known one
      if (!place.matches()
          || isTheNameOfAPlane
          || isLikeTheFirst
          || isFollowedElsewhere(job, input)) {
        continue;
      }
      CsvFile file = tables.files().get(place.group(1));
      Estimate other =
          Perturbed.otherTexts(input).stream()
              .map(text -> changed(file, Long.parseLong(place.group(2)), input, text))
              .flatMap(table -> estimate(tables, place.group(1), table).stream())
              .findFirst()
              .orElseThrow(
                  () -> new AssertionError("no other value is allowed for " + input.name()));
      Made fresh = made(maker, other);
      byte[] edited = Perturbed.edited(old.bytes(), fresh.book().inputs());
      String what = kind + "-" + input.name() + "-" + place.group(2);
      List<Solution> stale = SolvedCells.restingOn(input, old.book());
      if (stale.isEmpty()) {
        assertFollows(what, edited, fresh.bytes());
      } else {
        assertFollowsBesideWhatWasSolved(what, edited, fresh.bytes(), old.book());
      }
      SolvedCells.states(edited, old.book().solutions())
          .forEach(
              (solution, state) ->
                  assertThat(state)
                      .as("%s: %s", what, solution.name())
                      .startsWith(stale.contains(solution) ? "solve again: " : "current"));
      boolean isLate =
          place.group(1).equals("readings") && Long.parseLong(place.group(2)) > READINGS_KEPT + 1;
      if (kind.equals("estimate") && !isLate && stale.isEmpty()) {
        keepForOtherEngines(job + "-" + what, edited, fresh.bytes());
      }
      changed++;
    }
    return changed;
  }

  /** The hip house has the gable's prices, rates and facts; only its deck is its own. */
  private static boolean isFollowedElsewhere(String job, Traced input) {
    boolean isOfTheDeck =
        Set.of("strip_rule", "beyond_mark_in", "support_spacing_in").contains(input.name());
    return job.equals("cinder-brook")
        && !isOfTheDeck
        && input.source().text().matches("(job|prices|rates)\\.csv.*");
  }

  private static CsvFile changed(CsvFile file, long line, Traced input, String text) {
    int column = file.header().indexOf(input.name());
    int last = file.header().indexOf("value") + file.header().indexOf("usd") + 1;
    return Perturbed.with(file, line, column >= 0 ? column : last, text);
  }

  private static Optional<Estimate> estimate(JobTables tables, String name, CsvFile changed) {
    Map<String, CsvFile> files = new LinkedHashMap<>(tables.files());
    files.put(name, changed);
    try {
      return Optional.of(new Estimate(Job.of(new JobTables(files))));
    } catch (ProblemsException | RefusedException notAllowed) {
      return Optional.empty();
    }
  }

  static Stream<String> functions() {
    return Samples.tablesToFill().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void aFilledTable_followsEachOfItsInputs(String function) {
    FilledTable filled = Samples.filled(function, Samples.tablesToFill().get(function));
    Made old = made(FillBook::book, filled);
    for (FilledTable.Row row : filled.rows()) {
      for (Traced input : row.arguments()) {
        int column = filled.file().header().indexOf(input.name());
        if (column >= 0) {
          FilledTable other =
              Perturbed.otherTexts(input).stream()
                  .map(text -> Perturbed.with(filled.file(), row.line().number(), column, text))
                  .map(table -> FilledTable.of(filled.card(), table))
                  .filter(table -> table.problems().isEmpty())
                  .findFirst()
                  .orElseThrow();
          Made fresh = made(FillBook::book, other);
          byte[] edited = Perturbed.edited(old.bytes(), fresh.book().inputs());
          assertFollows(function + " " + input.name(), edited, fresh.bytes());
        }
      }
    }
  }

  private static void assertFollows(String what, byte[] edited, byte[] fresh) {
    Map<String, Object> expected = Perturbed.comparable(fresh, Cells.written(fresh));
    Map<String, Object> recalculated = Perturbed.comparable(edited, Cells.byPoi(edited));
    List<String> differences = Agreement.differences(expected, recalculated);
    assertThat(differences).as(what).isEmpty();
  }

  private static void assertFollowsBesideWhatWasSolved(
      String what, byte[] edited, byte[] fresh, Book book) {
    Set<String> solved = SolvedCells.addresses(edited, book.solvedNames());
    Map<String, Object> expected = Perturbed.comparable(fresh, Cells.written(fresh));
    Map<String, Object> recalculated = Perturbed.comparable(edited, Cells.byPoi(edited));
    expected.keySet().removeAll(solved);
    recalculated.keySet().removeAll(solved);
    assertThat(recalculated).as(what).hasSizeGreaterThan(60);
    assertThat(Agreement.differences(expected, recalculated)).as(what).isEmpty();
  }

  private static void keepForOtherEngines(String name, byte[] edited, byte[] fresh) {
    Samples.keep(FOLDER.resolve(name + ".xlsx"), edited);
    Samples.keep(FOLDER.resolve("expected").resolve(name + ".xlsx"), fresh);
  }
}
