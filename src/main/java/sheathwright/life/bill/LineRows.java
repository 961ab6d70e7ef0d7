package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Rounding;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.MarkParts;
import sheathwright.job.life.OrderFields;

/**
 * The rows that freeze one item of a change order: one, or several where its marks do not fit into
 * one cell. Their quantities and amounts add up to the item's to the cent.
 */
final class LineRows {

  /** A cell of text takes 2,000 characters. */
  private static final int LONGEST = 1_900;

  private final String order;
  private final ItemAccount item;

  LineRows(String order, ItemAccount item) {
    this.order = order;
    this.item = item;
  }

  List<Map<String, String>> rows() {
    List<Map<String, String>> rows = new ArrayList<>();
    List<MarkParts> all = parts();
    double quantity = 0;
    double amount = 0;
    for (int i = 0; i < all.size(); i++) {
      boolean isLast = i == all.size() - 1;
      double upTo = isLast ? item.now().value() : quantity + all.get(i).sum();
      double sum =
          isLast ? item.amount().value() : Rounding.halfUp(upTo * item.agreed().price().value(), 2);
      rows.add(
          new Cells()
              .with(OrderFields.ORDER, order)
              .with(AgreedFields.ITEM, item.item().word())
              .with(AgreedFields.UNIT, item.agreed().unit())
              .with(AgreedFields.QUANTITY, Cells.number(upTo - quantity))
              .with(AgreedFields.USD, Cells.money(sum - amount))
              .with(OrderFields.MARKS, all.get(i).text())
              .row());
      quantity = upTo;
      amount = sum;
    }
    return rows;
  }

  /** What changes for each mark, as many marks to a cell as it takes. */
  private List<MarkParts> parts() {
    List<MarkParts> all = new ArrayList<>();
    Map<String, MarkParts.Part> parts = new LinkedHashMap<>();
    for (Share share : item.shares()) {
      double now = share.now().value();
      if (!Same.isNothing(now)) {
        if (!parts.isEmpty() && new MarkParts(parts).text().length() > LONGEST - 80) {
          all.add(new MarkParts(parts));
          parts = new LinkedHashMap<>();
        }
        parts.put(share.mark(), new MarkParts.Part(now, share.isTyped()));
      }
    }
    all.add(new MarkParts(parts));
    return all;
  }
}
