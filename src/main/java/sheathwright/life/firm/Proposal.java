package sheathwright.life.firm;

import java.util.List;
import sheathwright.figure.Rounding;
import sheathwright.figure.Shown;

/**
 * What the firm's records say of one rate.
 *
 * @param rate its key, or what it is where the rates have none
 * @param old as the jobs have it; empty where they do not
 * @param proposed in its place; empty where nothing is proposed
 * @param rows that say so
 * @param range that 9 of 10 firms with such records lie in; empty where nothing is proposed
 * @param visit hours that each visit takes besides; empty where that is no question
 * @param reason why nothing is proposed, or what is to be known of it
 */
public record Proposal(
    String rate, String old, String proposed, int rows, String range, String visit, String reason) {

  /** The headings of a table of them. */
  static final List<String> HEADINGS =
      List.of("rate", "old", "new", "rows", "range", "visit_h", "reason");

  /**
   * Standard deviations within which 9 of 10 lie, of a normal distribution: 1.645 in the table of
   * NIST/SEMATECH 1.3.6.7.1, from memory. The variances are taken as known, as the mean takes them.
   */
  static final double NINE_OF_TEN = 1.6448536269514722;

  private static final int DECIMALS = 6;

  /** One that the records say nothing of, and why. */
  static Proposal none(String rate, String old, int rows, String reason) {
    return new Proposal(rate, old, "", rows, "", "", reason);
  }

  /** One that they say something of. */
  static Proposal of(String rate, String old, double proposed, int rows, String range) {
    return new Proposal(rate, old, shown(proposed), rows, range, "", "");
  }

  Proposal visit(double hours) {
    return new Proposal(rate, old, proposed, rows, range, shown(hours), reason);
  }

  Proposal known(String more) {
    return new Proposal(rate, old, proposed, rows, range, visit, more);
  }

  static String range(double least, double most) {
    return shown(least) + " to " + shown(most);
  }

  static String shown(double number) {
    return Shown.plain(Rounding.halfUp(number, DECIMALS));
  }

  /** Whether it proposes anything. */
  public boolean isMade() {
    return !proposed.isEmpty();
  }

  /** Its cells. */
  List<String> cells() {
    return List.of(rate, old, proposed, String.valueOf(rows), range, visit, reason);
  }
}
