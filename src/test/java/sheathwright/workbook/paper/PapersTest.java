package sheathwright.workbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Agreement;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.ItemHours;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Orders;
import sheathwright.life.bill.Reconciliation;

class PapersTest {
  @TempDir Path folder;

  @Test
  void all() throws Exception {
    Estimate estimate = LifeJob.estimate();
    Photos photos = LifeJob.photos(estimate.job(), folder);
    Agreement agreement = Agreement.of(estimate.job().lines(JobTable.AGREED));
    Orders orders = Orders.of(estimate.job().lines(JobTable.ORDERS), estimate.job().lines(JobTable.ORDER_LINES));
    NextOrder next = NextOrder.of(agreement, orders, LifeJob.found(), Optional.empty(), ItemHours.of(estimate.job()));
    Path out = Files.createDirectories(Path.of("/tmp/papers-tools/out"));
    Files.write(out.resolve("change-order-01.xlsx"), ChangeOrderBook.of(estimate, next, photos, "2027-05-18").bytes());
    estimate = new Estimate(LifeJob.with(java.util.Map.of("orders", LifeJob.ORDERS, "order_lines", LifeJob.ORDER_LINES, "sent", LifeJob.SENT)));
    orders = Orders.of(estimate.job().lines(JobTable.ORDERS), estimate.job().lines(JobTable.ORDER_LINES));
    Accounts accounts = Accounts.of(agreement, orders, LifeJob.found());
    Invoice invoice = Invoice.of(accounts, estimate.job().lines(JobTable.STAGES));
    Files.write(out.resolve("invoice.xlsx"), InvoiceBook.of(estimate, invoice, Reconciliation.of(accounts, invoice), "QH-01", "2027-06-02").bytes());
    Files.write(out.resolve("deck-record.xlsx"), DeckRecordBook.of(estimate, accounts, photos, "2027-06-02").bytes());
    assertThat(next.sum().value()).isEqualTo(248.70);
  }
}
