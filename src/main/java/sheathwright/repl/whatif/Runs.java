package sheathwright.repl.whatif;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Runs lines anew for changes that the session does not take over. */
public interface Runs {

  /**
   * What comes of each set of changes.
   *
   * @param changes of each run the values, as they are typed, by the names of variables
   * @param asked the variables that are asked for
   * @return of each run what was changed and what came of it, by name
   * @throws sheathwright.figure.RefusedException if a run has no answer
   */
  List<Map<String, Object>> of(List<Map<String, String>> changes, Set<String> asked);
}
