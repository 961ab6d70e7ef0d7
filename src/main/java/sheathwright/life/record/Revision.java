package sheathwright.life.record;

import java.util.ArrayList;
import java.util.List;

/**
 * One issue of a job's estimate.
 *
 * @param number counted from 1
 * @param date of the quote, as the job has it
 * @param total what the homeowner pays, in dollars
 * @param changes what changed since the one before, a line each
 */
public record Revision(int number, String date, double total, List<String> changes) {

  /** The same with at most so many lines of changes, and how many more there are. */
  Revision atMost(int lines) {
    if (changes.size() <= lines) {
      return this;
    }
    List<String> some = new ArrayList<>(changes.subList(0, lines - 1));
    some.add("and %s more".formatted(changes.size() - some.size()));
    return new Revision(number, date, total, some);
  }
}
