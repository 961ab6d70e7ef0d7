package sheathwright.life.record;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.QuoteLines;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.price.OfficeFields;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.AgreedSum;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.ItemHours;
import sheathwright.life.bill.Leak;

/** The leak of a job from its tables: what is sold as agreed, what is bought as priced today. */
final class DeckLeak {

  private final Estimate estimate;
  private final Accounts accounts;
  private final Figure<Per<Money, Time>> labor;

  private DeckLeak(Estimate estimate, Accounts accounts) {
    this.estimate = estimate;
    this.accounts = accounts;
    labor = estimate.job().rateBook().fact(OfficeFields.LABOR);
  }

  /** What the work on the deck cost against what it sold for. */
  static Leak of(Estimate estimate, Accounts accounts) {
    DeckLeak leak = new DeckLeak(estimate, accounts);
    return Leak.of(estimate.job().lines(JobTable.LOG), leak.labor, leak.material(), leak.sold());
  }

  /** The direct cost of one of each item without the labor in it. */
  private Map<Item, Figure<Money>> material() {
    Map<Item, Figure<Money>> all = new EnumMap<>(Item.class);
    ItemHours hours = ItemHours.of(estimate.job());
    direct()
        .forEach(
            (item, direct) ->
                hours
                    .each(item)
                    .map(each -> direct.minus(each.times(labor).in(Units.USD)))
                    .ifPresent(bought -> all.put(item, bought)));
    return all;
  }

  private Map<Item, Figure<Money>> direct() {
    Map<Item, Figure<Money>> all = new EnumMap<>(Item.class);
    all.put(Item.SHEET, ofOne(estimate.extraSheet().direct()));
    for (FoundPrice price : estimate.found()) {
      all.put(Item.valueOf(price.unit().name()), ofOne(price.direct()));
    }
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              all.put(Item.SISTER, ofOne(leveling.sisterPrice().direct()));
              all.put(Item.SHIM, ofOne(leveling.shimPrice().direct()));
            });
    return all;
  }

  private static Figure<Money> ofOne(Figure<?> price) {
    return Figure.of(price.value(), Units.USD);
  }

  /** The agreed line, the approved orders, less what comes back. */
  private Map<Item, Figure<Money>> sold() {
    Map<Item, Figure<Money>> all = new EnumMap<>(Item.class);
    for (ItemAccount account : accounts.items()) {
      Item item = account.item();
      Figure<Money> sum = Figure.of(0, Units.USD);
      for (AgreedSum line : accounts.agreement().lines()) {
        if (Optional.of(line.what()).equals(QuoteLines.lineOf(item))) {
          sum = sum.plus(line.amount());
        }
      }
      sum = sum.plus(Figure.of(ordered(item), Units.USD)).minus(account.credit());
      all.put(item, sum);
    }
    return all;
  }

  private double ordered(Item item) {
    return accounts.orders().that(OrderStatus.APPROVED).stream()
        .flatMap(order -> order.lines().stream())
        .filter(line -> line.isOf(item))
        .mapToDouble(line -> line.amount().value())
        .sum();
  }
}
