package sheathwright.life.record;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.QuoteLines;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Facts;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.AgreedSum;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.ItemHours;
import sheathwright.life.bill.Leak;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.OrderLine;
import sheathwright.life.found.FoundWork;

/** The leak of a job from its tables: what is sold as agreed, what is bought as priced today. */
public final class DeckLeak {

  private final Estimate estimate;
  private final Accounts accounts;
  private final Figure<Per<Money, Time>> labor;

  private DeckLeak(Estimate estimate, Accounts accounts) {
    this.estimate = estimate;
    this.accounts = accounts;
    labor = estimate.job().rateBook().fact(OfficeFields.LABOR);
  }

  /** What the work on the deck cost against what it sold for. */
  public static Leak of(Estimate estimate, Accounts accounts) {
    DeckLeak leak = new DeckLeak(estimate, accounts);
    return Leak.of(estimate.job().lines(JobTable.LOG), leak.labor, leak.material(), leak.sold());
  }

  /** What was given away, at the overhead and the margin that the office reckons with. */
  public static Figure<Money> givenAway(Estimate estimate, Leak leak) {
    Facts rates = estimate.job().rateBook();
    return leak.givenAway(rates.fact(OfficeFields.OVERHEAD), rates.fact(OfficeFields.MARGIN));
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
    all.put(Item.SHEET, ofOne(estimate.extraSheet().direct(), Units.SHEET));
    for (FoundPrice price : estimate.found()) {
      Item item = Item.valueOf(price.unit().name());
      all.put(item, ofOne(price.direct(), FoundWork.unitOf(item)));
    }
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              all.put(Item.SISTER, ofOne(leveling.sisterPrice().direct(), Units.PIECE));
              all.put(Item.SHIM, ofOne(leveling.shimPrice().direct(), Units.PIECE));
            });
    return all;
  }

  private static Figure<Money> ofOne(Figure<?> price, Unit<?> one) {
    return price.times(Figure.of(1, one)).in(Units.USD);
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
      sum = sum.plus(ordered(item)).minus(account.credit());
      all.put(item, sum);
    }
    return all;
  }

  private Figure<Money> ordered(Item item) {
    Figure<Money> sum = Figure.of(0, Units.USD);
    for (Order order : accounts.orders().that(OrderStatus.APPROVED)) {
      for (OrderLine line : order.lines()) {
        sum = line.isOf(item) ? sum.plus(line.amount()) : sum;
      }
    }
    return sum;
  }
}
