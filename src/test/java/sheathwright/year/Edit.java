package sheathwright.year;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** Changes of a table that change nothing of what it says. */
final class Edit {

  /** Their rows may stand in any order; a payment's and an option's may not. */
  private static final List<String> SORTABLE =
      List.of(
          "job.csv",
          "planes.csv",
          "marks.csv",
          "reports.csv",
          "places.csv",
          "agreed.csv",
          "orders.csv",
          "order_lines.csv",
          "sent.csv",
          "prices.csv",
          "rates.csv");

  private Edit() {}

  /** Sorts one by some column, up or down. */
  static String sorted(Scene scene) {
    Random random = scene.random();
    String file = there(scene);
    Typed table = Typed.of(scene.disk().text(file));
    int column = random.nextInt(table.header().size());
    Comparator<List<String>> order =
        Comparator.comparing(row -> column < row.size() ? row.get(column) : "");
    table.rows().sort(random.nextBoolean() ? order : order.reversed());
    scene.disk().type(file, table.text());
    return file + " is sorted by " + table.header().get(column);
  }

  /** Saves one as some other program does. */
  static String saved(Scene scene) {
    Random random = scene.random();
    String file = there(scene);
    Typed table = Typed.of(scene.disk().text(file));
    String text = table.text();
    switch (random.nextInt(4)) {
      case 0 -> text = "\uFEFF" + text;
      case 1 -> text = text.replace("\n", "\r\n");
      case 2 -> text = "\uFEFF" + table.separatedBy(';').text().replace("\n", "\r\n");
      default -> {
        String blank = "" + table.separator();
        text = text + blank.repeat(table.header().size() - 1) + "\n" + "\n";
      }
    }
    scene.disk().type(file, text);
    return file + " is saved anew";
  }

  private static String there(Scene scene) {
    List<String> all = new ArrayList<>();
    for (String name : SORTABLE) {
      String file = scene.life().folder + "/" + name;
      if (!scene.disk().text(file).isEmpty()) {
        all.add(file);
      }
    }
    return House.any(scene.random(), all);
  }

  /** What was sent and what it comes to, in whatever order. */
  static String sums(String sent) {
    return sent.isEmpty()
        ? ""
        : Typed.of(sent).named().stream()
            .map(
                row -> row.get("document") + " " + Typed.number(row.get("total_usd")).doubleValue())
            .sorted()
            .toList()
            .toString();
  }
}
