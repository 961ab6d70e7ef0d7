package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Share;
import sheathwright.life.record.Issue;
import sheathwright.workbook.book.Tab;

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
    return paper.bytes(this::pages, List.of());
  }

  private List<Estimate.Tie> pages() {
    RecordPage front = new RecordPage(RecordPage.tab(paper), estimate, accounts);
    DonePage done = new DonePage(DonePage.tab(paper), estimate, accounts, photos);
    Tab pictures = PhotoRows.tab(paper, "Maps and photographs");
    Tab leaks = LeakPage.tab(paper);
    done.write();
    front.write(done.sums());
    DeckPictures shown = new DeckPictures(pictures, estimate, photos);
    shown.asBuilt(newPlaces());
    shown.photographs(shares());
    shown.of(photos.ofNoMark());
    LeakPage.write(leaks, estimate);
    return done.ties();
  }

  /** The marks whose wood is new: replaced, and neither taken back nor refused. */
  private Set<String> newPlaces() {
    return accounts.items().stream()
        .filter(item -> item.item() == Item.SHEET)
        .flatMap(item -> item.shares().stream())
        .filter(DeckRecordBook::isDone)
        .map(Share::mark)
        .collect(Collectors.toSet());
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
