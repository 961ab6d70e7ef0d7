package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import sheathwright.job.life.MarkParts;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.ProblemsException;

/** Tables of agreement and orders that somebody edited by hand. */
class LifeTableProblemsTest {

  private static void assertSaid(Consumer<Tables> spoil, String message) {
    Tables tables = GableOrderTest.gable("place");
    tables.order("2027-06-02", "approved");
    spoil.accept(tables);
    assertThatThrownBy(tables::next)
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(message);
  }

  @Test
  void whatCannotBeAgreed_isSaidWithTheNearest() {
    assertSaid(
        tables -> tables.agreed.get(1).put("item", "refastn"),
        "agreed.csv, line 3, column item: \"refastn\" is not known (did you mean refasten?)");
    assertSaid(
        tables -> tables.agreed.get(1).put("item", "sheet"),
        "agreed.csv, line 3, column item: \"sheet\" appears twice");
    assertSaid(
        tables -> tables.agreed.get(0).put("unit", "piece"),
        "agreed.csv, line 2, column unit: \"piece\" is given; a sheet is counted by one of place, half, area");
    assertSaid(
        tables -> tables.agreed.remove(6),
        "agreed.csv: it has no row \"total\"; agree writes this table");
  }

  @Test
  void anApproval_saysByWhomHowAndWhen() {
    for (String column : Map.of("approved_by", 0, "approved_how", 0, "approved_on", 0).keySet()) {
      assertSaid(
          tables -> tables.orders.get(0).remove(column),
          "orders.csv, line 2, column %s: it is blank, and the order is approved"
              .formatted(column));
    }
  }

  @Test
  void aLine_belongsToAnOrderAndNamesItsMarks() {
    assertSaid(
        tables -> tables.orderLines.get(0).put("order", "07"),
        "order_lines.csv, line 2, column order: \"07\" is no order of orders.csv; there are: 01");
    assertSaid(
        tables -> tables.orderLines.get(0).put("item", "panel"),
        "order_lines.csv, line 2, column item: \"panel\" is not an item");
    assertSaid(
        tables -> tables.orderLines.get(0).put("marks", "4 and 5"),
        "order_lines.csv, line 2, column marks: \"4 and 5\" is given; each mark says how much of the line is for it, such as \"4: 1, 5: 0.5\"");
    assertSaid(
        tables -> tables.orderLines.get(0).put("marks", "4: 1, 4: 1"), "mark 4 stands there twice");
  }

  @Test
  void marks_areReadAsTheyAreWritten() {
    for (String text :
        new String[] {"4: 1", "a b: 0.5, 7: -1 typed", "A-3-5: 12.25", "x:y: 2, z, w: 3"}) {
      assertThat(MarkParts.read(text).text()).isEqualTo(text);
    }
  }

  /** Three hundred marks do not fit into one cell of 2,000 characters. */
  @Test
  void manyMarks_goOverSeveralLines() {
    Tables tables = GableOrderTest.gable("place");
    for (int i = 100; i < 400; i++) {
      tables.mark(String.valueOf(i), "B-1-" + i, sheathwright.job.life.Item.RELIEF, 1.37);
    }
    double sum = tables.order("2027-06-02", "approved").sum().value();
    assertThat(tables.orderLines).hasSize(4);
    assertThat(tables.orderLines.get(2).get("marks")).doesNotContain("1.369");
    Orders orders = tables.orders();
    assertThat(orders.that(OrderStatus.APPROVED).get(0).sum().value()).isEqualTo(sum);
    assertThat(Tables.broken(tables.next().ties())).isEmpty();
    assertThat(tables.next().isEmpty()).isTrue();
  }
}
