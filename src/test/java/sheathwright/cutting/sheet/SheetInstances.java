package sheathwright.cutting.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads lists of sheet orders: name, width, height and number of kinds, then one kind a line. */
final class SheetInstances {

  private SheetInstances() {}

  /** Lines of a resource of this package, without comments. */
  static List<String> resource(String name) throws IOException {
    try (InputStream stream = SheetInstances.class.getResourceAsStream(name)) {
      return withoutComments(new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines());
    }
  }

  /** Lines of a file, without comments. */
  static List<String> file(Path file) throws IOException {
    try (Stream<String> lines = Files.lines(file)) {
      return withoutComments(lines);
    }
  }

  private static List<String> withoutComments(Stream<String> lines) {
    return lines.filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
  }

  static Map<String, SheetOrder> orders(List<String> lines) {
    Map<String, SheetOrder> orders = new LinkedHashMap<>();
    Iterator<String> line = lines.iterator();
    while (line.hasNext()) {
      String[] head = line.next().trim().split("\\s+");
      List<SheetPiece> pieces = new ArrayList<>();
      for (int kind = 0; kind < Integer.parseInt(head[3]); kind++) {
        String[] piece = line.next().trim().split("\\s+");
        pieces.add(
            new SheetPiece(
                Long.parseLong(piece[0]), Long.parseLong(piece[1]), Integer.parseInt(piece[2])));
      }
      orders.put(
          head[0],
          new SheetOrder(Long.parseLong(head[1]), Long.parseLong(head[2]), List.of(), pieces, 0));
    }
    return orders;
  }

  /** Rows of a comma-separated table by the value in one column; cells by their heading. */
  static Map<String, Map<String, String>> table(List<String> lines, String key) {
    List<String> heads = List.of(lines.get(0).split(","));
    Map<String, Map<String, String>> rows = new LinkedHashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      Map<String, String> row = new LinkedHashMap<>();
      for (int at = 0; at < heads.size(); at++) {
        row.put(heads.get(at), cells[at]);
      }
      rows.put(row.get(key), row);
    }
    return rows;
  }
}
