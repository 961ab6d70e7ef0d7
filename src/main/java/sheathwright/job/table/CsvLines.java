package sheathwright.job.table;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table written line by line. A spreadsheet program that opens it would work out a text that
 * begins as a formula does: such a text gets an apostrophe before it, which {@link CsvFile} takes
 * away again. Numbers stay as they are.
 */
public final class CsvLines {

  private static final String FIRST_OF_A_FORMULA = "=+-@\t\r";
  private static final char APOSTROPHE = '\'';

  /** What begins with a sign and has no letter but an exponent's works nothing out. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-](?:[\\d.,/'\" %$+-]*|[\\d.]+[eE][+-]?\\d+)");

  private final CSVPrinter printer;

  /**
   * A table that is begun.
   *
   * @param separator what stands between its cells
   */
  public CsvLines(Appendable out, char separator) throws IOException {
    printer = new CSVPrinter(out, format(separator));
  }

  /** One line more. */
  public void line(List<String> cells) throws IOException {
    printer.printRecord(cells.stream().map(CsvLines::written));
  }

  /** Hands on all that is written so far. */
  public void flush() throws IOException {
    printer.flush();
  }

  /** One line without its end. */
  public static String line(List<String> cells, char separator) {
    return format(separator).format(cells.stream().map(CsvLines::written).toArray());
  }

  private static CSVFormat format(char separator) {
    return CSVFormat.DEFAULT.builder().setDelimiter(separator).setRecordSeparator('\n').get();
  }

  private static String written(String cell) {
    return isFormula(cell) ? APOSTROPHE + cell : cell;
  }

  /** A cell as it was meant by whoever wrote it. */
  static String meant(String cell) {
    boolean isMarked = cell.length() > 1 && cell.charAt(0) == APOSTROPHE;
    return isMarked && isFormula(cell.substring(1)) ? cell.substring(1) : cell;
  }

  private static boolean isFormula(String cell) {
    return !cell.isEmpty()
        && FIRST_OF_A_FORMULA.indexOf(cell.charAt(0)) >= 0
        && !NUMBER.matcher(cell).matches();
  }
}
