package sheathwright.life.record;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.life.Item;
import sheathwright.job.life.TalkFields;
import sheathwright.job.table.Field;
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
          "%s: %s more than was agreed to count before both sides talk again, and no order asks for that; once they have, say so in talks.csv, such as %s, or give none in bill of the marks that are done for nothing"
              .formatted(
                  open.item().label(),
                  open.item().counted(open.open()),
                  talk(TalkFields.REOPEN, open.counted().plain(), "")));
    }
    for (Found found : order.accounts().unpriced()) {
      String word = found.item().map(Item::word).orElse("");
      all.add(
          "mark %s, %s: no price was agreed for %s, and no order asks for it; once there is one, say so in talks.csv, such as %s, or give none in bill of the mark if it is done for nothing"
              .formatted(found.mark(), found.key(), word, talk(word, "", "25.00")));
    }
    return all;
  }

  /** A line of the table of talks, as it is to be typed below its heading. */
  private static String talk(String item, String most, String usd) {
    return "\"%s,%s,%s,WHO,signed,DATE\" below the heading %s"
        .formatted(
            item, most, usd, TalkFields.TALKS.stream().map(Field::name).collect(joining(",")));
  }
}
