package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;

/** What must hold between marks, orders, what was agreed, and the invoice, once all is done. */
final class ReconciliationTies {

  private final Accounts accounts;
  private final Accounts billed;
  private final Invoice invoice;

  ReconciliationTies(Accounts accounts, Invoice invoice) {
    this.accounts = accounts;
    this.billed = invoice.accounts();
    this.invoice = invoice;
  }

  List<Tie> all() {
    List<Tie> all = new ArrayList<>(new AccountTies(accounts).all());
    all.addAll(invoice.ties());
    AccountTies.addAll(
        all, "Every part of every mark went to one place", "mark_went_once_", wentOnce());
    all.add(
        AccountTies.none(
            "No change order waits for an answer",
            "orders_offered",
            accounts.orders().that(OrderStatus.OFFERED).size()));
    all.add(
        AccountTies.none(
            "Nothing is left whose price has to be talked about",
            "prices_open",
            accounts.unpriced().size()
                + accounts.items().stream()
                    .filter(item -> !Same.isNothing(item.open().value()))
                    .count()));
    all.add(
        same("As many marks as the invoice is made from", "marks", marks(accounts), marks(billed)));
    all.add(
        same(
            "As many rows agreed as the invoice is made from",
            "agreed_rows",
            accounts.agreement().rows(),
            billed.agreement().rows()));
    all.add(
        same(
            "As many order lines as the invoice is made from",
            "order_lines",
            lines(accounts),
            lines(billed)));
    AccountTies.addAll(
        all, "Of every item as much was found as the invoice says", "found_as_billed_", found());
    all.add(
        new Tie(
            "The invoice comes to what these tables come to",
            Same.money(Invoice.sum(accounts), invoice.total())));
    return all;
  }

  private List<Condition> wentOnce() {
    return accounts.items().stream()
        .flatMap(item -> item.shares().stream())
        .map(
            share ->
                Same.quantity(
                    share
                        .included()
                        .plus(share.before())
                        .plus(share.open())
                        .plus(share.uncharged())
                        .plus(share.declined()),
                    share.found()))
        .toList();
  }

  private List<Condition> found() {
    List<Condition> all = new ArrayList<>();
    for (Item item : Item.values()) {
      Figure<Ratio> now = found(accounts, item, "now");
      Figure<Ratio> then = found(billed, item, "billed");
      all.add(Same.quantity(now, then));
    }
    return all;
  }

  private static Figure<Ratio> found(Accounts accounts, Item item, String when) {
    double all =
        accounts.found().stream()
            .filter(found -> !found.isVoid() && found.item().filter(item::equals).isPresent())
            .mapToDouble(found -> found.quantity())
            .sum();
    return counted(item.word() + "_of_marks_" + when, all);
  }

  private static Tie same(String what, String name, long now, long then) {
    return new Tie(
        what, Same.quantity(counted(name + "_now", now), counted(name + "_billed", then)));
  }

  private static Figure<Ratio> counted(String name, double number) {
    return Figure.constant(name, number, Units.RATIO, Source.derived("counted in the tables"));
  }

  private static long marks(Accounts accounts) {
    return accounts.found().size();
  }

  private static long lines(Accounts accounts) {
    return accounts.orders().all().stream().mapToLong(order -> order.lines().size()).sum();
  }
}
