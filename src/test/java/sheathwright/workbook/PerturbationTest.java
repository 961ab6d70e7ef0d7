package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.job.CsvFile;
import sheathwright.job.Estimate;
import sheathwright.job.FilledTable;
import sheathwright.job.Job;
import sheathwright.job.JobTables;

/**
 * Changes each input of a written workbook, lets a foreign engine recalculate it, and compares
 * every cell with Java run again on the changed input. A branch that Java had cut out of the
 * workbook would show here.
 */
class PerturbationTest {

  /** Later readings are as the first ones; slower engines need not see them all. */
  private static final int READINGS_KEPT = 3;

  private static final Path FOLDER = Path.of("target", "perturbed");

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

  private static int followsEachInput(String job, Following.Maker<Estimate> maker, String kind) {
    JobTables tables = Samples.tables(job);
    Following.Made old = Following.made(maker, new Estimate(Job.of(tables)));
    int changed = 0;
    for (Traced input : old.book().inputs().keySet()) {
      Matcher place = Following.PLACE.matcher(input.source().text());
      boolean isLikeTheFirst =
          place.matches() && Long.parseLong(place.group(2)) > lastOfItsKind(job, place.group(1));
      // A reading names a plane that is known, and all readings of a rafter say where it stands.
      boolean isBoundToOthers =
          input.name().equals("plane")
              || input.name().equals("along_in") && input.source().text().startsWith("readings");
      if (!place.matches()
          || isBoundToOthers
          || isLikeTheFirst
          || isFollowedElsewhere(job, input)) {
        continue;
      }
      CsvFile file = tables.files().get(place.group(1));
      Estimate other =
          Perturbed.otherTexts(input).stream()
              .map(text -> Following.changed(file, Long.parseLong(place.group(2)), input, text))
              .flatMap(table -> Following.estimate(tables, place.group(1), table).stream())
              .findFirst()
              .orElseThrow(
                  () -> new AssertionError("no other value is allowed for " + input.name()));
      Following.Made fresh = Following.made(maker, other);
      byte[] edited = Perturbed.edited(old.bytes(), fresh.book().inputs());
      String what = kind + "-" + input.name() + "-" + place.group(2);
      List<Solution> stale = SolvedCells.restingOn(input, old.book());
      if (stale.isEmpty()) {
        Following.assertFollows(what, edited, fresh.bytes());
      } else {
        Following.assertFollowsBesideWhatWasSolved(what, edited, fresh.bytes(), old.book());
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
        Following.keepForOtherEngines(FOLDER, job + "-" + what, edited, fresh.bytes());
      }
      changed++;
    }
    return changed;
  }

  /** The last line of a table that is changed; those behind it are as the ones before. */
  private static long lastOfItsKind(String job, String table) {
    return switch (table) {
      case "marks", "rafters", "reports", "layers" -> 3;
      case "readings" -> job.equals("tallow-end") ? 8 : Long.MAX_VALUE;
      default -> Long.MAX_VALUE;
    };
  }

  /** The hip house has the gable's prices, rates and facts, the surveyed one its rates. */
  private static boolean isFollowedElsewhere(String job, Traced input) {
    boolean isOfTheDeck =
        Set.of("strip_rule", "beyond_mark_in", "support_spacing_in").contains(input.name());
    return switch (job) {
      case "cinder-brook" ->
          !isOfTheDeck && input.source().text().matches("(job|prices|rates|layers)\\.csv.*");
      case "tallow-end" -> input.source().text().matches("rates\\.csv.*");
      default -> false;
    };
  }

  static Stream<String> functions() {
    return Samples.tablesToFill().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void aFilledTable_followsEachOfItsInputs(String function) {
    FilledTable filled = Samples.filled(function, Samples.tablesToFill().get(function));
    Following.Made old = Following.made(FillBook::book, filled);
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
          Following.Made fresh = Following.made(FillBook::book, other);
          byte[] edited = Perturbed.edited(old.bytes(), fresh.book().inputs());
          Following.assertFollows(function + " " + input.name(), edited, fresh.bytes());
        }
      }
    }
  }
}
