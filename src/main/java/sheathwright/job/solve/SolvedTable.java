package sheathwright.job.solve;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * What a solver made of a whole table.
 *
 * @param header of the answer
 * @param rows of the answer
 * @param summary the answer in one line
 * @param nearMiss what a little less would have saved, in one line; empty if nothing
 * @param beside a second table that was asked for; empty if none was
 */
public record SolvedTable(
    List<String> header,
    List<List<String>> rows,
    String summary,
    Optional<String> nearMiss,
    Optional<Beside> beside) {

  /**
   * A second table that was asked for.
   *
   * @param file where it goes
   */
  public record Beside(String file, SolvedTable table) {}

  SolvedTable(
      List<String> header, List<List<String>> rows, String summary, Optional<String> nearMiss) {
    this(header, rows, summary, nearMiss, Optional.empty());
  }

  /** The same with a second table, if a file is named for it. */
  SolvedTable beside(Optional<String> file, List<String> headings, List<List<String>> lines) {
    return new SolvedTable(
        header,
        rows,
        summary,
        nearMiss,
        file.map(name -> new Beside(name, new SolvedTable(headings, lines, "", Optional.empty()))));
  }

  /** The answer as CSV. */
  public void writeTo(Appendable out) throws IOException {
    CSVPrinter printer =
        new CSVPrinter(out, CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get());
    printer.printRecord(header);
    for (List<String> row : rows) {
      printer.printRecord(row);
    }
    printer.flush();
  }

  /** A plan beside its bound: proven where they meet. */
  static String standing(boolean isProven) {
    return isProven ? "proven" : "open";
  }
}
