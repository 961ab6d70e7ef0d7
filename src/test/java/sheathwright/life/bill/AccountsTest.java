package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.job.life.Item;

/** What was found is held against what was agreed, and against what was asked for since. */
class AccountsTest {

  private static final String ASKED =
      "Everything found beyond what was agreed stands in a change order";

  @Test
  void whatIsFoundBeyondTheAgreement_isMissedUntilItIsAskedFor() {
    Tables tables = GableOrderTest.gable("half");
    assertThat(Tables.broken(tables.accounts().ties())).containsExactly(ASKED);
    tables.order("2027-06-02", "approved");
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
    tables.mark("16", "B-3-1", Item.SHEET, 1, "2027-06-03");
    assertThat(Tables.broken(tables.accounts().ties())).containsExactly(ASKED);
    tables.order("2027-06-03", "refused");
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
  }

  /** Of three options one is agreed, one is chosen since, and one is not. */
  private static Tables withOptions() {
    Tables tables = GableOrderTest.gable("half");
    tables.marks.clear();
    tables.agreed("option-1", "job", "0.00", "1", "", "", "dip: Plane A is left as it is");
    tables.option("dip", "Plane A is left as it is", "", "", "0", "yes", "2027-05-01");
    tables.option("vent", "A ridge vent, 4 ft", "4", "ft", "31.25", "yes", "2027-06-02");
    tables.option("osb", "Thicker panels", "", "", "600", "no", "");
    return tables;
  }

  /** 4 ft at $31.25 are $125.00, once. */
  @Test
  void anOptionChosenSince_isAskedForOnceAtItsPrice() {
    Tables tables = withOptions();
    String missed = "Every option chosen since the agreement stands in a change order";
    assertThat(Tables.broken(tables.accounts().ties())).containsExactly(missed);
    NextOrder order = tables.order("2027-06-02", "approved");
    assertThat(order.sum().value()).isEqualTo(125);
    assertThat(order.lineRows())
        .singleElement()
        .satisfies(
            row ->
                assertThat(row.values())
                    .containsExactly("01", "option", "ft", "4", "125.00", "vent: 4"));
    assertThat(Tables.broken(order.ties())).isEmpty();
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
    assertThat(tables.next().isEmpty()).isTrue();
    assertThat(Tables.broken(Reconciliation.of(tables.accounts(), tables.invoice()).ties()))
        .isEmpty();
    assertThat(tables.invoice().total().value())
        .isEqualTo(
            tables.agreement().total().value()
                + 125
                - tables.invoice().accounts().items().stream()
                    .mapToDouble(item -> item.credit().value())
                    .sum());
  }

  @Test
  void anOptionThatIsGivenUp_comesBack_andOneThatIsRefusedIsNotAskedForAgain() {
    Tables tables = withOptions();
    tables.order("2027-06-02", "refused");
    assertThat(tables.next().isEmpty()).isTrue();
    tables.options.get(1).put("chosen_on", "2027-06-03");
    assertThat(tables.order("2027-06-03", "approved").sum().value()).isEqualTo(125);
    tables.options.get(1).put("chosen", "no");
    assertThat(tables.order("2027-06-04", "approved").sum().value()).isEqualTo(-125);
    assertThat(tables.next().isEmpty()).isTrue();
  }

  /** What was ordered at a price is not another price by now. */
  @Test
  void anotherPriceOfAnOrderedOption_isMissed() {
    Tables tables = withOptions();
    tables.order("2027-06-02", "approved");
    tables.options.get(1).put("usd", "30");
    assertThat(Tables.broken(tables.next().ties()))
        .containsExactly(
            "Every order line of an option is its quantity times the option's price, to the cent");
  }

  /** Above the ceiling nothing is owed, and beyond the re-open count nothing before both talk. */
  @Test
  void whatIsBeyondTheAgreedLimits_isNotMissed() {
    Tables tables = GableOrderTest.gable("half");
    tables.agreed("reopen", "", "0.00", "", "", "3.5", "talk");
    tables.order("2027-06-02", "approved");
    tables.mark("16", "B-3-1", Item.SHEET, 40, "2027-06-03");
    assertThat(tables.accounts().items().get(0).found().value()).isGreaterThan(40);
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
  }
}
