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
 */
public record SolvedTable(
    List<String> header, List<List<String>> rows, String summary, Optional<String> nearMiss) {

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
