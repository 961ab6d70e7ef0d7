package sheathwright.repl.whatif;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.repl.memory.VaryCall;

/**
 * A set of changes as it is typed: {@code "cheap" (waste = 5 %, margin = 10 %)}.
 *
 * @param name what it is called
 * @param changes the values, as they are typed, by the names of variables
 */
record ScenarioCall(String name, Map<String, String> changes) {

  static final String USAGE =
      """
      a scenario is a name and what changes in it:
        scenario "cheap" (waste = 5 %, margin = 10 %)
      scenario alone shows all side by side, scenario order, total those answers.""";

  private static final Pattern SHAPE = Pattern.compile("(?s)\"([^\"]+)\"\\s*\\((.*)\\)");
  private static final Pattern CHANGE = Pattern.compile("(?s)([A-Za-z_]\\w*)\\s*=(?!=)\\s*(.+)");

  /** Whether what follows the word names a set of changes. */
  static boolean is(String about) {
    return about.startsWith("\"");
  }

  static ScenarioCall of(String about) {
    Matcher said = SHAPE.matcher(about);
    if (!said.matches()) {
      throw new RefusedException(USAGE);
    }
    Map<String, String> changes = new LinkedHashMap<>();
    List<String> parts = VaryCall.parts(said.group(2));
    for (String part : parts) {
      Matcher change = CHANGE.matcher(part);
      if (!change.matches()) {
        throw new RefusedException(USAGE);
      }
      changes.put(change.group(1), change.group(2));
    }
    return new ScenarioCall(said.group(1), changes);
  }
}
