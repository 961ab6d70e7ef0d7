package sheathwright.workbook.page;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.fill.FilledTable;
import sheathwright.workbook.book.Cells;

/**
 * Every word of every drop-down of the functions of loads, also where a number then has only one
 * value that is allowed, filled down a table and recalculated by POI's evaluator.
 */
class LoadBooksTest {

  /** A function, and its numbers; a cell with a bar in it is tried with either value. */
  static Stream<Arguments> functions() {
    return Stream.of(
        Arguments.of("layer_load", "layers=2 thickness_in=0|1/2"),
        Arguments.of("roof_live_load", "tributary_sf=150|340|700 rise_in_12=2|7|15"),
        Arguments.of(
            "roof_snow",
            "ground_snow_psf=40 exposure_factor=1 thermal_factor=1|1.15 importance=1|1.2"
                + " rise_in_12=1|8|36"),
        Arguments.of("snow_exposure_factor", ""),
        Arguments.of("snow_thermal_factor", ""),
        Arguments.of("snow_importance", ""),
        Arguments.of("minimum_snow", "ground_snow_psf=15|55 rise_in_12=1|6"),
        Arguments.of(
            "rain_on_snow", "ground_snow_psf=15|28 rise_in_12=0|2 eave_to_ridge_ft=30|120"),
        Arguments.of(
            "unbalanced_snow",
            "ground_snow_psf=40 sloped_psf=28 importance=1|1.2 rise_in_12=0|6|9"
                + " eave_to_ridge_ft=14|33 winter_wind=0.4"),
        Arguments.of(
            "load_combinations", "dead_psf=12 roof_live_psf=20 snow_psf=18|50 uplift_psf=0|200"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("functions")
  void everyWord_isFollowedByAnotherEngine(String function, String numbers) {
    FilledTable filled = Samples.filled(function, table(function, numbers));
    assertThat(filled.rows()).anyMatch(row -> row.error().isEmpty());
    assertThat(words(filled)).isEqualTo(allWords(filled));
    byte[] book = FillBook.bytes(filled);
    assertThat(Agreement.differences(Cells.written(book), Cells.byPoi(book))).isEmpty();
  }

  /** The words that stand in a row which was not refused. */
  private static List<String> words(FilledTable filled) {
    return wordParameters(filled).stream()
        .flatMap(
            parameter ->
                parameter.words().stream()
                    .filter(
                        word ->
                            filled.rows().stream()
                                .filter(row -> row.error().isEmpty())
                                .anyMatch(row -> stands(filled, row, parameter, word)))
                    .map(word -> parameter.column() + "=" + word))
        .toList();
  }

  private static List<String> allWords(FilledTable filled) {
    return wordParameters(filled).stream()
        .flatMap(
            parameter -> parameter.words().stream().map(word -> parameter.column() + "=" + word))
        .toList();
  }

  private static List<Parameter> wordParameters(FilledTable filled) {
    return filled.card().parameters().stream().filter(each -> !each.words().isEmpty()).toList();
  }

  private static boolean stands(
      FilledTable filled, FilledRow row, Parameter parameter, String word) {
    int index = filled.card().parameters().indexOf(parameter);
    return row.arguments().get(index).plain().equals(word);
  }

  private static String table(String function, String numbers) {
    List<Parameter> parameters = Catalog.shipped().named(function).parameters();
    List<String> rows = List.of("");
    for (Parameter parameter : parameters) {
      List<String> values =
          parameter.words().isEmpty() ? values(parameter, numbers) : parameter.words();
      List<String> longer = new ArrayList<>();
      for (String row : rows) {
        values.forEach(value -> longer.add(row.isEmpty() ? value : row + "," + value));
      }
      rows = longer;
    }
    return parameters.stream().map(Parameter::column).collect(joining(","))
        + "\n"
        + String.join("\n", rows)
        + "\n";
  }

  private static List<String> values(Parameter parameter, String numbers) {
    return Stream.of(numbers.split(" "))
        .filter(pair -> pair.startsWith(parameter.column() + "="))
        .map(pair -> pair.substring(pair.indexOf('=') + 1))
        .flatMap(cell -> Stream.of(cell.split("\\|")))
        .toList();
  }
}
