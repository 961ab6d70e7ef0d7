package sheathwright.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;

/** A small table that the program carries, each line as its cells by their headings. */
final class ShippedTable {

  private ShippedTable() {}

  static List<Map<String, String>> lines(String path) {
    CsvFile file = Shipped.table(path);
    List<Map<String, String>> lines = new ArrayList<>();
    for (RowSource.Line line : file.lines()) {
      Map<String, String> cells = new LinkedHashMap<>();
      for (int i = 0; i < file.header().size(); i++) {
        cells.put(file.header().get(i), line.cells().get(i).strip());
      }
      lines.add(cells);
    }
    return lines;
  }
}
