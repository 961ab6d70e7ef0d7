package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.OrderStatus;

/**
 * The change order that would be written now: of each item what is due beyond the agreed price,
 * less what earlier orders ask for, at the agreed prices.
 */
public final class NextOrder {

  private final Accounts accounts;
  private final List<ItemAccount> asked;
  private final List<LaterOption> chosen;
  private final Figure<Money> sum;
  private final Figure<Money> newTotal;
  private final Optional<Figure<Ratio>> days;

  /**
   * The order that follows from the tables as they stand.
   *
   * @param day of the crew; without it no days are said
   * @param hours of the office's rates; where one is missing no days are said
   */
  public static NextOrder of(Accounts accounts, Optional<CrewDay> day, ItemHours hours) {
    return new NextOrder(accounts, day, hours);
  }

  private NextOrder(Accounts accounts, Optional<CrewDay> day, ItemHours hours) {
    this.accounts = accounts;
    asked = accounts.items().stream().filter(ItemAccount::isAsked).toList();
    chosen = accounts.options().stream().filter(LaterOption::isAsked).toList();
    sum =
        OrderLine.together(
                Stream.concat(
                        asked.stream().map(ItemAccount::amount),
                        chosen.stream().map(LaterOption::amount))
                    .toList(),
                OrderLine.NOTHING)
            .toCents()
            .as("change_usd", Units.USD);
    newTotal = orderedSoFar(Order::sum).plus(sum).toCents().as("new_total_usd", Units.USD);
    days = day.filter(any -> chosen.isEmpty()).flatMap(crew -> hours.of(asked).map(crew::days));
  }

  /** What was agreed, with every order that is neither refused nor withdrawn. */
  private Figure<Money> orderedSoFar(Function<Order, Figure<Money>> amount) {
    Figure<Money> all = accounts.agreement().total();
    for (Order order : accounts.orders().all()) {
      all = order.isCounted() ? all.plus(amount.apply(order)) : all;
    }
    return all;
  }

  /** Its number: one more than the greatest so far. */
  public String number() {
    int last =
        accounts.orders().all().stream()
            .map(Order::number)
            .filter(number -> number.matches("[0-9]{1,6}"))
            .mapToInt(Integer::parseInt)
            .max()
            .orElse(0);
    return Shown.text("%02d", last + 1);
  }

  /** The items that it asks for, or for which it gives something back. */
  public List<ItemAccount> asked() {
    return asked;
  }

  /** The options chosen since the agreement that it asks for, or that were given up again. */
  public List<LaterOption> chosen() {
    return chosen;
  }

  /** Its sum once more, from quantities and prices. */
  private Figure<Money> reckoned() {
    Figure<Money> all = OrderLine.NOTHING;
    for (ItemAccount item : asked) {
      all = all.plus(item.now().times(item.agreed().price()).in(Units.USD).toCents());
    }
    for (LaterOption option : chosen) {
      all = all.plus(option.now().times(option.each()).in(Units.USD).toCents());
    }
    return all;
  }

  /** Everything that it was worked out from. */
  public Accounts accounts() {
    return accounts;
  }

  /** Whether there is nothing to ask for. */
  public boolean isEmpty() {
    return asked.isEmpty() && chosen.isEmpty();
  }

  /** What it comes to. */
  public Figure<Money> sum() {
    return sum;
  }

  /** What all of it comes to then. */
  public Figure<Money> newTotal() {
    return newTotal;
  }

  /** How many days it takes; nothing where the crew or any of its hours are not known. */
  public Optional<Figure<Ratio>> days() {
    return days;
  }

  /** The items of which more was found than was agreed to count before both sides talk again. */
  public List<ItemAccount> priceOpen() {
    return accounts.items().stream().filter(item -> !Same.isNothing(item.open().value())).toList();
  }

  /** How much of an item may still be billed below its ceiling; nothing if none was agreed. */
  public Optional<Figure<Ratio>> leftBelowCeiling(Item of) {
    String name = of == Item.SHEET ? "sheets" : of.word();
    return accounts.items().stream()
        .filter(item -> item.item() == of && item.agreed().most().isPresent())
        .findFirst()
        .map(
            item ->
                item.agreed()
                    .most()
                    .orElseThrow()
                    .minus(item.counted())
                    .as(name + "_left_below_ceiling", Units.RATIO));
  }

  /** Whether it may be done before anybody says yes; nothing if the agreement does not say so. */
  public Optional<Condition> isPreAgreed() {
    Figure<Ratio> sheets =
        asked.stream()
            .filter(item -> item.item() == Item.SHEET)
            .map(ItemAccount::now)
            .findFirst()
            .orElse(OrderLine.NONE);
    return accounts.agreement().preAgreed().map(given -> given.covers(accounts, sheets, sum));
  }

  /** What must hold before it is written. */
  public List<Tie> ties() {
    List<Tie> all = new ArrayList<>(new AccountTies(accounts).all());
    all.add(
        new Tie(
            "What was agreed and all orders make the new total",
            Same.money(newTotal, orderedSoFar(Order::usd).plus(reckoned()))));
    return all;
  }

  /**
   * Its row of the table {@code orders}, by column.
   *
   * @param on the day on which it is written
   */
  public Map<String, String> row(String on) {
    return new Cells()
        .with(OrderFields.ORDER, number())
        .with(OrderFields.ON, on)
        .withMoney(AgreedFields.USD, sum)
        .with(OrderFields.DAYS, days)
        .with(OrderFields.STATUS, OrderStatus.OFFERED.word())
        .row();
  }

  /** Its rows of the table {@code order_lines}, by column. */
  public List<Map<String, String>> lineRows() {
    return Stream.concat(
            asked.stream().flatMap(item -> new LineRows(number(), item).rows().stream()),
            chosen.stream().map(option -> option.row(number())))
        .toList();
  }
}
