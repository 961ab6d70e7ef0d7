package sheathwright.wood;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import sheathwright.figure.Table;

/**
 * The lines for wood whose stamp nobody can read, added to the published tables: a grade that
 * nobody knows counts as no-3, where the code's rafter tables end, and a species group that nobody
 * knows has of each value the least that any published group has.
 */
final class LeastWood {

  private static final String UNKNOWN = Species.UNKNOWN_SPECIES.word();
  private static final String NO_3 = Grade.NO_3.word();
  private static final String SAID =
      "unknown is ours: of each value the least of the groups printed, and no-3 where no grade is known";

  private LeastWood() {}

  /** A table found by species alone, with a line for the unknown one. */
  static Table ofSpecies(Table printed) {
    List<List<String>> rows = new ArrayList<>(printed.rows());
    rows.add(least(List.of(UNKNOWN), printed.rows()));
    return with(printed, printed.columns(), rows);
  }

  /** Size factors, a column for each species; those of the unknown one are inside its values. */
  static Table ofSizes(Table printed) {
    List<List<String>> rows = new ArrayList<>();
    for (List<String> row : printed.rows()) {
      rows.add(and(row, "1"));
    }
    printed.rows().stream()
        .filter(row -> row.get(0).equals(NO_3))
        .forEach(row -> rows.add(and(beginning(row, 0, UNKNOWN), "1")));
    return with(printed, and(printed.columns(), UNKNOWN), rows);
  }

  /**
   * Design values found by value set, species and grade.
   *
   * @param sizes the columns of bending values, one a size
   * @param factors what those of a species and grade are multiplied by
   */
  static Table ofLumber(Table printed, List<String> sizes, Table factors) {
    List<List<String>> rows = new ArrayList<>(printed.rows());
    Map<List<String>, List<List<String>>> bySetAndGrade = new LinkedHashMap<>();
    for (List<String> row : printed.rows()) {
      List<String> setAndGrade = List.of(row.get(0), row.get(2));
      bySetAndGrade.computeIfAbsent(setAndGrade, any -> new ArrayList<>()).add(row);
    }
    bySetAndGrade.forEach(
        (key, group) -> {
          if (group.size() == groupsOf(printed, key.get(0))) {
            List<List<String>> sized = new ArrayList<>();
            group.forEach(row -> sized(row, sizes, factors).ifPresent(sized::add));
            if (sized.size() == group.size()) {
              rows.add(least(List.of(key.get(0), UNKNOWN, key.get(1)), sized));
            }
          }
        });
    List.copyOf(rows).stream()
        .filter(row -> row.get(2).equals(NO_3))
        .forEach(row -> rows.add(beginning(row, 2, UNKNOWN)));
    return with(printed, printed.columns(), rows);
  }

  private static long groupsOf(Table printed, String valueSet) {
    return printed.rows().stream()
        .filter(row -> row.get(0).equals(valueSet))
        .map(row -> row.get(1))
        .distinct()
        .count();
  }

  /** A line with the size inside its bending values; none where a size has no factor. */
  private static Optional<List<String>> sized(List<String> row, List<String> sizes, Table factors) {
    List<String> sized = new ArrayList<>(row);
    int species = factors.keys().size() + factors.columns().indexOf(row.get(1));
    for (int i = 0; i < sizes.size(); i++) {
      List<String> wanted = List.of(row.get(2), sizes.get(i));
      Optional<List<String>> factor =
          factors.rows().stream().filter(each -> each.subList(0, 2).equals(wanted)).findFirst();
      if (factor.isEmpty()) {
        return Optional.empty();
      }
      int at = 3 + i;
      sized.set(
          at,
          plain(new BigDecimal(row.get(at)).multiply(new BigDecimal(factor.get().get(species)))));
    }
    return Optional.of(sized);
  }

  private static List<String> least(List<String> keys, List<List<String>> rows) {
    List<String> least = new ArrayList<>(keys);
    IntStream.range(keys.size(), rows.get(0).size())
        .mapToObj(
            column ->
                rows.stream()
                    .map(row -> new BigDecimal(row.get(column)))
                    .min(BigDecimal::compareTo)
                    .orElseThrow())
        .map(LeastWood::plain)
        .forEach(least::add);
    return least;
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  private static List<String> beginning(List<String> row, int key, String word) {
    List<String> changed = new ArrayList<>(row);
    changed.set(key, word);
    return changed;
  }

  private static List<String> and(List<String> row, String last) {
    List<String> more = new ArrayList<>(row);
    more.add(last);
    return more;
  }

  private static Table with(Table printed, List<String> columns, List<List<String>> rows) {
    Set<String> notes = new LinkedHashSet<>(printed.notes());
    notes.add(SAID);
    return new Table(
        printed.name(),
        printed.title(),
        printed.keys(),
        columns,
        List.copyOf(rows),
        printed.source(),
        List.copyOf(notes));
  }
}
