package sheathwright.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.Result;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;

/**
 * Which columns of a table of cases tell of the case, which are the function's arguments, and which
 * its expected results. A name that is wanted twice, such as {@code kind} of a panel, stands twice:
 * first for the case or the argument, then for the other.
 */
final class CaseColumns {

  /** What may stand of the case itself. */
  static final String CASE = "case";

  static final String CLASS = "class";
  static final String KIND = "kind";
  static final String SOURCE = "source";
  static final String TOLERANCE = "tolerance";
  static final String WITHIN = "within";
  static final String FUNCTION = "function";

  private static final List<String> OF_THE_CASE =
      List.of(CASE, CLASS, KIND, SOURCE, TOLERANCE, WITHIN, FUNCTION);

  private final CsvFile file;
  private final Map<String, Integer> ofTheCase = new LinkedHashMap<>();
  private final Map<Result, Integer> results = new LinkedHashMap<>();
  private final List<Integer> others = new ArrayList<>();

  CaseColumns(Card card, CsvFile file) {
    this.file = file;
    List<String> arguments = new ArrayList<>();
    for (int place = 0; place < file.header().size(); place++) {
      String heading = file.header().get(place);
      Optional<Result> result =
          card.results().stream()
              .filter(each -> each.column().equals(heading) && !results.containsKey(each))
              .findFirst();
      boolean isArgument = card.parameter(heading) != null && !arguments.contains(heading);
      if (isOfTheCase(card, heading) && !ofTheCase.containsKey(heading)) {
        ofTheCase.put(heading, place);
      } else if (!isArgument && result.isPresent()) {
        results.put(result.get(), place);
      } else {
        arguments.add(heading);
        others.add(place);
      }
    }
  }

  /** A heading that a parameter has too tells of the case where it stands a second time. */
  private boolean isOfTheCase(Card card, String heading) {
    return isOfTheCase(heading)
        && (card.parameter(heading) == null || Collections.frequency(file.header(), heading) > 1);
  }

  /** Whether a heading tells of the case itself. */
  static boolean isOfTheCase(String heading) {
    return OF_THE_CASE.contains(heading);
  }

  /** Where the arguments of a function stand, and whatever is none of its columns. */
  CsvFile arguments() {
    return new CsvFile(
        file.name(),
        file.separator(),
        others.stream().map(file.header()::get).toList(),
        file.lines().stream()
            .map(
                line ->
                    new RowSource.Line(
                        line.number(), others.stream().map(line.cells()::get).toList()))
            .toList());
  }

  /** What a line says of the case itself; empty where nothing stands. */
  String told(RowSource.Line line, String column) {
    Integer place = ofTheCase.get(column);
    return place == null ? "" : line.cells().get(place).strip();
  }

  /** The results that a line expects. */
  List<CertifiedCase.Expected> expected(RowSource.Line line) {
    return results.entrySet().stream()
        .map(
            each ->
                new CertifiedCase.Expected(
                    each.getKey(), line.cells().get(each.getValue()).strip()))
        .filter(each -> !each.text().isEmpty())
        .toList();
  }

  boolean expectsAny() {
    return !results.isEmpty();
  }
}
