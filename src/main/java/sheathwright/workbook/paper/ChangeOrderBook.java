package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.job.Estimate;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.record.Issue;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.PhotoCount;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;

/**
 * A change order for the owner: on the first page what is asked and of whom, on the second each
 * mark with its reason and price, then maps and photographs.
 */
public final class ChangeOrderBook {

  private final Estimate estimate;
  private final NextOrder order;
  private final Moment on;
  private final Photos photos;
  private final Paper paper;

  private ChangeOrderBook(Estimate estimate, NextOrder order, Photos photos, Moment on) {
    this.estimate = estimate;
    this.order = order;
    this.on = on;
    this.photos = photos;
    paper =
        new Paper(
            estimate,
            "Change order %s, %s".formatted(order.number(), on.inWords()),
            Issue.CHANGE_ORDER + order.number(),
            on);
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
    return paper.bytes(this::pages);
  }

  /** How many photographs are in it, and which of the marks that it bills are not seen in any. */
  public PhotoCount photographs() {
    return Asked.photographs(order, photos);
  }

  private void pages() {
    OrderPhonePage phone =
        new OrderPhonePage(
            paper.phonePage("Change order"), estimate.job(), Places.of(estimate), order, on);
    MarksPage marks = new MarksPage(paper, estimate, order, photos);
    marks.write();
    OnceMore again = phone.write(marks.asked(), marks.chosen());
    DeckPictures pictures = new DeckPictures(paper, estimate, photos);
    Sheaf maps = pictures.maps(Asked.seen(order));
    Sheaf photographs = pictures.photographs(Asked.seen(order), List.of());
    phone.close(Paper.told(again, again.fitting(List.of(marks.sheaf(), photographs, maps))));
  }
}
