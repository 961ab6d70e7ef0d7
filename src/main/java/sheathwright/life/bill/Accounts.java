package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.table.Row;
import sheathwright.life.found.Found;

/**
 * What was agreed, ordered and found, item by item, with what is found besides: marks without a
 * charge, marks of what has no agreed price, marks from before the covering was off.
 */
public final class Accounts {

  private final Agreement agreement;
  private final Orders orders;
  private final List<Found> found;
  private final List<ItemAccount> items;
  private final List<LaterOption> options;

  /**
   * The accounts as they stand.
   *
   * @param options the rows of the table of what the owner decides
   */
  public static Accounts of(
      Agreement agreement, Orders orders, List<Found> found, List<Row> options) {
    return new Accounts(agreement, orders, found, options);
  }

  private Accounts(Agreement agreement, Orders orders, List<Found> found, List<Row> optionRows) {
    options = LaterOption.of(optionRows, agreement, orders);
    this.agreement = agreement;
    this.orders = orders;
    this.found = List.copyOf(found);
    items =
        agreement.items().stream()
            .map(
                item ->
                    new ItemAccount(
                        item, agreement, orders, MarkOrder.of(item.item(), found, orders)))
            .toList();
  }

  /** Of every item that was agreed. */
  public List<ItemAccount> items() {
    return items;
  }

  /** The options that were not agreed to, chosen since or not. */
  public List<LaterOption> options() {
    return options;
  }

  /** What was found and has no agreed price: it has to be talked about before it is billed. */
  public List<Found> unpriced() {
    return found.stream()
        .filter(each -> each.isOpened() && !each.isVoid())
        .filter(each -> each.item().filter(item -> agreement.item(item).isEmpty()).isPresent())
        .toList();
  }

  /** The items of which more was done than is ever billed. */
  public List<ItemAccount> givenAway() {
    return items.stream().filter(item -> !Same.isNothing(item.uncharged().value())).toList();
  }

  /** What was found and costs the owner nothing: dried, watched, stopped, or not billed. */
  public List<Found> uncharged() {
    return found.stream()
        .filter(each -> each.isOpened() && !each.isVoid() && each.item().isEmpty())
        .toList();
  }

  /** What was seen before the covering was off: it made the price and is not billed again. */
  public List<Found> surveyed() {
    return found.stream().filter(each -> !each.isOpened() && !each.isVoid()).toList();
  }

  /** Everything that was found. */
  public List<Found> found() {
    return found;
  }

  /** That everything beyond what was agreed, as it was agreed, is asked for by a change order. */
  public List<Tie> ties() {
    List<Tie> all = new ArrayList<>();
    AccountTies.addAll(
        all,
        "Everything found beyond what was agreed stands in a change order",
        "ordered_as_found_",
        items.stream().map(item -> Same.atMost(item.due(), orders.askedNow(item.item()))).toList());
    AccountTies.addAll(
        all,
        "Every option chosen since the agreement stands in a change order",
        "ordered_as_chosen_",
        options.stream().map(option -> Same.atMost(option.due(), option.before())).toList());
    return all;
  }

  public Agreement agreement() {
    return agreement;
  }

  public Orders orders() {
    return orders;
  }
}
