package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.life.Item;

/**
 * The change order of the invented gable: five places replaced and three in the price, 24 ft of
 * tight joint, six sheets refastened. The sums were worked by an independent script.
 */
class GableOrderTest {

  static Tables gable(String rule) {
    double strip = rule.equals("half") ? 0.5 : 1;
    Tables tables =
        new Tables()
            .agreed("sheet", rule, "117.00", "3", "80.00", "44", "Deck sheet replaced")
            .agreed("refasten", "place", "8.00", "", "", "", "A sheet refastened")
            .agreed("relief", "ft", "1.05", "", "", "", "A tight joint sawn open")
            .agreed("line-1", "job", "10420.00", "1", "", "", "Roof covering")
            .agreed("line-2", "job", "165.00", "1", "", "", "Permit")
            .agreed("line-3", "sheet", "96.00", "3", "", "", "Deck sheets replaced")
            .agreed("total", "", "10873.00", "", "", "", "All of it")
            .agreed("stage-1", "", "1000.00", "", "", "", "Deposit")
            .agreed("stage-2", "", "5436.50", "", "", "", "Dry-in")
            .agreed("stage-3", "", "4436.50", "", "", "", "Final")
            .stage("Deposit", "", "1000.00", "on signing", "2027-05-10", "1000.00")
            .stage("Dry-in", "", "5436.50", "when the deck is covered")
            .stage("Final", "", "4436.50", "when all is done")
            .mark("1", "A-1-2", Item.SHEET, 1)
            .mark("2", "A-1-3", Item.SHEET, 1)
            .mark("3", "A-1-4", Item.SHEET, 1)
            .mark("4", "B-5-3", Item.SHEET, strip)
            .mark("5", "A-4-6", Item.SHEET, 1)
            .mark("12", "A-3-1", Item.RELIEF, 24)
            .freeMark("13", "B-1-1", "dry")
            .freeMark("14", "B-1-2", "watch")
            .freeMark("15", "B-1-3", "stop");
    for (int i = 6; i <= 11; i++) {
      tables.mark(String.valueOf(i), "B-2-" + (i - 5), Item.REFASTEN, 1);
    }
    return tables;
  }

  @ParameterizedTest
  @CsvSource({
    "place, 2, 234.00, 307.20, 11180.20, 4743.70",
    "half, 1.5, 175.50, 248.70, 11121.70, 4685.20"
  })
  void theChangeOrder_isTheScripts(
      String rule, double sheets, double forSheets, double sum, double total, double last) {
    Tables tables = gable(rule);
    NextOrder order = tables.next();
    assertThat(order.asked())
        .extracting(ItemAccount::item)
        .containsExactly(Item.SHEET, Item.REFASTEN, Item.RELIEF);
    assertThat(order.asked())
        .extracting(item -> item.now().value())
        .containsExactly(sheets, 6.0, 24.0);
    assertThat(order.asked())
        .extracting(item -> item.amount().value())
        .containsExactly(forSheets, 48.00, 25.20);
    assertThat(order.sum().value()).isEqualTo(sum);
    assertThat(order.newTotal().value()).isEqualTo(total);
    Payments payments = Payments.of(tables.agreement(), tables.stageRows(), order.newTotal());
    assertThat(payments.list())
        .extracting(payment -> payment.amount().value())
        .containsExactly(1000.00, 5436.50, last);
    assertThat(payments.paid().value()).isEqualTo(1000);
    assertThat(payments.tie().holds().holds()).isTrue();
    assertThat(Tables.broken(order.ties())).isEmpty();
  }

  @Test
  void theRows_areReadAgainAsTheyWereWritten() {
    Tables tables = gable("half");
    tables.order("2027-06-02", "approved");
    assertThat(tables.orders.get(0))
        .containsEntry("order", "01")
        .containsEntry("usd", "248.70")
        .containsEntry("days", "");
    assertThat(tables.orderLines)
        .extracting(row -> row.get("marks"))
        .containsExactly("4: 0.5, 5: 1", "6: 1, 7: 1, 8: 1, 9: 1, 10: 1, 11: 1", "12: 24");
    NextOrder second = tables.next();
    assertThat(second.isEmpty()).isTrue();
    assertThat(second.number()).isEqualTo("02");
    assertThat(second.newTotal().value()).isEqualTo(11121.70);
  }

  @Test
  void theInvoice_isTheNewTotal() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "approved");
    Invoice invoice = tables.invoice();
    assertThat(invoice.total().value()).isEqualTo(11180.20);
    assertThat(invoice.due().value()).isEqualTo(10180.20);
    assertThat(Tables.broken(invoice.ties())).isEmpty();
    Reconciliation all = Reconciliation.of(tables.accounts(), invoice);
    assertThat(Tables.broken(all.ties())).isEmpty();
    assertThat(all.parts())
        .extracting(part -> part.mark() + " " + part.fate().word() + " " + part.where())
        .contains(
            "1 included in the agreed price",
            "3 included in the agreed price",
            "4 ordered change order 01",
            "12 ordered change order 01",
            "13 no-charge dry",
            "14 no-charge watch",
            "15 stop separate order after the engineer")
        .hasSize(15);
  }

  @Test
  void fewerThanIncluded_comeBackAsCredit() {
    Tables tables = gable("place");
    tables.marks.subList(1, 5).clear();
    tables.order("2027-06-02", "approved");
    assertThat(tables.invoice().total().value()).isEqualTo(10873.00 + 73.20 - 2 * 80);
  }

  @Test
  void aMarkThatIsTakenBack_comesBackAsLess() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "approved");
    tables.voidMark(4);
    NextOrder second = tables.order("2027-06-03", "approved");
    assertThat(second.sum().value()).isEqualTo(-117);
    assertThat(tables.orderLines.get(3))
        .containsEntry("quantity", "-1")
        .containsEntry("usd", "-117.00")
        .containsEntry("marks", "5: -1");
    assertThat(tables.invoice().total().value()).isEqualTo(11180.20 - 117);
    assertThat(Tables.broken(Reconciliation.of(tables.accounts(), tables.invoice()).ties()))
        .isEmpty();
  }

  /**
   * A mark that was ordered may lead to something else when it is looked at again, or to nothing.
   */
  @Test
  void aMarkThatLeadsToSomethingElse_isGivenBackAndAskedForAnew() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "approved");
    tables.marks.removeIf(mark -> mark.mark().equals("5") || mark.mark().equals("12"));
    tables.mark("5", "A-4-6", Item.REFASTEN, 1).freeMark("12", "A-3-1", "watch");
    NextOrder second = tables.order("2027-06-03", "approved");
    assertThat(second.sum().value()).isEqualTo(8 - 117 - 25.20);
    assertThat(tables.orderLines.subList(3, 6))
        .extracting(row -> row.get("item") + " " + row.get("marks"))
        .containsExactly("sheet 5: -1", "refasten 5: 1", "relief 12: -24");
    assertThat(Tables.broken(Reconciliation.of(tables.accounts(), tables.invoice()).ties()))
        .isEmpty();
  }

  @Test
  void aMarkThatIsTakenBackAndLeadsToNothing_comesBackToo() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "approved");
    tables.marks.removeIf(mark -> mark.mark().equals("5"));
    tables.freeMark("5", "A-4-6", "replace");
    tables.voidMark(tables.marks.size() - 1);
    assertThat(tables.order("2027-06-03", "approved").sum().value()).isEqualTo(-117);
    Reconciliation all = Reconciliation.of(tables.accounts(), tables.invoice());
    assertThat(Tables.broken(all.ties())).isEmpty();
    assertThat(all.parts())
        .filteredOn(part -> part.mark().equals("5") && part.fate() == Fate.VOID)
        .hasSize(1);
  }

  @Test
  void anIncludedMarkThatIsTakenBack_makesRoomForAnother() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "approved");
    tables.voidMark(0);
    NextOrder second = tables.order("2027-06-03", "approved");
    assertThat(second.sum().value()).isEqualTo(-117);
    assertThat(tables.orderLines.get(3)).containsEntry("marks", "4: -1");
    assertThat(Tables.broken(Reconciliation.of(tables.accounts(), tables.invoice()).ties()))
        .isEmpty();
  }

  @Test
  void refusedMarks_areDeclinedUntilTheirActionIsTypedAnew() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "refused");
    assertThat(tables.next().isEmpty()).isTrue();
    assertThat(tables.invoice().total().value()).isEqualTo(10873);
    assertThat(Reconciliation.of(tables.accounts(), tables.invoice()).parts())
        .filteredOn(part -> part.fate() == Fate.DECLINED)
        .extracting(Reconciliation.Part::mark)
        .containsExactly("4", "5", "6", "7", "8", "9", "10", "11", "12");
    tables.typeAction("5", "2027-06-01");
    assertThat(tables.next().sum().value()).as("typed where it was blank").isEqualTo(117);
    tables.order("2027-06-03", "refused");
    assertThat(tables.orderLines.get(3)).containsEntry("marks", "5: 1 typed");
    assertThat(tables.next().isEmpty()).as("refused again").isTrue();
    tables.typeAction("5", "2027-06-04");
    assertThat(tables.order("2027-06-04", "approved").sum().value())
        .as("typed and dated anew")
        .isEqualTo(117);
    assertThat(tables.next().isEmpty()).isTrue();
    assertThat(Tables.broken(Reconciliation.of(tables.accounts(), tables.invoice()).ties()))
        .isEmpty();
  }

  /** Only a new decision brings it back, not another date. */
  @Test
  void aRefusedMarkWithAnotherDate_staysDeclined() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "refused");
    tables.marks.removeIf(mark -> mark.mark().equals("5"));
    tables.mark("5", "A-4-6", Item.SHEET, 1, "2027-06-03");
    assertThat(tables.next().isEmpty()).isTrue();
  }

  /** What was approved after a refusal stays approved when the typed action is cleared again. */
  @Test
  void aLaterApproval_endsARefusal() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "refused");
    tables.typeAction("5", "2027-06-01");
    tables.order("2027-06-03", "approved");
    tables.marks.removeIf(mark -> mark.mark().equals("5"));
    tables.mark("5", "A-4-6", Item.SHEET, 1);
    assertThat(tables.next().isEmpty()).isTrue();
    assertThat(tables.invoice().total().value()).isEqualTo(10873 + 117);
  }

  @Test
  void aWithdrawnOrder_isOfferedAgain() {
    Tables tables = gable("place");
    tables.order("2027-06-02", "withdrawn");
    assertThat(tables.next().sum().value()).isEqualTo(307.20);
    assertThat(tables.next().number()).isEqualTo("02");
  }

  @Test
  void beyondTheReopenCount_nothingIsBilled() {
    Tables tables = gable("place").agreed("reopen", "", "0.00", "", "", "4", "Talk again");
    NextOrder order = tables.next();
    assertThat(order.asked().get(0).amount().value()).isEqualTo(117);
    assertThat(order.priceOpen()).hasSize(1);
    assertThat(order.priceOpen().get(0).open().value()).isEqualTo(1);
    assertThat(order.priceOpen().get(0).openAmount().value()).isEqualTo(117);
    assertThat(order.sum().value()).isEqualTo(307.20 - 117);
  }

  @Test
  void aboveTheCeiling_nothingIsCharged() {
    Tables tables = gable("place");
    tables.agreed.get(0).put("most", "4");
    NextOrder order = tables.next();
    assertThat(order.asked().get(0).amount().value()).isEqualTo(117);
    assertThat(order.priceOpen()).isEmpty();
    assertThat(order.leftBelowCeiling(Item.SHEET).orElseThrow().value()).isZero();
    assertThat(order.asked().get(0).shares().get(4).uncharged().value()).isEqualTo(1);
  }

  /** 1.13 sheets of area are billed as 1.25, and with 0.2 more as 1.5: a quarter is added. */
  @Test
  void byArea_eachDocumentGoesUpToAQuarter() {
    Tables tables = gable("area");
    tables.marks.removeIf(mark -> mark.mark().equals("5"));
    tables.mark("5", "A-4-6", Item.SHEET, 0.13);
    assertThat(tables.order("2027-06-02", "offered").asked().get(0).now().value()).isEqualTo(1.25);
    tables.mark("20", "A-4-5", Item.SHEET, 0.2, "2027-06-03");
    assertThat(tables.order("2027-06-04", "offered").asked().get(0).now().value()).isEqualTo(0.25);
    assertThat(Tables.broken(tables.next().ties())).isEmpty();
    assertThat(tables.next().isEmpty()).isTrue();
  }

  @Test
  void preAgreed_isWithinSheetsAndSum() {
    for (List<String> limits :
        List.of(
            List.of("2", "400.00", "yes"),
            List.of("1", "400.00", "no"),
            List.of("2", "300.00", "no"),
            List.of("2", "0.00", "yes"),
            List.of("", "307.20", "yes"))) {
      Tables tables =
          gable("place").agreed("pre-agreed", "", limits.get(1), "", "", limits.get(0), "Rain");
      assertThat(tables.next().isPreAgreed().orElseThrow().shown())
          .as(limits.toString())
          .isEqualTo(limits.get(2));
    }
    assertThat(gable("place").next().isPreAgreed()).isEmpty();
  }

  @Test
  void anOrderApprovedAsPreAgreed_isWithinIt() {
    String broken = "Orders approved as pre-agreed stay within what was agreed";
    Tables silent = gable("place");
    silent.order("2027-06-02", "approved");
    silent.orders.get(0).put("approved_how", "pre-agreed");
    assertThat(Tables.broken(silent.next().ties())).containsExactly(broken);
    for (String sheets : List.of("1", "2")) {
      Tables tables = gable("place").agreed("pre-agreed", "", "400.00", "", "", sheets, "Rain");
      tables.order("2027-06-02", "approved");
      tables.orders.get(0).put("approved_how", "pre-agreed");
      assertThat(Tables.broken(tables.next().ties()).contains(broken))
          .isEqualTo(sheets.equals("1"));
      tables.mark("40", "A-5-5", Item.SHEET, 1, "2027-06-05");
      assertThat(tables.next().isPreAgreed().orElseThrow().holds()).isFalse();
    }
  }
}
