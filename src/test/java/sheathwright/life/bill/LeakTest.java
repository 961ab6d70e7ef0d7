package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Row;

/**
 * The deck of an invented house with a badly laid addition: direct cost $1,206.60 and billed
 * $1,569.40 of $1,617.94, worked by an independent script.
 */
class LeakTest {

  private static List<Row> log() {
    return Tables.rows(
        "log",
        OrderFields.LOG,
        List.of(
            Tables.row(OrderFields.LOG, "2027-06-01", "sheet", "5", "4.5", "3", "1"),
            Tables.row(OrderFields.LOG, "2027-06-02", "sheet", "4", "3.6", "3", "1"),
            Tables.row(OrderFields.LOG, "2027-06-02", "refasten", "31", "3.72", "2", "1"),
            Tables.row(OrderFields.LOG, "2027-06-02", "relief", "148", "2.4666667", "2", "1"),
            Tables.row(OrderFields.LOG, "2027-06-03", "scab", "8", "2.4", "2", "1"),
            Tables.row(OrderFields.LOG, "2027-06-03", "dry-in", "1", "6", "4", "1")));
  }

  /**
   * A unit's direct cost less its hours at $46; the script counts the sticks of scabs, not nails.
   */
  private static Map<Item, Figure<Money>> material() {
    Map<Item, Figure<Money>> all = new EnumMap<>(Item.class);
    all.put(Item.SHEET, Amounts.usd(87.1235 - 0.90 * 46));
    all.put(Item.REFASTEN, Amounts.usd(5.8438 - 0.12 * 46));
    all.put(Item.SCAB, Amounts.usd(4.10 / 2 * 1.065));
    return all;
  }

  private static Map<Item, Figure<Money>> sold() {
    Map<Item, Figure<Money>> all = new EnumMap<>(Item.class);
    all.put(Item.SHEET, Amounts.usd(3 * 96 + 6 * 117));
    all.put(Item.REFASTEN, Amounts.usd(31 * 8));
    all.put(Item.RELIEF, Amounts.usd(148 * 1.05));
    all.put(Item.SCAB, Amounts.usd(8 * 22));
    return all;
  }

  @Test
  void theLeak_isTheScripts() {
    Leak leak = Leak.of(log(), Amounts.usdPerHour(46), material(), sold());
    assertThat(leak.cost().value()).isCloseTo(1206.60, within(0.01));
    assertThat(leak.sold().value()).isCloseTo(1569.40, within(0.001));
    assertThat(leak.total().value()).isCloseTo(1206.60 - 1569.40, within(0.01));
    assertThat(leak.givenAway(Amounts.pct(18), Amounts.pct(12)).value())
        .isCloseTo(48.54, within(0.01));
    assertThat(leak.others()).containsExactly("dry-in");
  }
}
