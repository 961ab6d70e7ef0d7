package sheathwright.year;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A job's accounts, kept besides by plain adding up of what its tables say. */
record Ledger(Life life) {

  private static final Set<String> COUNTED = Set.of("offered", "approved");

  private List<Map<String, String>> rows(String file) {
    return life.table(file, "none").named();
  }

  /** What became of each change order. */
  private Map<String, String> statuses() {
    Map<String, String> all = new LinkedHashMap<>();
    rows("orders.csv").forEach(row -> all.put(row.get("order"), row.get("status")));
    return all;
  }

  /** Every sum of an order is that of its lines, and each of these its quantity at its price. */
  void ordersAddUp(Scene scene) {
    Map<String, BigDecimal> sums = new TreeMap<>();
    for (Map<String, String> line : rows("order_lines.csv")) {
      BigDecimal usd = Typed.number(line.get("usd"));
      sums.merge(line.get("order"), usd, BigDecimal::add);
      price(line.get("item"))
          .ifPresent(
              price -> {
                BigDecimal reckoned =
                    price
                        .multiply(Typed.number(line.get("quantity")))
                        .setScale(2, RoundingMode.HALF_UP);
                if (reckoned.compareTo(usd) != 0) {
                  throw scene.broken("order line %s should be %s", line, reckoned);
                }
              });
    }
    for (Map<String, String> order : rows("orders.csv")) {
      BigDecimal sum = sums.getOrDefault(order.get("order"), BigDecimal.ZERO);
      if (sum.compareTo(Typed.number(order.get("usd"))) != 0) {
        throw scene.broken("order %s and its lines %s", order, sum);
      }
      boolean isSent =
          rows("sent.csv").stream()
              .anyMatch(
                  sent ->
                      sent.get("document").endsWith("change order " + order.get("order"))
                          && Typed.number(sent.get("total_usd")).compareTo(sum) == 0);
      if (!isSent) {
        throw scene.broken("order %s was not sent as it is", order);
      }
    }
    if (statuses().size() != rows("orders.csv").size()) {
      throw scene.broken("an order is there twice");
    }
  }

  private Optional<BigDecimal> price(String item) {
    return Stream.concat(rows("agreed.csv").stream(), rows("talks.csv").stream())
        .filter(row -> row.get("item").equals(item) && !row.get("usd").isEmpty())
        .map(row -> Typed.number(row.get("usd")))
        .filter(usd -> usd.signum() > 0)
        .findFirst();
  }

  /** No mark is billed for more than it can be, and one that was taken back for nothing. */
  void nothingIsBilledTwice(Scene scene) {
    Map<String, String> statuses = statuses();
    Map<String, BigDecimal> billed = new TreeMap<>();
    for (Map<String, String> line : rows("order_lines.csv")) {
      if (COUNTED.contains(statuses.get(line.get("order")))) {
        for (String part : line.get("marks").split(", ")) {
          int colon = part.lastIndexOf(':');
          if (colon > 0) {
            billed.merge(
                part.substring(0, colon) + " " + line.get("item"),
                Typed.number(part.substring(colon + 1).strip()),
                BigDecimal::add);
          }
        }
      }
    }
    billed.forEach(
        (what, quantity) -> {
          String mark = what.substring(0, what.indexOf(' '));
          if (quantity.compareTo(most(mark, what.substring(what.indexOf(' ') + 1))) > 0
              || quantity.signum() < 0) {
            throw scene.broken("%s is billed as %s", what, quantity);
          }
        });
  }

  /** As much of an item as one mark can ask for. */
  private BigDecimal most(String mark, String item) {
    return switch (item) {
      case "relief" ->
          rows("marks.csv").stream()
              .filter(row -> row.get("mark").equals(mark))
              .map(row -> Typed.number(row.get("joint_ft")))
              .findFirst()
              .orElse(BigDecimal.ZERO);
      case "board", "renail" -> BigDecimal.valueOf(200);
      default -> BigDecimal.ONE;
    };
  }

  /** The last bill is what was agreed, what was approved since, less what was not needed. */
  void invoiceAddsUp(Scene scene) {
    for (Map<String, String> sent : rows("sent.csv")) {
      if (sent.get("document").endsWith(" invoice")) {
        BigDecimal sum = agreed("total").map(row -> Typed.number(row.get("usd"))).orElseThrow();
        for (Map<String, String> order : rows("orders.csv")) {
          if (order.get("status").equals("approved")) {
            sum = sum.add(Typed.number(order.get("usd")));
          }
        }
        BigDecimal back = sum.subtract(Typed.number(sent.get("total_usd")));
        Optional<BigDecimal> credit = credit();
        if (credit.isPresent() ? back.compareTo(credit.get()) != 0 : !mayComeBack(back)) {
          throw scene.broken("%s comes back with the invoice, and not %s", back, credit);
        }
      }
    }
  }

  private Optional<Map<String, String>> agreed(String item) {
    return rows("agreed.csv").stream().filter(row -> row.get("item").equals(item)).findFirst();
  }

  /** Between nothing and all that is in the price. */
  private boolean mayComeBack(BigDecimal back) {
    BigDecimal most =
        agreed("sheet")
            .map(
                row ->
                    Typed.number(row.get("included")).multiply(Typed.number(row.get("credit_usd"))))
            .orElse(BigDecimal.ZERO);
    return back.signum() >= 0 && back.compareTo(most) <= 0;
  }

  /** What comes back; nothing is said where sheets are not counted by places. */
  private Optional<BigDecimal> credit() {
    Optional<Map<String, String>> sheet = agreed("sheet");
    if (sheet.isEmpty()) {
      return Optional.of(BigDecimal.ZERO);
    }
    return new SheetCount(rows("marks.csv"), rows("order_lines.csv"), statuses())
        .places()
        .filter(places -> sheet.get().get("unit").equals("place"))
        .map(
            places ->
                Typed.number(sheet.get().get("included"))
                    .subtract(BigDecimal.valueOf(places))
                    .max(BigDecimal.ZERO)
                    .multiply(Typed.number(sheet.get().get("credit_usd")))
                    .setScale(2, RoundingMode.HALF_UP));
  }

  /** What the text of the invoice adds up to. */
  static BigDecimal sum(String document) {
    return document
        .lines()
        .map(line -> new BigDecimal(line.substring(line.lastIndexOf('=') + 1)))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .setScale(2, RoundingMode.HALF_UP);
  }
}
