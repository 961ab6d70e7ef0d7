package sheathwright.proof;

import static java.util.stream.Collectors.partitioningBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Nearest;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableColumns;

/**
 * Cases of an office's own engineer: a table like ours with one more column, function, or one that
 * is called as its function is.
 *
 * @param file the table's name
 * @param tested each function that it has cases of, with what came of them
 */
public record OfficeCases(String file, List<Tested> tested) {

  private static final String ENDING = ".csv";

  /**
   * Reads and runs a table.
   *
   * @throws ProblemsException if it cannot be read, with all that is wrong: line and column
   */
  public static OfficeCases of(CsvFile file) {
    if (file.lines().isEmpty()) {
      throw new ProblemsException(
          List.of(new Problem(file.name(), 0, "", "it has no line below its headings")));
    }
    List<Problem> problems = new ArrayList<>();
    List<Tested> tested = new ArrayList<>();
    functions(file, problems)
        .forEach(
            (card, lines) -> {
              try {
                CaseTable table = CaseTable.of(card, part(file, card, lines, problems));
                problems.addAll(table.refused());
                tested.add(new Tested(card, table.outcomes()));
              } catch (ProblemsException wrong) {
                problems.addAll(wrong.problems());
              }
            });
    if (!problems.isEmpty()) {
      throw new ProblemsException(Problem.inOrder(problems).stream().distinct().toList());
    }
    return new OfficeCases(file.name(), List.copyOf(tested));
  }

  /** Whether every case of it holds. */
  public boolean holds() {
    return tested.stream().allMatch(Tested::holds);
  }

  /** How many cases it has. */
  public int cases() {
    return tested.stream().mapToInt(each -> each.outcomes().size()).sum();
  }

  /** What does not hold. */
  public List<Problem> problems() {
    return Problem.inOrder(tested.stream().flatMap(each -> each.problems().stream()).toList());
  }

  private static Map<Card, List<RowSource.Line>> functions(CsvFile file, List<Problem> problems) {
    int place = file.header().indexOf(CaseColumns.FUNCTION);
    Map<Card, List<RowSource.Line>> lines = new LinkedHashMap<>();
    if (place < 0) {
      lines.put(named(file), file.lines());
      return lines;
    }
    for (RowSource.Line line : file.lines()) {
      String name = line.cells().get(place).strip();
      try {
        Card card = Catalog.shipped().named(name);
        lines.computeIfAbsent(card, none -> new ArrayList<>()).add(line);
      } catch (RefusedException unknown) {
        problems.add(
            new Problem(file.name(), line.number(), CaseColumns.FUNCTION, unknown.getMessage()));
      }
    }
    return lines;
  }

  /** The function that a table without a column of functions is called after. */
  private static Card named(CsvFile file) {
    String name = file.name().substring(file.name().lastIndexOf('/') + 1);
    String bare = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    return Catalog.shipped()
        .find(bare)
        .orElseThrow(
            () ->
                new ProblemsException(
                    List.of(
                        new Problem(
                            file.name(),
                            1,
                            "",
                            "no column function says which function each case is of, and none is called %s; add the column, or call the file nail_withdrawal.csv"
                                .formatted(bare)))));
  }

  /**
   * The lines of one function, without the columns of the others, in which nothing may stand.
   *
   * @param problems takes what stands in such a column
   */
  private static CsvFile part(
      CsvFile file, Card card, List<RowSource.Line> lines, List<Problem> problems) {
    if (!file.header().contains(CaseColumns.FUNCTION)) {
      return file;
    }
    List<String> columns = columns(card);
    Map<Boolean, List<Integer>> places =
        IntStream.range(0, file.header().size())
            .boxed()
            .collect(
                partitioningBy(
                    place ->
                        columns.contains(file.header().get(place))
                            || CaseColumns.isOfTheCase(file.header().get(place))));
    for (RowSource.Line line : lines) {
      places.get(false).stream()
          .filter(place -> !line.cells().get(place).isBlank())
          .map(file.header()::get)
          .filter(heading -> !TableColumns.isNote(heading))
          .forEach(
              heading ->
                  problems.add(
                      new Problem(
                          file.name(),
                          line.number(),
                          heading,
                          "%s has no such column%s"
                              .formatted(card.name(), Nearest.asked(heading, columns)))));
    }
    List<Integer> kept = places.get(true);
    return new CsvFile(
        file.name(),
        file.separator(),
        kept.stream().map(file.header()::get).toList(),
        lines.stream()
            .map(
                line ->
                    new RowSource.Line(
                        line.number(), kept.stream().map(line.cells()::get).toList()))
            .toList());
  }

  private static List<String> columns(Card card) {
    return Stream.concat(
            card.parameters().stream().map(Parameter::column),
            card.results().stream().map(Result::column))
        .toList();
  }
}
