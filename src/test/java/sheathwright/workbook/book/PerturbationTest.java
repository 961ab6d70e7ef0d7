package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.Walk;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.fill.FilledTable;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.page.FillBook;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/**
 * Changes an input of each kind in a written workbook, or with {@code -Dsheathwright.sweep=all}
 * each input, lets a foreign engine recalculate it, and compares every cell with Java run again on
 * the changed input. A branch that Java had cut out of the workbook would show here.
 */
class PerturbationTest {

  private static final Pattern ANY = Pattern.compile(".*");
  private static final Pattern OF_THE_DECK =
      Pattern.compile(
          "strip_rule|beyond_mark_in|support_spacing_in|material|layers|.*thickness_in");
  private static final Pattern OF_THE_RAFTERS =
      Pattern.compile(
          ".*(sister|shim|stick|rafter|species|grade|span|load|live|dead|_psf|moisture|incised|seasoned|notch|brace|rise|jacked|deflection|value_set|bearing|engineer).*");
  private static final Pattern OF_THE_SURVEY =
      Pattern.compile(
          "target|objective|.*_bearing.*|least_lap_in|flatness|truss|rise_in_12|rafter_size|support_spacing_in|.*(sister|shim).*");

  private static final Path FOLDER = Path.of("target", "perturbed");

  /**
   * The job with the most to say of its rafters first: each kind of input is changed where it is
   * met.
   */
  private static final List<String> JOBS =
      List.of("mistwater-cottage", "tallow-end", "cinder-brook", "quince-hollow");

  @Test
  void anEstimate_followsEachOfItsInputs() {
    assertThat(JOBS).containsExactlyInAnyOrderElementsOf(Samples.JOBS);
    Set<String> kinds = new HashSet<>();
    int changed = 0;
    for (String job : JOBS) {
      JobTables tables = Samples.tables(job);
      Following.Made old = Following.made(JobBook::estimate, new Estimate(Job.of(tables)));
      try (Engine engine = Engine.of(old.bytes())) {
        changed += followsEachInput(job, tables, old, engine, kinds);
      }
    }
    assertThat(changed).isGreaterThan(30);
  }

  private static int followsEachInput(
      String job, JobTables tables, Following.Made old, Engine engine, Set<String> kinds) {
    int changed = 0;
    for (Traced input : old.book().inputs().keySet()) {
      Matcher place = Following.PLACE.matcher(input.source().text());
      boolean isLikeTheFirst =
          place.matches() && Long.parseLong(place.group(2)) > lastOfItsKind(place.group(1));
      // A reading names a plane that is known, and all readings of a rafter say where it stands.
      boolean isBoundToOthers =
          input.name().equals("plane")
              || input.name().equals("along_in") && input.source().text().startsWith("readings");
      if (!place.matches()
          || isBoundToOthers
          || isLikeTheFirst
          || isFollowedElsewhere(job, input)
          || !Walk.isWhole() && kinds.contains(kind(input, place))) {
        continue;
      }
      RowSource file = tables.files().get(place.group(1));
      Optional<Following.Made> allowed =
          Perturbed.otherTexts(input).stream()
              .map(text -> Following.changed(file, Long.parseLong(place.group(2)), input, text))
              .flatMap(
                  table ->
                      Following.made(JobBook::estimate, tables, place.group(1), table).stream())
              .findFirst();
      if (allowed.isEmpty()) {
        // A word that must be what another table says is refused when the tables are read.
        if (input instanceof Figure<?> figure) {
          assertRefused(figure, old, engine);
        }
        continue;
      }
      kinds.add(kind(input, place));
      Following.Made fresh = allowed.get();
      engine.edit(fresh.book().inputs());
      String what = "estimate-" + input.name() + "-" + place.group(2);
      List<Solution> stale = SolvedCells.restingOn(input, old.book());
      if (stale.isEmpty()) {
        Following.assertFollows(what, engine, fresh.bytes());
      } else {
        Following.assertFollowsBesideWhatWasSolved(what, engine, fresh.bytes(), old.book());
      }
      engine
          .states(old.book().solutions())
          .forEach(
              (solution, state) -> {
                boolean mayHaveChanged = stale.contains(solution);
                // What is read anew from the same values may stay, unless it waits for another.
                if (!mayHaveChanged || !readsTheSame(solution, fresh.book())) {
                  assertThat(state)
                      .as("%s: %s", what, solution.name())
                      .startsWith(mayHaveChanged ? "solve again: " : "current");
                }
              });
      if (stale.isEmpty() && Walk.takes(changed)) {
        Following.keepForOtherEngines(FOLDER, job + "-" + what, engine, fresh.bytes());
      }
      changed++;
    }
    return changed;
  }

  /** Inputs of one table and one unit go one way into the workbook, and so do words and texts. */
  private static String kind(Traced input, Matcher place) {
    String unit =
        input instanceof Figure<?> figure
            ? figure.unit().toString()
            : ((Choice<?>) input).options().isEmpty() ? "a text" : "a word";
    return place.group(1) + " " + unit;
  }

  /** Where Java refuses whatever else the input could say, the workbook has an error there. */
  private static void assertRefused(Figure<?> input, Following.Made old, Engine engine) {
    Traced other = Figure.of(input.value() + 1, input.unit());
    engine.edit(Map.of(other, old.book().inputs().get(input)));
    assertThat(engine.values().values()).as(input.name()).contains("#error");
  }

  /** Whether the changed job's solution was read from the same values, as far as any were made. */
  private static boolean readsTheSame(Solution solution, Book fresh) {
    return fresh.solutions().stream()
        .filter(other -> other.name().equals(solution.name()))
        .anyMatch(other -> read(other).equals(read(solution)));
  }

  private static List<Object> read(Solution solution) {
    return solution.inputs().stream()
        .<Object>map(
            input ->
                input instanceof Figure<?> figure && figure.refusal().isEmpty()
                    ? figure.value()
                    : input.toString())
        .toList();
  }

  /** The last line of a table that is changed; those behind it are as the ones before. */
  private static long lastOfItsKind(String table) {
    return switch (table) {
      case "marks", "rafters", "reports", "layers", "planes", "openings", "maker" -> 3;
      case "readings" -> 8;
      default -> Long.MAX_VALUE;
    };
  }

  /** What a job says as another one does is changed there; each job has what is its own. */
  private static boolean isFollowedElsewhere(String job, Traced input) {
    boolean isShared = input.source().text().matches("(job|prices|rates|layers)\\.csv.*");
    Pattern own =
        switch (job) {
          case "cinder-brook" -> OF_THE_DECK;
          case "tallow-end" -> OF_THE_SURVEY;
          case "mistwater-cottage" -> OF_THE_RAFTERS;
          default -> ANY;
        };
    return isShared && !own.matcher(input.name()).matches();
  }

  static Stream<String> functions() {
    List<String> functions = List.copyOf(Samples.tablesToFill().keySet());
    return IntStream.range(0, functions.size()).filter(Walk::takes).mapToObj(functions::get);
  }

  /** What a row says instead in a column. */
  private record Change(FilledRow row, int column, String text) {

    CsvFile in(CsvFile file) {
      return Perturbed.with(file, row.line().number(), column, text);
    }
  }

  @ParameterizedTest
  @MethodSource("functions")
  void aFilledTable_followsEachOfItsInputs(String function) {
    FilledTable filled = Samples.filled(function, Samples.tablesToFill().get(function));
    byte[] old = FillBook.bytes(filled);
    try (Engine engine = Engine.of(old)) {
      List<List<Change>> columns = new ArrayList<>();
      for (int column = 0; column < filled.file().header().size(); column++) {
        List<Change> changes = changes(filled, column);
        if (changes.isEmpty()) {
          assertRefused(function, filled, column, old, engine);
        } else {
          columns.add(changes);
        }
      }
      for (List<Change> changes : Walk.isWhole() ? columns : oneOfEach(columns)) {
        CsvFile file = filled.file();
        for (Change change : changes) {
          file = change.in(file);
        }
        FilledTable other = FilledTable.of(filled.card(), file);
        byte[] fresh = FillBook.bytes(other);
        engine.edit(inputs(other, fresh));
        Following.assertFollows(function + " " + changes, engine, fresh);
      }
    }
  }

  /**
   * Each column changed in one row. The rows of a table have one formula and know nothing of each
   * other, so each row of an edit changes a column of its own.
   */
  private static Collection<List<Change>> oneOfEach(List<List<Change>> columns) {
    Map<Long, Integer> used = new HashMap<>();
    Map<Integer, List<Change>> edits = new TreeMap<>();
    for (List<Change> column : columns) {
      Change change =
          Collections.min(
              column,
              Comparator.comparing(each -> used.getOrDefault(each.row().line().number(), 0)));
      int edit = used.merge(change.row().line().number(), 1, Integer::sum);
      edits.computeIfAbsent(edit, number -> new ArrayList<>()).add(change);
    }
    return edits.values();
  }

  /** What each row could say else in a column, if it may. */
  private static List<Change> changes(FilledTable filled, int column) {
    return filled.rows().stream()
        .flatMap(
            row ->
                otherTexts(filled, row, column)
                    .map(text -> new Change(row, column, text))
                    .filter(
                        change ->
                            FilledTable.of(filled.card(), change.in(filled.file()))
                                .problems()
                                .isEmpty())
                    .findFirst()
                    .stream())
        .toList();
  }

  /** What else each row's cell of a column could say. */
  private static Stream<String> otherTexts(FilledTable filled, FilledRow row, int column) {
    return row.arguments().stream()
        .filter(input -> input.name().equals(filled.file().header().get(column)))
        .flatMap(input -> Perturbed.otherTexts(input).stream());
  }

  /** Where Java refuses whatever else a column could say, the workbook has an error there. */
  private static void assertRefused(
      String function, FilledTable filled, int column, byte[] file, Engine engine) {
    String what = function + " " + filled.file().header().get(column);
    Map<Traced, Place> inputs = inputs(filled, file);
    List<Traced> refused =
        inputs.keySet().stream()
            .filter(input -> input.name().equals(filled.file().header().get(column)))
            .toList();
    assertThat(refused).as(what).isNotEmpty();
    for (Traced input : refused) {
      engine.edit(inputs.get(input), Perturbed.otherValue(input));
      assertThat(engine.values().values()).as(what).contains("#error");
    }
  }

  /** Where each argument of a filled table stands: its column's range says so. */
  private static Map<Traced, Place> inputs(FilledTable filled, byte[] book) {
    Map<String, List<String>> cells = Cells.byName(book);
    Map<Traced, Place> inputs = new IdentityHashMap<>();
    for (int row = 0; row < filled.rows().size(); row++) {
      for (Traced argument : filled.rows().get(row).arguments()) {
        String address = cells.get("filled_" + argument.name()).get(row);
        CellReference cell = new CellReference(address.substring(address.indexOf('!') + 1));
        inputs.put(argument, new Place("Filled", cell.getRow(), cell.getCol(), ""));
      }
    }
    return inputs;
  }
}
