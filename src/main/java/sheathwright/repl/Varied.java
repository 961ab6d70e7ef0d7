package sheathwright.repl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.repl.show.TracedParts;

/**
 * What a variable comes to for several values of others, a row each; every cell is traced, so a
 * workbook works the table out by itself.
 *
 * @param columns the variables that were varied, then what was asked for
 */
record Varied(List<String> columns, List<List<Traced>> rows) {

  /**
   * The table of several runs.
   *
   * @param rows of each run what was varied and what came of it, by name
   */
  static Varied of(List<Map<String, Object>> rows) {
    List<Map<String, Traced>> traced = rows.stream().map(TracedParts::named).toList();
    Set<String> columns = new LinkedHashSet<>();
    traced.forEach(row -> columns.addAll(row.keySet()));
    for (Map<String, Traced> row : traced) {
      if (!row.keySet().containsAll(columns) || columns.size() < rows.get(0).size()) {
        throw new RefusedException(
            "vary takes figures, words, checks and answers; say numbers with their unit, as pct(5) or in(24)");
      }
    }
    return new Varied(
        List.copyOf(columns),
        traced.stream().map(row -> columns.stream().map(row::get).toList()).toList());
  }

  /** As a list whose cells are live. */
  Roll roll() {
    List<Roll.Column<List<Traced>>> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      int place = i;
      cells.add(Roll.column(columns.get(i), row -> row.get(place)));
    }
    return Roll.of("varied_" + String.join("_", columns), "what was varied", rows, cells);
  }

  @Override
  public String toString() {
    return aligned(texts(Shows::text));
  }

  /** A column each instead of a row each; as many side by side as a width holds. */
  String turned(int width) {
    List<List<String>> texts = texts(Shows::brief);
    List<String> blocks = new ArrayList<>();
    int from = 1;
    while (from < texts.size()) {
      int to = texts.size();
      String block = turned(texts, from, to);
      while (to > from + 1 && block.lines().anyMatch(line -> line.length() > width)) {
        to--;
        block = turned(texts, from, to);
      }
      blocks.add(block);
      from = to;
    }
    return String.join("\n\n", blocks);
  }

  private String turned(List<List<String>> texts, int from, int to) {
    List<List<String>> turned = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      int place = i;
      List<String> line = new ArrayList<>(List.of(columns.get(i)));
      texts.subList(from, to).forEach(row -> line.add(row.get(place)));
      turned.add(line);
    }
    return aligned(turned);
  }

  private List<List<String>> texts(Function<Object, String> text) {
    List<List<String>> texts = new ArrayList<>(List.of(columns));
    rows.forEach(row -> texts.add(row.stream().map(text::apply).toList()));
    return texts;
  }

  private static String aligned(List<List<String>> texts) {
    Map<Integer, Integer> widths = new LinkedHashMap<>();
    for (List<String> row : texts) {
      for (int i = 0; i < row.size(); i++) {
        widths.merge(i, row.get(i).length(), Math::max);
      }
    }
    StringBuilder table = new StringBuilder();
    for (List<String> row : texts) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        line.append(row.get(i)).append(" ".repeat(widths.get(i) - row.get(i).length() + 2));
      }
      table.append(line.toString().stripTrailing()).append('\n');
    }
    return table.toString().stripTrailing();
  }
}
