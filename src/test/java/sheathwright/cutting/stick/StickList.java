package sheathwright.cutting.stick;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A named order out of a file of lists, with what is known of its least cost. */
record StickList(String name, StickOrder order, long lower, long best) {

  static final Path OURS = Path.of("src", "test", "resources", "sheathwright", "cutting", "stick");

  /** Lists of several priced lengths, with the costs found by foreign engines. */
  static List<StickList> priced(Path folder) {
    Map<String, String[]> known =
        lines(folder.resolve("optima_domain_1d.csv"))
            .map(line -> line.split(","))
            .collect(Collectors.toMap(line -> line[0], line -> new String[] {line[4], line[5]}));
    return read(folder.resolve("domain_1d.txt"), true, known);
  }

  /** Lists of one length at a cost of 1: published sets, read where they lie. */
  static List<StickList> published(Path folder, String set) {
    Map<String, String[]> known =
        lines(folder.resolve("optima_1d.csv"))
            .map(line -> line.split(","))
            .filter(line -> line[0].equals(set))
            .collect(Collectors.toMap(line -> line[1], line -> new String[] {line[5], line[6]}));
    return read(folder.resolve("1d_" + set + ".txt"), false, known);
  }

  int pieces() {
    return order.pieces().stream().mapToInt(StickPiece::count).sum();
  }

  @Override
  public String toString() {
    return name;
  }

  private static Stream<String> lines(Path file) {
    try {
      return Files.readAllLines(file).stream()
          .filter(line -> !line.isBlank() && !line.startsWith("#"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<StickList> read(Path file, boolean priced, Map<String, String[]> known) {
    List<StickList> lists = new ArrayList<>();
    Iterator<String[]> rows = lines(file).map(line -> line.trim().split("\\s+")).iterator();
    while (rows.hasNext()) {
      String[] head = rows.next();
      List<StockLength> stock = new ArrayList<>();
      if (!priced) {
        stock.add(new StockLength(Long.parseLong(head[1]), 1, StockLength.ANY));
      }
      for (int k = 0; priced && k < Integer.parseInt(head[1]); k++) {
        String[] row = rows.next();
        int available = Integer.parseInt(row[2]);
        stock.add(
            new StockLength(
                Long.parseLong(row[0]),
                Long.parseLong(row[1]),
                available < 0 ? StockLength.ANY : available));
      }
      List<StickPiece> pieces = new ArrayList<>();
      for (int i = 0; i < Integer.parseInt(head[2]); i++) {
        String[] row = rows.next();
        pieces.add(new StickPiece(Long.parseLong(row[0]), Integer.parseInt(row[1])));
      }
      String[] costs = known.get(head[0]);
      lists.add(
          new StickList(
              head[0],
              new StickOrder(stock, pieces, 0, 0),
              Long.parseLong(costs[0]),
              Long.parseLong(costs[1])));
    }
    return lists;
  }
}
