package sheathwright.life.record;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.life.Item;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.found.Found;

/** What was found and no order may ask for before both sides have talked, and what to do then. */
public final class Unsettled {

  private Unsettled() {}

  /** A line each: what is beyond the re-open count, and what has no agreed price. */
  public static List<String> lines(NextOrder order) {
    List<String> all = new ArrayList<>();
    for (ItemAccount open : order.priceOpen()) {
      all.add(
          "%s: %s more than was agreed to count before both sides talk again, and no order asks for that; once they have, raise most of the row reopen in agreed.csv, or give none in bill of the marks that are done for nothing"
              .formatted(open.item().label(), open.item().counted(open.open())));
    }
    for (Found found : order.accounts().unpriced()) {
      String word = found.item().map(Item::word).orElse("");
      all.add(
          "mark %s, %s: no price was agreed for %s, and no order asks for it; once there is one, give it a row in agreed.csv, such as %s,%s,25.00, or give none in bill of the mark if it is done for nothing"
              .formatted(
                  found.mark(), found.key(), word, word, found.item().map(Item::unit).orElse("")));
    }
    return all;
  }
}
