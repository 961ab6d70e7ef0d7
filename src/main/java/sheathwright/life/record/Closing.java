package sheathwright.life.record;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.file.Manifest;
import sheathwright.job.life.FirmFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.life.Stage;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Leak;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.Reconciliation;

/** A job being closed: its last invoice, the record of its deck, and its line in the history. */
public final class Closing {

  private static final String HISTORY = "history.csv";
  private static final String INVOICE = "invoice.xlsx";
  private static final String RECORD = "deck-record.xlsx";

  private final JobFolder folder;
  private final Moment on;
  private final TableText facts;
  private final Estimate estimate;
  private final Accounts accounts;
  private final Invoice invoice;
  private final Reconciliation reconciliation;

  /**
   * The close of a job.
   *
   * @throws sheathwright.job.table.ProblemsException if the job's stage or the day does not allow
   *     it, an order is still offered, something is found and not ordered, or something does not
   *     tie
   */
  public Closing(JobFolder folder, Moment on) {
    this.folder = folder;
    this.on = on;
    folder.require(Step.CLOSE);
    folder.requireNotBefore(on, "the day it was opened", folder.openedOn());
    Estimate open =
        new Estimate(
            Job.of(
                folder.with(
                    folder.facts().with(JobFolder.KEYS, LifeFields.STAGE, Stage.OPENED.word()))));
    requireSettled(Bill.next(open));
    facts =
        folder
            .facts()
            .with(JobFolder.KEYS, LifeFields.STAGE, Stage.CLOSED.word())
            .with(JobFolder.KEYS, LifeFields.CLOSED_ON, on.toString());
    estimate = new Estimate(Job.of(folder.with(facts)));
    accounts = Bill.accounts(estimate);
    invoice = Invoice.of(accounts, estimate.job().lines(JobTable.STAGES));
    reconciliation = Reconciliation.of(accounts, invoice);
    folder.requireAll(reconciliation.ties());
  }

  /** No order is open, and nothing is found that none asks for. */
  private void requireSettled(NextOrder next) {
    List<Order> offered = next.accounts().orders().that(OrderStatus.OFFERED);
    if (!offered.isEmpty()) {
      throw folder.refused(
          "change order %s is still offered; write approved, refused or withdrawn behind it in orders.csv, an approval with approved_by, approved_how and approved_on"
              .formatted(String.join(", ", offered.stream().map(Order::number).toList())));
    }
    for (Order order : next.accounts().orders().all()) {
      folder.requireNotBefore(on, "change order " + order.number(), order.on());
    }
    if (!next.isEmpty()) {
      throw folder.refused(
          "%s of what was found or chosen is neither agreed nor ordered; run %s first"
              .formatted(next.sum(), folder.command("change-order", "--on DATE")));
    }
    List<String> unsettled = Unsettled.lines(next);
    if (!unsettled.isEmpty()) {
      throw folder.refused(unsettled);
    }
  }

  /** The job as it is closed. */
  public Estimate estimate() {
    return estimate;
  }

  /** What was agreed, ordered and found. */
  public Accounts accounts() {
    return accounts;
  }

  /** The last bill. */
  public Invoice invoice() {
    return invoice;
  }

  /** Where every mark went. */
  public Reconciliation reconciliation() {
    return reconciliation;
  }

  /** What the invoice is called. */
  public String invoiceNumber() {
    return folder.job().fact(JobFields.QUOTE_NUMBER).value();
  }

  /**
   * How much was found of each thing against how much was in the price, a line each; and what was
   * seen of the deck before against what was found.
   */
  public List<String> found() {
    List<String> lines = new ArrayList<>();
    for (ItemAccount account : accounts.items()) {
      boolean isOfNote = account.found().value() > 0 || account.agreed().included().value() > 0;
      if (isOfNote) {
        lines.add(
            "%s: %s found, %s in the price, %s billed besides, %s not needed"
                .formatted(
                    account.item().label(),
                    account.item().counted(account.found()),
                    account.agreed().included().plain(),
                    account.before().plain(),
                    account.unused().plain()));
      }
    }
    SeenBefore.of(estimate.job())
        .map(seen -> seen.against(History.places(estimate), History.replaced(accounts.found())))
        .ifPresent(lines::add);
    return lines;
  }

  /** What the work on the deck cost beyond what it sold for, for the office; if the log says. */
  public Optional<Leak> leak() {
    return Optional.of(DeckLeak.of(estimate, accounts))
        .filter(any -> !estimate.job().lines(JobTable.LOG).isEmpty());
  }

  /** What that leaves of the price the work would have had, or takes from it. */
  public Figure<Money> givenAway(Leak leak) {
    return DeckLeak.givenAway(estimate, leak);
  }

  /**
   * Writes and keeps both documents, lists them, and adds the job's line to the history.
   *
   * @param bill the invoice's bytes
   * @param record the deck record's
   * @param place where the documents go
   * @return the files written
   */
  public List<Path> write(byte[] bill, byte[] record, Path place, boolean mayReplace) {
    String name = folder.path().toAbsolutePath().normalize().getFileName().toString();
    Path firm = folder.path().toAbsolutePath().normalize().getParent();
    String hash = Fingerprint.ofAll(folder.with(facts));
    SentDocument sentBill = sent(Issue.INVOICE, INVOICE, bill, hash, Optional.of(invoice.total()));
    SentDocument sentRecord = sent(Issue.DECK_RECORD, RECORD, record, hash, Optional.empty());
    Writing writing =
        new Writing(folder.path())
            .kept(INVOICE, bill)
            .kept(RECORD, record)
            .copied(place.resolve(INVOICE), bill, mayReplace)
            .copied(place.resolve(RECORD), record, mayReplace)
            .with(facts)
            .with(
                sentRecord.listedIn(
                    sentBill.listedIn(folder.text(JobTable.SENT, OrderFields.SENT))));
    ShownPhotos.of(folder).ifPresent(writing::with);
    if (estimate.deck().hasSheets()) {
      writing.with(
          firm,
          folder
              .text(firm.resolve(HISTORY), FirmFields.HISTORY)
              .withRow(History.row(name, on.day().toString(), estimate, accounts)));
    }
    writing.write();
    return List.of(place.resolve(INVOICE), place.resolve(RECORD));
  }

  private SentDocument sent(
      String kind, String file, byte[] bytes, String hash, Optional<Figure<?>> total) {
    return new SentDocument(
        folder.job().fact(JobFields.QUOTE_NUMBER).value() + kind,
        file,
        Fingerprint.of(bytes),
        Manifest.hashIn(bytes),
        hash,
        total.map(Cents::of),
        on.toString());
  }
}
