package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Payments;
import sheathwright.life.bill.Share;
import sheathwright.workbook.book.Tab;

/**
 * A change order for the owner: on the first page what is asked and of whom, on the second each
 * mark with its reason and price, then maps and photographs, and how it was counted.
 */
public final class ChangeOrderBook {

  private final Estimate estimate;
  private final NextOrder order;
  private final Moment on;
  private final Photos photos;
  private final Payments payments;
  private final Paper paper;

  private ChangeOrderBook(Estimate estimate, NextOrder order, Photos photos, Moment on) {
    this.estimate = estimate;
    this.order = order;
    this.on = on;
    this.photos = photos;
    payments =
        Payments.of(
            order.accounts().agreement(), estimate.job().lines(JobTable.STAGES), order.newTotal());
    paper = new Paper(estimate, "Change order %s, %s".formatted(order.number(), on.inWords()));
  }

  /**
   * The workbook of an order.
   *
   * @param on when it is written: with a time of the day it says by when it is answered
   */
  public static ChangeOrderBook of(Estimate estimate, NextOrder order, Photos photos, Moment on) {
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
    PhonePage phone = paper.phonePage("Change order");
    MarksPage marks = new MarksPage(MarksPage.tab(paper), estimate, order, photos);
    LinesPage lines = new LinesPage(LinesPage.tab(paper), order, payments);
    DeckPictures pictures =
        new DeckPictures(PhotoRows.tab(paper, "Maps and photographs"), estimate, photos);
    Tab counts = CountPage.tab(paper);
    marks.write();
    lines.write();
    List<Share> asked = asked();
    pictures.maps(asked.stream().map(Share::mark).collect(Collectors.toSet()));
    pictures.photographs(asked);
    CountPage.write(counts, order.accounts().items());
    new OrderPhonePage(phone, estimate.job(), order, on).write();
    List<Estimate.Tie> ties = new ArrayList<>(order.ties());
    ties.add(lines.tie());
    ties.addAll(marks.ties());
    ties.add(payments.tie());
    return ties;
  }

  /** Which billed marks nobody photographed before and open, in a sentence; nothing if all are. */
  public Optional<String> unseen() {
    return MarksPage.unseen(order, photos);
  }

  private List<Share> asked() {
    return order.asked().stream()
        .flatMap(item -> item.shares().stream())
        .filter(MarksPage::isAsked)
        .toList();
  }
}
