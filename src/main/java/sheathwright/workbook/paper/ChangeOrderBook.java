package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Payments;
import sheathwright.workbook.book.Tab;

/**
 * A change order for the owner: on the first page what is asked and of whom, on the second each
 * mark with its reason and price, then maps and photographs, and how it was counted.
 */
public final class ChangeOrderBook {

  private final NextOrder order;
  private final Photos photos;
  private final Payments payments;
  private final Paper paper;

  private ChangeOrderBook(Estimate estimate, NextOrder order, Photos photos, String on) {
    this.order = order;
    this.photos = photos;
    payments =
        Payments.of(
            order.accounts().agreement(), estimate.job().lines(JobTable.STAGES), order.newTotal());
    paper = new Paper(estimate, "Change order %s, %s".formatted(order.number(), on));
  }

  /**
   * The workbook of an order.
   *
   * @param on the day on which it is written, and the time if that is known
   */
  public static ChangeOrderBook of(Estimate estimate, NextOrder order, Photos photos, String on) {
    return new ChangeOrderBook(estimate, order, photos, on);
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return paper.bytes(this::pages, List.of(order.sum(), order.newTotal()));
  }

  private List<Estimate.Tie> pages() {
    Tab lines = LinesPage.tab(paper);
    Tab counts = CountPage.tab(paper);
    new LinesPage(lines, order, photos).write(payments);
    CountPage.write(counts, order.accounts().items());
    List<Estimate.Tie> ties = new ArrayList<>(order.ties());
    ties.add(payments.tie());
    return ties;
  }
}
