package sheathwright.life.firm;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table that is written anew, as the bytes of its file. */
final class CsvText {

  private CsvText() {}

  static byte[] of(List<String> headings, List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer =
        new CSVPrinter(text, CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get())) {
      printer.printRecord(headings);
      for (List<String> row : rows) {
        printer.printRecord(row);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // a text takes everything
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
