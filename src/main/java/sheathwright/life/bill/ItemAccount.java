package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.JobTable;
import sheathwright.job.life.Item;
import sheathwright.sheathing.place.BillRule;

/**
 * What was found, counted, ordered and is still to be ordered of one item, mark by mark. The first
 * that were found are those in the price; then come those that are billed, up to the ceiling or to
 * where both sides talk again.
 */
public final class ItemAccount {

  private static final Figure<Ratio> QUARTER = Figure.of(0.25, Units.RATIO);

  private final AgreedItem agreed;
  private final List<Share> shares = new ArrayList<>();
  private final boolean goesByArea;
  private final Figure<Ratio> found;
  private final Figure<Ratio> counted;
  private final Figure<Ratio> due;
  private final Figure<Ratio> before;
  private final Figure<Ratio> now;
  private final Figure<Ratio> open;
  private final Figure<Ratio> uncharged;
  private final Figure<Money> unchargedAmount;
  private final Figure<Money> amount;

  ItemAccount(AgreedItem agreed, Agreement agreement, Orders orders, List<MarkOrder> marks) {
    this.agreed = agreed;
    boolean isSheet = item() == Item.SHEET;
    goesByArea = isSheet && agreement.billRule().filter(BillRule.AREA::equals).isPresent();
    Optional<Figure<Ratio>> reopen = isSheet ? agreement.reopen() : Optional.empty();
    Optional<Figure<Ratio>> sold = lesser(agreed.most(), reopen).map(agreed.included()::max);
    Optional<Figure<Ratio>> allowed =
        reopen.isPresent() ? agreed.most().map(agreed.included()::max) : sold;
    for (MarkOrder mark : marks) {
      shares.add(share(mark, orders, sold, allowed));
    }
    String word = item().word();
    found =
        sum("found", Share::found)
            .minus(sum("declined", Share::declined))
            .as(word + "_found", Units.RATIO);
    counted = agreed.counted(found).as(word + "_counted", Units.RATIO);
    Figure<Ratio> over =
        reopen.map(counted::min).orElse(counted).minus(agreed.included()).max(OrderLine.NONE);
    due = byRule(over).as(word + "_due", Units.RATIO);
    before =
        OrderLine.together(
                orders.all().stream()
                    .filter(Order::isCounted)
                    .flatMap(order -> order.lines().stream())
                    .filter(line -> line.isOf(item()))
                    .map(OrderLine::quantity)
                    .toList(),
                OrderLine.NONE)
            .as(word + "_ordered_before", Units.RATIO);
    now = due.minus(before).as(word + "_ordered_now", Units.RATIO);
    open = sum("open", Share::open).as(word + "_price_open", Units.RATIO);
    uncharged = sum("uncharged", Share::uncharged).as(word + "_uncharged", Units.RATIO);
    unchargedAmount =
        uncharged
            .times(agreed.price())
            .in(Units.USD)
            .toCents()
            .as(word + "_uncharged_usd", Units.USD);
    amount = now.times(agreed.price()).in(Units.USD).toCents().as(word + "_amount_usd", Units.USD);
  }

  private static Optional<Figure<Ratio>> lesser(
      Optional<Figure<Ratio>> one, Optional<Figure<Ratio>> other) {
    return one.isPresent() ? one.map(first -> other.map(first::min).orElse(first)) : other;
  }

  private Share share(
      MarkOrder mark,
      Orders orders,
      Optional<Figure<Ratio>> sold,
      Optional<Figure<Ratio>> allowed) {
    Figure<Ratio> last = shares.isEmpty() ? OrderLine.NONE : shares.get(shares.size() - 1).upTo();
    Figure<Ratio> found = told("found", mark.quantity(), JobTable.MARKS);
    Figure<Ratio> declined =
        told("declined", Math.min(mark.quantity(), mark.declined(orders)), JobTable.ORDER_LINES);
    Figure<Ratio> kept = found.minus(declined).as(name("kept"), Units.RATIO);
    Figure<Ratio> upTo = last.plus(kept).as(name("up_to"), Units.RATIO);
    Figure<Ratio> included = within(last, upTo, Optional.of(agreed.included()), "included");
    Figure<Ratio> sellable = within(last, upTo, sold, "sellable");
    Figure<Ratio> allowable = within(last, upTo, allowed, "allowable");
    Figure<Ratio> billed = sellable.minus(included).as(name("billed"), Units.RATIO);
    Figure<Ratio> before = told("before", ordered(mark, orders), JobTable.ORDER_LINES);
    return new Share(
        mark.mark(),
        mark.key(),
        mark.on(),
        mark.reason(),
        mark.isVoid(),
        mark.isTyped(),
        found,
        declined,
        kept,
        upTo,
        sellable,
        allowable,
        included,
        billed,
        allowable.minus(sellable).as(name("open"), Units.RATIO),
        kept.minus(allowable).as(name("uncharged"), Units.RATIO),
        before,
        billed.minus(before).as(name("now"), Units.RATIO));
  }

  /** How much of what lies between two counts lies below a bound; all of it, if there is none. */
  private Figure<Ratio> within(
      Figure<Ratio> from, Figure<Ratio> upTo, Optional<Figure<Ratio>> bound, String what) {
    return bound
        .map(most -> upTo.min(most).minus(from.min(most)))
        .orElseGet(() -> upTo.minus(from))
        .as(name(what), Units.RATIO);
  }

  private Figure<Ratio> told(String what, double number, JobTable table) {
    return Figure.constant(name(what), number, Units.RATIO, Source.given(table.file()));
  }

  private String name(String what) {
    return item().word() + "_" + what + "_" + (shares.size() + 1);
  }

  private double ordered(MarkOrder mark, Orders orders) {
    return orders.all().stream()
        .filter(Order::isCounted)
        .mapToDouble(order -> order.part(item(), mark.mark()))
        .sum();
  }

  /** Added up when the tables are read: no page of a workbook has the marks as they are counted. */
  private Figure<Ratio> sum(String what, Function<Share, Figure<Ratio>> part) {
    return Figure.constant(
        item().word() + "_marks_" + what,
        shares.stream().mapToDouble(share -> part.apply(share).value()).sum(),
        Units.RATIO,
        Source.derived("counted mark by mark"));
  }

  /** What it is the account of. */
  public Item item() {
    return agreed.item();
  }

  /** What was agreed of it. */
  public AgreedItem agreed() {
    return agreed;
  }

  /** Its marks, as they are counted. */
  public List<Share> shares() {
    return List.copyOf(shares);
  }

  /** All that was found with the covering off and neither taken back nor refused. */
  public Figure<Ratio> found() {
    return found;
  }

  /** The same, up to the ceiling. */
  public Figure<Ratio> counted() {
    return counted;
  }

  /** How much is to be billed over all, beyond what is in the price. */
  public Figure<Ratio> due() {
    return due;
  }

  /** How much earlier orders ask for. */
  public Figure<Ratio> before() {
    return before;
  }

  /** How much the next order asks for. */
  public Figure<Ratio> now() {
    return now;
  }

  /** How much both sides have to talk about before it is billed. */
  public Figure<Ratio> open() {
    return open;
  }

  /** How much was done above the agreed ceiling, at no charge. */
  public Figure<Ratio> uncharged() {
    return uncharged;
  }

  /** What that would come to at the agreed price. */
  public Figure<Money> unchargedAmount() {
    return unchargedAmount;
  }

  /** What the next order comes to for it. */
  public Figure<Money> amount() {
    return amount;
  }

  /** What is talked about would come to at the agreed price; it is in no sum. */
  public Figure<Money> openAmount() {
    return open.times(agreed.price())
        .in(Units.USD)
        .toCents()
        .as(item().word() + "_price_open_usd", Units.USD);
  }

  /** How many of those in the price were not needed. */
  public Figure<Ratio> unused() {
    return agreed
        .included()
        .minus(byRule(found))
        .max(OrderLine.NONE)
        .as(item().word() + "_unused", Units.RATIO);
  }

  /** What comes back for them. */
  public Figure<Money> credit() {
    return unused()
        .times(agreed.credit())
        .in(Units.USD)
        .toCents()
        .as(item().word() + "_credited_usd", Units.USD);
  }

  /** Whether the next order says anything of it. */
  public boolean isAsked() {
    return !Same.isNothing(now.value())
        || shares.stream().anyMatch(share -> !Same.isNothing(share.now().value()));
  }

  /** What a document bills of so much: by area, up to the next quarter. */
  Figure<Ratio> byRule(Figure<Ratio> quantity) {
    return goesByArea ? quantity.roundedUpTo(QUARTER) : quantity;
  }

  /** What orders ask for because of marks that are still there. */
  Figure<Ratio> beforeByMark() {
    return sum("before", Share::before);
  }

  /** What is billed over all, mark by mark. */
  Figure<Ratio> billedByMark() {
    return sum("billed", Share::billed);
  }
}
