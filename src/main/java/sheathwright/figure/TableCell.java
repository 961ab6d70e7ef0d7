package sheathwright.figure;

/**
 * Where a value stands in a user's table.
 *
 * @param table the file's name
 * @param line counted from 1, the heading included
 * @param column as headed
 * @param item what the value is called there: its column, or the key of a two-column table
 */
public record TableCell(String table, long line, String column, String item) {

  /** The file and the line, as a source says them: {@code job.csv, line 12}. */
  public String inWords() {
    return table + ", line " + line;
  }
}
