package sheathwright.life.found;

import java.util.Optional;
import sheathwright.job.life.Item;

/**
 * What one mark leads to, as it stands on a day: a quantity of one item, or none where nothing is
 * charged for it.
 *
 * @param mark its number in marks.csv
 * @param key the place that it lies in, such as {@code A-3-5}; the plane and the mark where the
 *     deck has no places
 * @param action replace, cover, support, relieve, refasten, dry, lift, watch or stop
 * @param reason in a sentence, with what was measured and its limit
 * @param item what is billed; empty for dry, watch and stop
 * @param quantity how many of it, in the item's unit
 * @param on the day it was found, as an ISO date; empty where the table does not say
 * @param isOpened whether it was found with the covering off
 * @param isVoid whether it was taken back
 * @param isTyped whether somebody typed its action, and left it not to the rules
 */
public record Found(
    String mark,
    String key,
    String action,
    String reason,
    Optional<Item> item,
    double quantity,
    String on,
    boolean isOpened,
    boolean isVoid,
    boolean isTyped) {

  /** A mark whose action follows from the rules. */
  public Found(
      String mark,
      String key,
      String action,
      String reason,
      Optional<Item> item,
      double quantity,
      String on,
      boolean isOpened,
      boolean isVoid) {
    this(mark, key, action, reason, item, quantity, on, isOpened, isVoid, false);
  }
}
