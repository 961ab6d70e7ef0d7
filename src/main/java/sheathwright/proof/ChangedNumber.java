package sheathwright.proof;

import java.util.List;

/**
 * A number that is not what the last release gave for the same arguments, and why.
 *
 * @param version the release that changed it
 * @param function whose
 * @param line of the frozen table in which its arguments stand
 * @param column which result
 * @param was what the release before gave
 * @param now what is given since
 * @param why in a sentence a user can read
 */
public record ChangedNumber(
    String version,
    String function,
    String line,
    String column,
    String was,
    String now,
    String why) {

  private static final String FILE = "proof/changed.csv";

  /** All of them, the newest release's first. */
  public static List<ChangedNumber> all() {
    return ShippedTable.lines(FILE).stream()
        .map(
            line ->
                new ChangedNumber(
                    line.get("version"),
                    line.get("function"),
                    line.get("line"),
                    line.get("column"),
                    line.get("was"),
                    line.get("now"),
                    line.get("why")))
        .toList();
  }
}
