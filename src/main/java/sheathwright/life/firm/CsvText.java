package sheathwright.life.firm;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import sheathwright.job.table.CsvLines;

/** A table that is written anew, as the bytes of its file. */
final class CsvText {

  private CsvText() {}

  static byte[] of(List<String> headings, List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    try {
      CsvLines lines = new CsvLines(text, ',');
      lines.line(headings);
      for (List<String> row : rows) {
        lines.line(row);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // a text takes everything
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
