package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.JobTable;
import sheathwright.job.life.Item;

/** What must hold of what was agreed, ordered and found at any time. */
final class AccountTies {

  private final Accounts accounts;
  private final List<Order> counted;

  AccountTies(Accounts accounts) {
    this.accounts = accounts;
    counted = accounts.orders().all().stream().filter(Order::isCounted).toList();
  }

  List<Tie> all() {
    List<Tie> all = new ArrayList<>(accounts.agreement().ties());
    all.add(
        none(
            "Everything that was ordered was agreed",
            "ordered_not_agreed",
            counted.stream()
                .flatMap(order -> order.lines().stream())
                .flatMap(line -> line.item().stream())
                .filter(item -> accounts.agreement().item(item).isEmpty())
                .count()));
    List<Condition> sums = new ArrayList<>();
    List<Condition> amounts = new ArrayList<>();
    for (Order order : counted) {
      sums.add(Same.money(order.sum(), order.usd()));
      accounts.items().forEach(item -> amounts.addAll(amounts(order, item)));
    }
    List<Condition> options = new ArrayList<>();
    for (Order order : counted) {
      accounts.options().forEach(option -> options.addAll(amounts(order, option)));
    }
    addAll(
        all,
        "Every order line of an option is its quantity times the option's price, to the cent",
        "option_line_stands_",
        options);
    addAll(all, "The lines of every order add up to its sum", "order_adds_up_", sums);
    addAll(
        all,
        "Every order line is its quantity times the agreed price, to the cent",
        "order_line_stands_",
        amounts);
    List<Condition> marks = new ArrayList<>();
    for (ItemAccount item : accounts.items()) {
      Figure<Ratio> parts = parts(item.item());
      marks.add(Same.quantity(item.beforeByMark(), parts));
      marks.add(Same.quantity(item.byRule(parts), item.before()));
      marks.add(Same.quantity(item.byRule(item.billedByMark()), item.due()));
    }
    if (!PreAgreed.used(accounts).isEmpty()) {
      String what = "Orders approved as pre-agreed stay within what was agreed";
      all.add(
          accounts
              .agreement()
              .preAgreed()
              .map(given -> given.covers(accounts, OrderLine.NONE, OrderLine.NOTHING))
              .map(holds -> new Tie(what, holds))
              .orElseGet(() -> none(what, "pre_agreed_orders", PreAgreed.used(accounts).size())));
    }
    addAll(all, "Every unit on an order has its mark", "ordered_has_mark_", marks);
    return all;
  }

  /** That so many, counted when it was written, are none. */
  static Tie none(String what, String name, long count) {
    Figure<Ratio> number =
        Figure.constant(name, count, Units.RATIO, Source.derived("counted in the tables"));
    return new Tie(what, number.isAtMost(OrderLine.NONE));
  }

  static void addAll(List<Tie> all, String what, String name, List<Condition> conditions) {
    if (!conditions.isEmpty()) {
      all.add(Tie.all(what, name, conditions));
    }
  }

  /** An item may have several lines in an order, whose cents belong together. */
  private static List<Condition> amounts(Order order, ItemAccount item) {
    List<Figure<Money>> amounts =
        order.lines().stream()
            .filter(line -> line.isOf(item.item()))
            .map(OrderLine::amount)
            .toList();
    if (amounts.isEmpty()) {
      return List.of();
    }
    Figure<Money> reckoned = order.quantity(item.item()).times(item.agreed().price()).in(Units.USD);
    return List.of(Same.money(reckoned, OrderLine.together(amounts, OrderLine.NOTHING)));
  }

  private static List<Condition> amounts(Order order, LaterOption option) {
    return order.lines().stream()
        .filter(line -> line.isOfOption(option.name()))
        .map(
            line ->
                Same.money(
                    line.quantity().times(option.each()).in(Units.USD).toCents(), line.amount()))
        .toList();
  }

  /** What orders say that they ask for, mark by mark. */
  private Figure<Ratio> parts(Item item) {
    double sum =
        counted.stream()
            .flatMap(order -> order.lines().stream())
            .filter(line -> line.isOf(item))
            .mapToDouble(line -> line.parts().sum())
            .sum();
    return Figure.constant(
        item.word() + "_ordered_for_marks",
        sum,
        Units.RATIO,
        Source.given(JobTable.ORDER_LINES.file()));
  }
}
