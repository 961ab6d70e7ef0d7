package sheathwright.workbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.life.found.Found;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.OverwrittenCells;

/** The invoice and the deck record say what was done, and miss whatever is changed in them. */
class ClosingBooksTest {

  private static byte[] invoice;
  private static byte[] record;

  @BeforeAll
  static void written() {
    Estimate estimate = new Estimate(LifeJob.with(LifeJob.CLOSED));
    invoice = LifeBooks.invoice(estimate, LifeJob.found());
    record = LifeBooks.deckRecord(estimate, LifeJob.found());
  }

  /** 10,873.00 and 248.70, of which 1,000.00 and 5,436.50 are paid. */
  @Test
  void theInvoice_comesToWhatWasWorkedOutByHand() {
    Texts said = Texts.of(invoice);

    assertThat(Cells.byPoi(invoice)).isEqualTo(Cells.written(invoice));
    assertThat(said.number("invoice_total_usd")).isEqualTo(11_121.70);
    assertThat(said.number("due_usd")).isEqualTo(4_685.20);
    assertThat(said.last("payments_amount_usd")).isEqualTo(4_685.20);
    assertThat(said.word("sums_tie")).isEqualTo("The numbers are as they were written.");
  }

  @Test
  void theInvoice_namesEarlierDocumentsWithTheirDates_andWhatTheOwnerDeclined() {
    assertThat(Texts.of(invoice).on("Orders and documents"))
        .contains("QH-01", "May 4, 2027", "CO-01", "May 18, 2027")
        .contains("Change order 01 of May 18, 2027: approved")
        .contains(
            "Owner chose to leave plane B as it is on May 3, 2027: up to 1-1/8 in low at mid-length; it will show.");
  }

  /** Three sheets in the price, one and a half, six and 24 ft on the order. */
  @Test
  void everyMark_standsOnceInItsGroup_withCounts() {
    Texts said = Texts.of(invoice);

    assertThat(said.number("went_included_sheet_together")).isEqualTo(3);
    assertThat(said.number("went_ordered_sheet_together")).isEqualTo(1.5);
    assertThat(said.number("went_ordered_refasten_together")).isEqualTo(6);
    assertThat(said.number("went_ordered_relief_together")).isEqualTo(24);
  }

  @Test
  void anOverwrittenNumber_isSeen() throws Exception {
    List<String> totals = List.of("invoice_total_usd", "due_usd");
    OverwrittenCells.eachIsSeen(
        invoice,
        List.of(
            "invoice_total_usd",
            "due_usd",
            "invoice_amount_usd",
            "payments_amount_usd",
            "payments_paid_usd",
            "order_01_usd",
            "order_01_amount_usd",
            "went_included_sheet_quantity",
            "went_ordered_sheet_quantity"),
        totals,
        SheetsOfPaper::changed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "invoice_amount_usd",
        "order_01_amount_usd",
        "went_included_sheet_quantity",
        "went_ordered_relief_quantity"
      })
  void aDeletedLineOfTheInvoice_isSeen(String list) throws Exception {
    assertThat(changedWithout(invoice, list)).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"done_sheet_quantity", "done_refasten_quantity"})
  void aDeletedPlaceOfTheRecord_isSeen(String list) throws Exception {
    assertThat(changedWithout(record, list)).isEqualTo(1);
  }

  private static double changedWithout(byte[] book, String list) throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      String first = workbook.getName(list).getRefersToFormula().split(":")[0];
      OverwrittenCells.at(workbook, first).getRow().forEach(Cell::setBlank);
      return SheetsOfPaper.changed(workbook, evaluator);
    }
  }

  @Test
  void theRecord_saysWhatIsNew_howItIsHeld_andWhatToLookAt() {
    Texts said = Texts.of(record);

    assertThat(Cells.byPoi(record)).isEqualTo(Cells.written(record));
    assertThat(said.number("done_sheet")).isEqualTo(4.5);
    assertThat(said.on("Deck record"))
        .contains("1/8 in, between those that are new", "15/32 in", "32/16", "8d common")
        .contains(
            "Owner chose to leave plane B as it is on May 3, 2027: up to 1-1/8 in low at mid-length; it will show.");
    assertThat(said.on("Place by place"))
        .contains(
            "south side, at the gutter, middle",
            "north side, at the ridge, middle",
            "May 18, 2027, Bram Okonjo-Lisle",
            "awl 3/8 in, moisture 24 %");
    assertThat(String.join(" ", said.on("If it leaks")))
        .contains("chimney, vent, skylight, valley, wall")
        .contains("That comes back unless the ceiling below is made tight");
  }

  @Test
  void noFormulaGrows_withTheNumberOfMarks() {
    List<Found> many = new ArrayList<>(LifeJob.found());
    for (int i = 13; i <= 90; i++) {
      many.add(LifeJob.refastened("" + i, "B-3-" + i));
    }

    byte[] book = LifeBooks.invoice(new Estimate(LifeJob.with(LifeJob.CLOSED)), many);

    assertThat(Cells.formulas(book).values()).allMatch(formula -> formula.length() <= 255);
    SheetsOfPaper.areFew(book, 8);
  }

  /** The owner's pages alone, each a sheet of paper. */
  @Test
  void theyHold_whatTheOwnerReads_andNothingElse() {
    SheetsOfPaper.areFew(invoice, 3);
    SheetsOfPaper.areFew(record, 7);
    assertThat(Texts.of(invoice).tabs())
        .containsExactly("Invoice", "Orders and documents", "Where every mark went");
    assertThat(Texts.of(record).tabs())
        .containsExactly(
            "Deck record", "If it leaks", "Place by place", "What is new", "Photographs");
  }

  @Test
  void theRecord_countsItsPhotographs() {
    assertThat(Texts.of(record).on("Deck record"))
        .contains(
            "7 photographs (3 before, 2 open, 1 after, 1 of a stamp); not seen both before and open: marks 1, 3, 5, 6, 7, 8, 9, 10, 11, 12.");
  }
}
