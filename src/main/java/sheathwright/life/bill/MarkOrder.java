package sheathwright.life.bill;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;
import sheathwright.life.found.Found;

/**
 * Everything that one mark asks of one item, in the order in which marks are counted: by the day,
 * then by the mark. Days that nobody said come last.
 *
 * @param mark its number; the place, where no mark but the leveling asks for it
 * @param all that it leads to: a mark may reach into several places
 */
record MarkOrder(String mark, List<Found> all) {

  private static final Comparator<MarkOrder> COUNTED =
      Comparator.<MarkOrder, Boolean>comparing(order -> order.on().isEmpty())
          .thenComparing(MarkOrder::on)
          .thenComparing(order -> !order.isNumbered())
          .thenComparing(order -> order.isNumbered() ? order.mark.length() : 0)
          .thenComparing(MarkOrder::mark);

  /** The marks of what was found, as they are counted. */
  static List<MarkOrder> of(List<Found> found) {
    Map<String, List<Found>> byMark = new LinkedHashMap<>();
    for (Found each : found) {
      byMark.computeIfAbsent(nameOf(each), mark -> new ArrayList<>()).add(each);
    }
    return byMark.entrySet().stream()
        .map(entry -> new MarkOrder(entry.getKey(), List.copyOf(entry.getValue())))
        .sorted(COUNTED)
        .toList();
  }

  static String nameOf(Found found) {
    return found.mark().isEmpty() ? found.key() : found.mark();
  }

  private boolean isNumbered() {
    return mark.matches("[1-9][0-9]{0,17}");
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

  /**
   * How much of it the owner refused: what a refused order asks for it, unless a later order that
   * was not refused asks for it again, or its action was typed anew since. It was, if it is typed
   * and was not when that order was written, or if it is typed and of a later day.
   */
  double declined(Item item, Orders orders) {
    double declined = 0;
    for (Order order : orders.all()) {
      double part = order.part(item, mark);
      if (part > 0 && order.isCounted()) {
        declined = 0;
      } else if (part > 0 && order.status() == OrderStatus.REFUSED && !isTypedAnew(item, order)) {
        declined += part;
      }
    }
    return declined;
  }

  private boolean isTypedAnew(Item item, Order order) {
    return isTyped() && (!order.wasTyped(item, mark) || on().compareTo(order.on()) > 0);
  }

  boolean isTyped() {
    return all.stream().anyMatch(Found::isTyped);
  }

  /** How much it asks for; nothing once it was taken back. */
  double quantity() {
    return Same.told(
        all.stream().filter(found -> !found.isVoid()).mapToDouble(Found::quantity).sum());
  }
}
