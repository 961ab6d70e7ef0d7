package sheathwright.repl.whatif;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;

/**
 * What is sought, as it is typed: {@code order_total = 10000 by margin}.
 *
 * @param asked the answer
 * @param target what it is to come to
 * @param input what is to be found for it
 */
record SeekCall(String asked, String target, String input) {

  static final String USAGE =
      """
      seek takes an answer, what it is to come to, and the typed value to find:
        seek order = 110 sheets by waste
      A plain number is taken in the answer's own unit. Nothing changes by it.""";

  private static final Pattern SHAPE =
      Pattern.compile("([A-Za-z_][\\w.()]*)\\s*=(?!=)\\s*(.+?)\\s+by\\s+([A-Za-z_]\\w*)");

  private static final Pattern WITH_COMMA = Pattern.compile("\\$?\\d{1,3}(?:,\\d{3})+(?:\\D.*)?");

  static SeekCall of(String about) {
    Matcher said = SHAPE.matcher(about);
    if (!said.matches()) {
      throw new RefusedException(USAGE);
    }
    if (WITH_COMMA.matcher(said.group(2)).matches()) {
      throw new RefusedException(
          "%s has a comma; write %s".formatted(said.group(2), said.group(2).replace(",", "")));
    }
    return new SeekCall(said.group(1), said.group(2), said.group(3));
  }
}
