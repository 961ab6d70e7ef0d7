package sheathwright.life.back;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.job.JobTable;
import sheathwright.life.record.TableText;

/** Rows that are added to a table unless it has them already. */
final class AddedRows {

  private final JobTable table;
  private final SameCells same;
  private final List<Map<String, String>> rows = new ArrayList<>();

  AddedRows(JobTable table) {
    this.table = table;
    this.same = new SameCells(table);
  }

  /** These and one more, each cell by its column. */
  void add(Map<String, String> row) {
    row.values().removeIf(String::isEmpty);
    rows.add(row);
  }

  /** The columns of all of them. */
  Set<String> columns() {
    Set<String> columns = new LinkedHashSet<>();
    rows.forEach(row -> columns.addAll(row.keySet()));
    return columns;
  }

  /**
   * A table with the rows that it has not yet; none where it has all.
   *
   * @param said takes a line for each row that is new
   */
  Optional<TableText> onto(TableText text, List<String> said) {
    TableText longer = text;
    List<Map<String, String>> there = new ArrayList<>(same.rows(text.parsed()));
    for (Map<String, String> row : rows) {
      if (there.stream().noneMatch(other -> isIn(row, other))) {
        for (String column : row.keySet()) {
          longer = longer.withColumn(column);
        }
        longer = longer.withRow(row);
        there.add(row);
        said.add(table.file() + ": new (" + String.join(", ", row.values()) + ")");
      }
    }
    return longer == text ? Optional.empty() : Optional.of(longer);
  }

  /** Whether a row of the table says all of this one; it may say more. */
  private boolean isIn(Map<String, String> row, Map<String, String> other) {
    return row.entrySet().stream()
        .allMatch(
            cell ->
                same.isSame(
                    row, cell.getKey(), cell.getValue(), other.getOrDefault(cell.getKey(), "")));
  }
}
