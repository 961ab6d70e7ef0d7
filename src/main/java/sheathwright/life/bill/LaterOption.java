package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.MarkParts;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/**
 * An option that was not in what was agreed. Once the owner has chosen it, the next change order
 * asks for it at its own price; if he gives it up again, the next one gives it back.
 *
 * @param name of the option
 * @param what it is
 * @param unit it is counted in
 * @param chosenOn the day; empty while it is not chosen
 * @param due how many are to be billed over all
 * @param before how many earlier orders ask for
 * @param now how many the next order asks for; less than nothing for what is given up
 * @param each the price of one
 * @param amount what the next order comes to for it
 */
public record LaterOption(
    String name,
    String what,
    String unit,
    String chosenOn,
    Figure<Ratio> due,
    Figure<Ratio> before,
    Figure<Ratio> now,
    Figure<Money> each,
    Figure<Money> amount) {

  private static final String PRESET_UNIT = "job";

  /** The options of a job that were not agreed to, chosen since or not. */
  static List<LaterOption> of(List<Row> options, Agreement agreement, Orders orders) {
    List<LaterOption> all = new ArrayList<>();
    for (Row row : options) {
      if (!AgreedFields.isAgreed(row, agreement.options().stream().map(AgreedSum::what).toList())) {
        all.add(of("later_option_" + (all.size() + 1), row, orders));
      }
    }
    return all;
  }

  private static LaterOption of(String cell, Row row, Orders orders) {
    String name = row.of(AgreedFields.OPTION).value();
    String chosenOn = row.read(AgreedFields.CHOSEN_ON).map(Choice::value).orElse("");
    boolean isDue = AgreedFields.isChosen(row) && !isRefused(name, chosenOn, orders);
    Figure<Ratio> due =
        Figure.constant(
            cell + "_due",
            isDue ? row.read(AgreedFields.QUANTITY).map(Figure::value).orElse(1.0) : 0,
            Units.RATIO,
            Source.given(JobTable.OPTIONS.file()));
    Figure<Ratio> before =
        OrderLine.together(
                orders.all().stream()
                    .filter(Order::isCounted)
                    .flatMap(order -> order.lines().stream())
                    .filter(line -> line.isOfOption(name))
                    .map(OrderLine::quantity)
                    .toList(),
                OrderLine.NONE)
            .as(cell + "_ordered_before", Units.RATIO);
    Figure<Ratio> now = due.minus(before).as(cell + "_ordered_now", Units.RATIO);
    Figure<Money> each =
        row.has(AgreedFields.USD)
            ? Agreement.frozen(row, AgreedFields.USD, cell + "_usd")
            : OrderLine.NOTHING;
    return new LaterOption(
        name,
        row.of(AgreedFields.FOR).value(),
        row.read(AgreedFields.UNIT).map(Choice::value).orElse(PRESET_UNIT),
        AgreedFields.isChosen(row) ? chosenOn : "",
        due,
        before,
        now,
        each,
        now.times(each).in(Units.USD).toCents().as(cell + "_amount_usd", Units.USD));
  }

  /** Whether the owner refused an order that asked for it, and has not chosen it anew since. */
  private static boolean isRefused(String name, String chosenOn, Orders orders) {
    return orders.that(OrderStatus.REFUSED).stream()
        .filter(order -> order.lines().stream().anyMatch(line -> line.isOfOption(name)))
        .anyMatch(
            order ->
                chosenOn.isEmpty() || !Moment.read(order.on()).isBefore(Moment.read(chosenOn)));
  }

  /** What it is, as a line of a change order. */
  public String label() {
    return "Chosen: " + what;
  }

  /** The same, where how many stands beside it. */
  public String labelInUnits() {
    return unit.equals(PRESET_UNIT) ? label() : "%s, in %s".formatted(label(), unit);
  }

  /** How many the next order asks for: {@code 1 job}, {@code 40 ft}. */
  public String counted() {
    return now.plain() + " " + unit;
  }

  /** Whether the next order says anything of it. */
  boolean isAsked() {
    return !Same.isNothing(now.value());
  }

  /** Its row of the table {@code order_lines}, by column. */
  Map<String, String> row(String order) {
    return new Cells()
        .with(OrderFields.ORDER, order)
        .with(AgreedFields.ITEM, OrderFields.OPTION_LINE)
        .with(AgreedFields.UNIT, unit)
        .with(AgreedFields.QUANTITY, Cells.number(now.value()))
        .with(AgreedFields.USD, Cells.money(amount.value()))
        .with(
            OrderFields.MARKS,
            new MarkParts(Map.of(name, new MarkParts.Part(now.value(), false))).text())
        .row();
  }
}
