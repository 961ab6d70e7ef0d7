package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.Walk;
import sheathwright.figure.Choice;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/**
 * Whatever column of the tables is changed in a written workbook, either a guard asks to solve
 * again or solving again gives the same. Each column is looked at until a line of it is compared,
 * in the first job that has it or with {@code -Dsheathwright.sweep=all} in each.
 */
class SolvedInputsTest {

  @Test
  void eachColumn_isComparedOrHasNoPart() {
    Set<String> met = new HashSet<>();
    int compared = 0;
    for (String job : Samples.JOBS) {
      compared += comparedColumns(job, met);
    }
    assertThat(compared).isGreaterThan(15);
  }

  private static int comparedColumns(String job, Set<String> met) {
    JobTables tables = Samples.tables(job);
    Following.Made made = Following.made(JobBook::estimate, new Estimate(Job.of(tables)));
    Map<String, List<String>> before = solved(made);
    List<Traced> without = new ArrayList<>();
    int compared = 0;
    Map<String, List<Map.Entry<Traced, Place>>> columns = columns(made.book());
    columns.keySet().removeIf(column -> !met.add(column) && !Walk.isWhole());
    try (Engine engine = Engine.of(made.bytes())) {
      for (List<Map.Entry<Traced, Place>> column : columns.values()) {
        if (column.stream().anyMatch(input -> changed(engine, made.book().solutions(), input))) {
          compared++;
        } else {
          without.add(column.get(0).getKey());
        }
      }
    }
    assertHaveNoPart(tables, without, before);
    return compared;
  }

  /**
   * Inputs that no guard compares: changed all at once, what is solved anew is the same. Where it
   * is not, or where the job is refused, each half of them is tried by itself.
   */
  private static void assertHaveNoPart(
      JobTables tables, List<Traced> inputs, Map<String, List<String>> before) {
    if (inputs.isEmpty()) {
      return;
    }
    Optional<Map<String, List<String>>> answer = resolved(tables, inputs);
    if (inputs.size() == 1) {
      answer.ifPresent(
          solved ->
              assertThat(solved)
                  .as(
                      "%s at %s, which no guard compares",
                      inputs.get(0).name(), inputs.get(0).source())
                  .isEqualTo(before));
    } else if (answer.filter(before::equals).isEmpty()) {
      assertHaveNoPart(tables, inputs.subList(0, inputs.size() / 2), before);
      assertHaveNoPart(tables, inputs.subList(inputs.size() / 2, inputs.size()), before);
    }
  }

  @ParameterizedTest
  @CsvSource({"finding, rot, loose", "plane, S, N"})
  void aMarkThatSaysSomethingElse_asksForThePatchesAgain(String column, String said, String other)
      throws Exception {
    Following.Made made =
        Following.made(JobBook::estimate, new Estimate(Job.of(Samples.tables("cinder-brook"))));
    List<Solution> patches =
        made.book().solutions().stream()
            .filter(each -> each.state().name().contains("patch"))
            .toList();
    List<Map.Entry<Traced, Place>> marks =
        made.book().inputs().entrySet().stream()
            .filter(input -> input.getKey().source().text().startsWith("marks.csv"))
            .filter(input -> input.getKey().name().equals(column))
            .filter(input -> input.getKey().plain().equals(said))
            .toList();
    assertThat(patches).isNotEmpty();
    assertThat(marks).isNotEmpty();
    try (Engine engine = Engine.of(made.bytes())) {
      assertThat(engine.states(patches).values()).containsOnly("current");
      assertThat(marks).allMatch(mark -> changed(engine, patches, mark.getValue(), other));
    }
  }

  /** The inputs of each column of the job's tables; a table of keys has a column for each key. */
  private static Map<String, List<Map.Entry<Traced, Place>>> columns(Book book) {
    Map<String, List<Map.Entry<Traced, Place>>> columns = new LinkedHashMap<>();
    for (Map.Entry<Traced, Place> input : book.inputs().entrySet()) {
      Matcher place = place(input.getKey());
      boolean isOfOffice = place.matches() && place.group(1).matches("prices|rates|maker|layers");
      boolean isFreeText =
          place.matches()
              && place.group(1).equals("job")
              && input.getKey() instanceof Choice<?> word
              && word.options().isEmpty();
      if (place.matches() && !isOfOffice && !isFreeText) {
        columns
            .computeIfAbsent(
                place.group(1) + " " + input.getKey().name(), column -> new ArrayList<>())
            .add(input);
      }
    }
    return columns;
  }

  private static Matcher place(Traced input) {
    Matcher place = Following.PLACE.matcher(input.source().text());
    place.matches();
    return place;
  }

  /** Whether any guard asks to solve again while the input's cell says something else. */
  private static boolean changed(
      Engine engine, List<Solution> solutions, Map.Entry<Traced, Place> input) {
    return changed(engine, solutions, input.getValue(), Perturbed.otherValue(input.getKey()));
  }

  private static boolean changed(
      Engine engine, List<Solution> solutions, Place place, Object other) {
    engine.edit(place, other);
    return engine.states(solutions).values().stream().anyMatch(state -> !state.equals("current"));
  }

  private static Optional<Map<String, List<String>>> resolved(
      JobTables tables, List<Traced> inputs) {
    Map<String, RowSource> files = new LinkedHashMap<>(tables.files());
    for (Traced input : inputs) {
      Matcher place = place(input);
      String other = Perturbed.otherTexts(input).get(0);
      files.computeIfPresent(
          place.group(1),
          (name, file) -> Following.changed(file, Long.parseLong(place.group(2)), input, other));
    }
    return Following.made(JobBook::estimate, files).map(SolvedInputsTest::solved);
  }

  private static Cell at(XSSFWorkbook workbook, String address) {
    CellReference at = new CellReference("'" + address.replace("!", "'!"));
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  /** Everything that a solver found, as it stands in the cells. */
  private static Map<String, List<String>> solved(Following.Made made) {
    Map<String, List<String>> found = new LinkedHashMap<>();
    try (XSSFWorkbook workbook = Cells.opened(made.bytes())) {
      made.book()
          .solvedCells()
          .forEach(
              (name, addresses) ->
                  found.put(
                      name,
                      addresses.stream()
                          .map(address -> String.valueOf(at(workbook, address)))
                          .toList()));
      return found;
    } catch (java.io.IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }
}
