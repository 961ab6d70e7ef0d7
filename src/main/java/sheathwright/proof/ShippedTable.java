package sheathwright.proof;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.table.CsvFile;

/** A small table that the program carries, each line as its cells by their headings. */
final class ShippedTable {

  private ShippedTable() {}

  static List<Map<String, String>> lines(String path) {
    try (InputStream stream = Shipped.file(path).orElseThrow()) {
      CsvFile file = CsvFile.read(stream, path);
      List<Map<String, String>> lines = new ArrayList<>();
      file.lines()
          .forEach(
              line -> {
                Map<String, String> cells = new LinkedHashMap<>();
                for (int i = 0; i < file.header().size(); i++) {
                  cells.put(file.header().get(i), line.cells().get(i).strip());
                }
                lines.add(cells);
              });
      return lines;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
