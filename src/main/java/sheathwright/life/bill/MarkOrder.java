package sheathwright.life.bill;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.NaturalOrder;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;
import sheathwright.life.found.Found;

/**
 * Everything that one mark asks of one item, in the order in which marks are counted: by the day,
 * then by the mark. Days that nobody said come last. A mark that an order asks for stays, even if
 * it asks for nothing any more: it was taken back, or it leads to something else now.
 *
 * @param item what it asks for
 * @param mark its number; the place, where no mark but the leveling asks for it
 * @param all that it leads to: a mark may reach into several places
 */
record MarkOrder(Item item, String mark, List<Found> all) {

  private static final Comparator<MarkOrder> COUNTED =
      Comparator.<MarkOrder, Boolean>comparing(order -> order.on().isEmpty())
          .thenComparing(MarkOrder::on)
          .thenComparing(MarkOrder::mark, NaturalOrder.OF_NAMES);

  /** The marks that ask for an item or that orders ask for, as they are counted. */
  static List<MarkOrder> of(Item item, List<Found> found, Orders orders) {
    Map<String, List<Found>> byMark = new LinkedHashMap<>();
    for (Found each : found) {
      String mark = nameOf(each);
      if (isOf(each, item) || orders.all().stream().anyMatch(order -> order.names(item, mark))) {
        byMark.computeIfAbsent(mark, any -> new ArrayList<>()).add(each);
      }
    }
    return byMark.entrySet().stream()
        .map(entry -> new MarkOrder(item, entry.getKey(), List.copyOf(entry.getValue())))
        .sorted(COUNTED)
        .toList();
  }

  private static boolean isOf(Found found, Item item) {
    return found.isOpened() && found.item().filter(item::equals).isPresent();
  }

  static String nameOf(Found found) {
    return found.mark().isEmpty() ? found.key() : found.mark();
  }

  String on() {
    return all.stream()
        .map(Found::on)
        .filter(on -> !on.isEmpty())
        .min(Comparator.naturalOrder())
        .orElse("");
  }

  String key() {
    return all.stream().map(Found::key).distinct().collect(joining(", "));
  }

  String reason() {
    return all.stream().map(Found::reason).distinct().collect(joining("; "));
  }

  boolean isVoid() {
    return all.stream().allMatch(Found::isVoid);
  }

  /** How much of it the owner refused, and nobody decided anew since. */
  double declined(Orders orders) {
    return orders.that(OrderStatus.REFUSED).stream()
        .filter(order -> !isTypedAnew(order, orders.after(order)))
        .mapToDouble(order -> Math.max(0, order.part(item, mark)))
        .sum();
  }

  /**
   * Whether its action was typed anew after an order was written: it was not typed then and is now,
   * or was when a later order asked for it; or it was typed already, and is of a later day.
   */
  private boolean isTypedAnew(Order order, List<Order> later) {
    return order.wasTyped(item, mark)
        ? isTyped() && on().compareTo(order.on()) > 0
        : isTyped() || later.stream().anyMatch(this::isTypedIn);
  }

  private boolean isTypedIn(Order order) {
    return order.isCounted() && order.part(item, mark) > 0 && order.wasTyped(item, mark);
  }

  boolean isTyped() {
    return all.stream().anyMatch(Found::isTyped);
  }

  /** How much it asks for; nothing once it was taken back. */
  double quantity() {
    return Same.told(
        all.stream()
            .filter(found -> isOf(found, item) && !found.isVoid())
            .mapToDouble(Found::quantity)
            .sum());
  }
}
