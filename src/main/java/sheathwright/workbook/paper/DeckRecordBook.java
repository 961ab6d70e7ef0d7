package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Share;
import sheathwright.life.record.Issue;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.PhotoCount;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Places;

/**
 * What was done to a deck, to be kept for as long as the house stands: which places are new, what
 * lies there and how it is held, what was left, and what to look at when something leaks.
 */
public final class DeckRecordBook {

  private static final double DUST = 1e-9;

  private final Estimate estimate;
  private final Accounts accounts;
  private final Photos photos;
  private final Paper paper;

  private DeckRecordBook(Estimate estimate, Accounts accounts, Photos photos, Moment on) {
    this.estimate = estimate;
    this.accounts = accounts;
    this.photos = photos;
    paper = new Paper(estimate, "Deck record, " + on.inWords(), Issue.DECK_RECORD, on);
  }

  /**
   * The workbook of a deck as it was left.
   *
   * @param on when it is written
   */
  public static DeckRecordBook of(Estimate estimate, Accounts accounts, Photos photos, Moment on) {
    return new DeckRecordBook(estimate, accounts, photos, on);
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return paper.bytes(this::pages);
  }

  /** How many photographs the job has, and which of the marks that were put right none shows. */
  public PhotoCount photographs() {
    return PhotoCount.of(photos.there(), photos, shares());
  }

  private void pages() {
    RecordPage front = new RecordPage(paper, estimate, accounts);
    IfItLeaksPage.write(paper, estimate);
    DonePage done = new DonePage(paper, estimate, accounts, photos);
    done.write();
    OnceMore again = new OnceMore();
    front.write(done.sums(), photographs().named(Places.of(estimate)::number).words(), again);
    if (!done.sums().isEmpty()) {
      front.close(Paper.told(again, done.sheaf()));
    }
    DeckPictures pictures = new DeckPictures(paper, estimate, photos);
    pictures.asBuilt(newPlaces());
    pictures.photographs(shares(), photos.ofNoMark());
  }

  /** The marks whose wood is new: replaced, and neither taken back nor refused. */
  private List<Share> newPlaces() {
    return accounts.items().stream()
        .filter(item -> item.item() == Item.SHEET)
        .flatMap(item -> item.shares().stream())
        .filter(DeckRecordBook::isDone)
        .toList();
  }

  private List<Share> shares() {
    List<Share> all = new ArrayList<>();
    for (ItemAccount item : accounts.items()) {
      item.shares().stream().filter(DeckRecordBook::isDone).forEach(all::add);
    }
    return all;
  }

  static boolean isDone(Share share) {
    return share.kept().value() > DUST;
  }
}
