package sheathwright.job.solve;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Limits;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvLines;

/**
 * What a solver made of a whole table.
 *
 * @param header of the answer
 * @param rows of the answer
 * @param summary the answer in one line
 * @param nearMiss what a little less would have saved, in one line; empty if nothing
 * @param beside a second table that was asked for; empty if none was
 * @param words the headings under which words stand, not numbers
 */
public record SolvedTable(
    List<String> header,
    List<List<String>> rows,
    String summary,
    Optional<String> nearMiss,
    Optional<Beside> beside,
    Set<String> words) {

  /**
   * A second table that was asked for.
   *
   * @param file where it goes
   */
  public record Beside(String file, SolvedTable table) {}

  SolvedTable(
      List<String> header,
      List<List<String>> rows,
      String summary,
      Optional<String> nearMiss,
      Set<String> words) {
    this(header, rows, summary, nearMiss, Optional.empty(), words);
  }

  /** The same with a second table, if a file is named for it. */
  SolvedTable beside(Optional<String> file, List<String> headings, List<List<String>> lines) {
    return new SolvedTable(
        header,
        rows,
        summary,
        nearMiss,
        file.map(
            name ->
                new Beside(name, new SolvedTable(headings, lines, "", Optional.empty(), Set.of()))),
        words);
  }

  /** The answer as CSV. */
  public void writeTo(Appendable out) throws IOException {
    CsvLines lines = new CsvLines(out, ',');
    lines.line(header);
    for (List<String> row : rows) {
      lines.line(row);
    }
    lines.flush();
  }

  /** The rows, each by its headings: words, numbers, and nothing for what is blank. */
  public List<Map<String, Object>> named() {
    return rows.stream().map(this::named).toList();
  }

  private Map<String, Object> named(List<String> row) {
    Map<String, Object> named = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String text = row.get(i).strip();
      named.put(header.get(i), text.isEmpty() ? null : value(header.get(i), text));
    }
    return named;
  }

  /** What a cell holds; a length may be as it was typed, in feet, inches and fractions. */
  private Object value(String heading, String text) {
    if (words.contains(heading)) {
      return text;
    }
    double number = new TypedCell(heading, text).number(Units.endingOf(heading), Limits.NONE);
    return new BigDecimal(Shown.plain(number));
  }

  /** A plan beside its bound: proven where they meet. */
  static String standing(boolean isProven) {
    return isProven ? "proven" : "open";
  }
}
