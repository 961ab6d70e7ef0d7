package sheathwright.workbook.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Agreement;
import sheathwright.life.bill.CrewDay;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.ItemHours;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Orders;
import sheathwright.life.bill.Reconciliation;
import sheathwright.life.found.Found;
import sheathwright.workbook.told.Photos;

/** The documents of the small job whose roof is open, and then closed. */
public final class LifeBooks {

  private LifeBooks() {}

  /** All of them, by name. */
  public static Map<String, byte[]> all() {
    return all(LifeJob.tables(Map.of()), LifeJob.tables(LifeJob.CLOSED));
  }

  /** The same, from the tables while the roof is open and those after it is closed. */
  public static Map<String, byte[]> all(
      Map<String, sheathwright.job.table.RowSource> open,
      Map<String, sheathwright.job.table.RowSource> closed) {
    Map<String, byte[]> books = new LinkedHashMap<>();
    Job opened = LifeJob.job(open);
    books.put("change-order", changeOrder(opened, LifeJob.found()));
    books.put("order-list", OrderListBook.of(new Estimate(opened)).bytes());
    books.put(
        "inspection-record", InspectionRecordBook.of(new Estimate(opened), photos(opened)).bytes());
    Estimate done = new Estimate(LifeJob.job(closed));
    books.put("invoice", invoice(done, LifeJob.found()));
    books.put("deck-record", deckRecord(done, LifeJob.found()));
    return books;
  }

  static byte[] changeOrder(Job job, List<Found> found) {
    return ChangeOrderBook.of(
            new Estimate(job), next(job, found), photos(job), Moment.read("2027-05-18"))
        .bytes();
  }

  static NextOrder next(Job job, List<Found> found) {
    return NextOrder.of(accounts(job, found), CrewDay.of(job), ItemHours.of(job));
  }

  static byte[] invoice(Estimate estimate, List<Found> found) {
    Accounts accounts = accounts(estimate.job(), found);
    Invoice invoice = Invoice.of(accounts, estimate.job().lines(JobTable.STAGES));
    return InvoiceBook.of(
            estimate,
            invoice,
            Reconciliation.of(accounts, invoice),
            "QH-01",
            Moment.read("2027-06-02"))
        .bytes();
  }

  static byte[] deckRecord(Estimate estimate, List<Found> found) {
    Job job = estimate.job();
    return DeckRecordBook.of(estimate, accounts(job, found), photos(job), Moment.read("2027-06-02"))
        .bytes();
  }

  private static Accounts accounts(Job job, List<Found> found) {
    return Accounts.of(agreement(job), orders(job), found, job.lines(JobTable.OPTIONS));
  }

  private static Agreement agreement(Job job) {
    return Agreement.of(job.lines(JobTable.AGREED));
  }

  private static Orders orders(Job job) {
    return Orders.of(job.lines(JobTable.ORDERS), job.lines(JobTable.ORDER_LINES));
  }

  private static Photos photos(Job job) {
    try {
      Path folder = Files.createDirectories(Path.of("target", "life-job"));
      return LifeJob.photos(job, folder);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
