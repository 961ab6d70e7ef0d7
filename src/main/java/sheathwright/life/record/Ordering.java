package sheathwright.life.record;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.file.Manifest;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.NextOrder;

/** A change order being written: what was found besides what was agreed, at the agreed prices. */
public final class Ordering {

  private final JobFolder folder;
  private final Moment on;
  private final TableText facts;
  private final Estimate estimate;
  private final NextOrder order;

  /**
   * The next change order of a job.
   *
   * @throws sheathwright.job.table.ProblemsException if the job's stage or the day does not allow
   *     it, or something does not tie
   */
  public Ordering(JobFolder folder, Moment on) {
    this.folder = folder;
    this.on = on;
    folder.require(Step.CHANGE_ORDER);
    folder.requireNotBefore(on, "the day it was opened", folder.openedOn());
    facts = folder.facts().with(JobFolder.KEYS, LifeFields.STAGE, Stage.OPENED.word());
    estimate = new Estimate(Job.of(folder.with(facts)));
    order = Bill.next(estimate);
    folder.requireAll(order.ties());
  }

  /** The job as it stands. */
  public Estimate estimate() {
    return estimate;
  }

  /** What is asked for. */
  public NextOrder order() {
    return order;
  }

  /** What the file is called. */
  public String file() {
    return "change-order-" + order.number() + ".xlsx";
  }

  /**
   * Keeps the document and a copy of it, and lists it with its lines as offered.
   *
   * @param document its bytes
   * @param folderOfCopy where the copy goes
   * @return the document as it is listed
   */
  public SentDocument write(byte[] document, Path folderOfCopy) {
    TableText orders =
        folder.text(JobTable.ORDERS, OrderFields.ORDERS).withRow(order.row(on.toString()));
    TableText lines = folder.text(JobTable.ORDER_LINES, OrderFields.ORDER_LINES);
    for (Map<String, String> row : order.lineRows()) {
      lines = lines.withRow(row);
    }
    SentDocument sent =
        new SentDocument(
            folder.job().fact(JobFields.QUOTE_NUMBER).value() + Issue.CHANGE_ORDER + order.number(),
            file(),
            Fingerprint.of(document),
            Manifest.hashIn(document),
            Fingerprint.ofAll(folder.with(facts, orders, lines)),
            Optional.of(Cents.of(order.sum())),
            on.toString());
    Writing writing = new Writing(folder.path());
    ShownPhotos.of(folder).ifPresent(writing::with);
    writing
        .kept(sent.file(), document)
        .copiedOnce(folderOfCopy.resolve(file()), document)
        .with(facts)
        .with(orders)
        .with(lines)
        .with(sent.listedIn(folder.text(JobTable.SENT, OrderFields.SENT)))
        .write();
    return sent;
  }
}
