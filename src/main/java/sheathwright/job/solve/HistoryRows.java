package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.forecast.HistoryFit;
import sheathwright.forecast.House;
import sheathwright.job.life.FirmFields;
import sheathwright.job.life.FirmTables;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;

/**
 * The firm's finished houses, as a table of its history has them.
 *
 * @param file the table
 * @param rows its lines
 */
record HistoryRows(CsvFile file, List<Row> rows) {

  /**
   * Every house of a table, enough for a fit.
   *
   * @throws ProblemsException with everything that is wrong with it, or because it is too little
   */
  static HistoryRows of(CsvFile file) {
    TableReader reader = new TableReader();
    ReadTable table = reader.table(file.name(), Optional.of(file), FirmFields.HISTORY, true);
    FirmTables.hold(table);
    reader.raiseProblems();
    HistoryRows history = new HistoryRows(file, table.rows());
    HistoryFit.lack(history.houses())
        .ifPresent(
            lacking -> {
              throw new ProblemsException(List.of(new Problem(file.name(), 0, "", lacking)));
            });
    return history;
  }

  List<House> houses() {
    return rows.stream().map(FirmTables::house).toList();
  }

  /** The houses told apart by what stands in a column; blank cells are a class of their own. */
  Map<String, List<House>> by(String column) {
    ClassColumn by = ClassColumn.of(file, column);
    Map<String, List<House>> classes = new LinkedHashMap<>();
    for (Row row : rows) {
      String name = by.in(row);
      classes
          .computeIfAbsent(name.isEmpty() ? "not said" : name, each -> new ArrayList<>())
          .add(FirmTables.house(row));
    }
    return classes;
  }
}
