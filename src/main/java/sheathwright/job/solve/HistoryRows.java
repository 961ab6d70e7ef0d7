package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.forecast.HistoryFit;
import sheathwright.forecast.House;
import sheathwright.job.life.FirmFields;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
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
    List<Row> rows = reader.rows(file, FirmFields.HISTORY);
    for (Row row : rows) {
      Figure<Ratio> sheets = row.of(FirmFields.SHEETS);
      Figure<Ratio> bad = row.of(FirmFields.BAD);
      if (sheets != null && bad != null && bad.value() > sheets.value()) {
        String message = "%s is given; the deck has %s sheets";
        reader.problem(file, row, FirmFields.BAD, message.formatted(bad, sheets));
      }
    }
    reader.raiseProblems();
    HistoryRows history = new HistoryRows(file, rows);
    List<House> houses = history.houses();
    int bad = houses.stream().mapToInt(House::bad).sum();
    if (houses.size() < HistoryFit.FEWEST || bad == 0) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  file.name(),
                  0,
                  "",
                  "%s; a fit needs %d jobs and a bad sheet among them: until then alpha=0.8 beta=12, a guess and no data"
                      .formatted(
                          houses.size() < HistoryFit.FEWEST
                              ? "it has %d job%s"
                                  .formatted(houses.size(), houses.size() == 1 ? "" : "s")
                              : "it has no bad sheet",
                          HistoryFit.FEWEST))));
    }
    return history;
  }

  List<House> houses() {
    return rows.stream().map(HistoryRows::house).toList();
  }

  /** The houses told apart by what stands in a column; blank cells are a class of their own. */
  Map<String, List<House>> by(String column) {
    int index = file.header().indexOf(column);
    Map<String, List<House>> classes = new LinkedHashMap<>();
    for (Row row : rows) {
      List<String> cells = row.line().cells();
      String name = index < cells.size() ? cells.get(index).strip() : "";
      classes
          .computeIfAbsent(name.isEmpty() ? "not said" : name, each -> new ArrayList<>())
          .add(house(row));
    }
    return classes;
  }

  private static House house(Row row) {
    return new House((int) row.of(FirmFields.SHEETS).value(), (int) row.of(FirmFields.BAD).value());
  }
}
