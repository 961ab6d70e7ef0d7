package sheathwright.job.table;

import java.util.Optional;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/** What any table's cell may hold, wherever the table stands. */
public final class CellRules {

  private static final int LONGEST_NUMBER = 60;

  private CellRules() {}

  /** What is said of a text of more characters than may stand there. */
  static Optional<String> tooLong(String text, int longest) {
    return text.length() <= longest
        ? Optional.empty()
        : Optional.of(
            "%s characters are given; at most %s are allowed"
                .formatted(
                    Shown.with(Units.RATIO, text.length()), Shown.with(Units.RATIO, longest)));
  }

  /** What is wrong with a text that stands in a cell. */
  public static Optional<String> wrongWith(String text, int longest) {
    Optional<String> tooLong = tooLong(text, longest);
    if (tooLong.isPresent()) {
      return tooLong;
    }
    return text.codePoints()
        .filter(Printable::isForeign)
        .mapToObj(
            "it holds the character \\u%04x, which nobody can see; type the cell again"::formatted)
        .findFirst();
  }

  /**
   * A number or a word as it stands.
   *
   * @throws RefusedException if it is too long for either
   */
  public static String readable(String cell) {
    tooLong(cell.strip(), LONGEST_NUMBER)
        .ifPresent(
            message -> {
              throw new RefusedException(message);
            });
    return cell;
  }
}
