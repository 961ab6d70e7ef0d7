package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sheathwright.figure.RefusedException;
import sheathwright.job.life.Item;
import sheathwright.job.table.ProblemsException;

/** Whatever line is lost after the invoice was made, something no longer holds. */
class ReconciliationTest {

  /** A closed job that has every fate: split, refused, taken back, above nothing, stopped. */
  private static Tables closed() {
    Tables tables = GableOrderTest.gable("half");
    tables.agreed("scab", "piece", "22.00", "", "", "", "A scab of 48 in");
    tables.agreed("option-1", "", "0.00", "1", "", "", "Plane A is left as it is");
    tables.order("2027-06-02", "approved");
    tables.mark("16", "B-3-1", Item.SHEET, 1, "2027-06-03");
    tables.order("2027-06-03", "refused");
    tables.voidMark(4);
    tables.order("2027-06-04", "approved");
    return tables;
  }

  private static List<String> broken(Tables tables, Invoice invoice) {
    try {
      return Tables.broken(Reconciliation.of(tables.accounts(), invoice).ties());
    } catch (ProblemsException | RefusedException said) {
      return List.of(said.getMessage());
    }
  }

  @Test
  void aClosedJob_ties() {
    Tables tables = closed();
    assertThat(broken(tables, tables.invoice())).isEmpty();
    assertThat(Reconciliation.of(tables.accounts(), tables.invoice()).parts())
        .extracting(Reconciliation.Part::fate)
        .contains(Fate.INCLUDED, Fate.ORDERED, Fate.NO_CHARGE, Fate.DECLINED, Fate.VOID, Fate.STOP);
  }

  /** Nothing is counted for it, and it went somewhere all the same. */
  @Test
  void aMarkThatIsCountedWithAnother_standsThereToo() {
    Tables tables = closed();
    tables.mark("17", "A-3-1", Item.RELIEF, 0, "2027-06-01");
    assertThat(broken(tables, tables.invoice())).isEmpty();
    assertThat(Reconciliation.of(tables.accounts(), tables.invoice()).parts())
        .filteredOn(part -> part.mark().equals("17"))
        .singleElement()
        .satisfies(
            part -> {
              assertThat(part.fate()).isEqualTo(Fate.NO_CHARGE);
              assertThat(part.where()).isEqualTo("counted with another mark");
              assertThat(part.quantity().value()).isZero();
            });
  }

  @TestFactory
  Stream<DynamicTest> anyLineThatIsLost_isMissed() {
    return Stream.of(
            lost("mark", tables -> tables.marks),
            lost("order line", tables -> tables.orderLines),
            lost("order", tables -> tables.orders),
            lost("agreed row", tables -> tables.agreed))
        .flatMap(tests -> tests);
  }

  private static Stream<DynamicTest> lost(String what, Function<Tables, List<?>> list) {
    return IntStream.range(0, list.apply(closed()).size())
        .mapToObj(
            i ->
                DynamicTest.dynamicTest(
                    what + " " + (i + 1),
                    () -> {
                      Tables tables = closed();
                      Invoice invoice = tables.invoice();
                      list.apply(tables).remove(i);
                      assertThat(broken(tables, invoice)).isNotEmpty();
                    }));
  }

  /** Even without an invoice to hold the tables against, whatever is billed is missed. */
  @TestFactory
  Stream<DynamicTest> anyBilledLineThatIsLost_isMissedInTheTablesAlone() {
    return Stream.of(
            lostAlone("mark", tables -> tables.marks, 12),
            lostAlone("order line", tables -> tables.orderLines, 3),
            lostAlone("agreed row", tables -> tables.agreed, 10))
        .flatMap(tests -> tests);
  }

  private static Stream<DynamicTest> lostAlone(
      String what, Function<Tables, List<?>> list, int billed) {
    return IntStream.range(0, billed)
        .mapToObj(
            i ->
                DynamicTest.dynamicTest(
                    what + " " + (i + 1),
                    () -> {
                      Tables tables = GableOrderTest.gable("place");
                      tables.marks.removeIf(mark -> mark.item().isEmpty());
                      tables.order("2027-06-02", "approved");
                      list.apply(tables).remove(i);
                      List<String> broken;
                      try {
                        broken = broken(tables, tables.invoice());
                      } catch (ProblemsException said) {
                        broken = List.of(said.getMessage());
                      }
                      assertThat(broken).isNotEmpty();
                    }));
  }

  @Test
  void anAmountThatIsOverwritten_isMissed() {
    for (String column : List.of("quantity", "usd")) {
      Tables tables = closed();
      Invoice invoice = tables.invoice();
      tables.orderLines.get(0).put(column, "9");
      assertThat(broken(tables, invoice)).as(column).isNotEmpty();
    }
    Tables tables = closed();
    Invoice invoice = tables.invoice();
    tables.orders.get(0).put("usd", "100.00");
    assertThat(broken(tables, invoice)).isNotEmpty();
  }

  @Test
  void anOrderThatWaits_isMissed() {
    Tables tables = GableOrderTest.gable("place");
    tables.order("2027-06-02", "offered");
    assertThat(broken(tables, tables.invoice())).contains("No change order waits for an answer");
  }

  @Test
  void aMarkOfWhatWasNotAgreed_isMissed() {
    Tables tables = GableOrderTest.gable("place").mark("30", "A-5-1", Item.COVER, 1);
    tables.order("2027-06-02", "approved");
    assertThat(broken(tables, tables.invoice()))
        .containsExactly("Nothing is left whose price has to be talked about");
    assertThat(tables.next().accounts().unpriced()).hasSize(1);
  }
}
