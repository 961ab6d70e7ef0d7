package sheathwright.job.fill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.catalog.Card;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;

/**
 * A small table with one function filled down it, all of its rows held at once.
 *
 * @param lines how it is filled, a line at a time
 * @param rows one for each line
 * @param problems everything wrong, in the order of the lines
 */
public record FilledTable(FilledLines lines, List<FilledRow> rows, List<Problem> problems) {

  /**
   * Fills a function down a table. Nothing in the table stops the other lines from being filled.
   */
  public static FilledTable of(Card card, CsvFile file) {
    FilledLines lines = FilledLines.of(card, file);
    List<FilledRow> rows = new ArrayList<>();
    lines.forEach(rows::add);
    List<Problem> problems = new ArrayList<>(lines.problems());
    rows.forEach(row -> problems.addAll(row.problems()));
    return new FilledTable(lines, List.copyOf(rows), List.copyOf(problems));
  }

  /** The function. */
  public Card card() {
    return lines.card();
  }

  /** The table it was given. */
  public CsvFile file() {
    return lines.file();
  }
}
