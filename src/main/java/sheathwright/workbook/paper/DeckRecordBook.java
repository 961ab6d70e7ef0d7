package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.job.Estimate;
import sheathwright.life.bill.Accounts;
import sheathwright.workbook.book.Tab;

/**
 * What was done to a deck, to be kept for as long as the house stands: which places are new, what
 * lies there and how it is held, what was left, and what to look at when something leaks.
 */
public final class DeckRecordBook {

  private final Estimate estimate;
  private final Accounts accounts;
  private final Photos photos;
  private final Paper paper;

  private DeckRecordBook(Estimate estimate, Accounts accounts, Photos photos, String on) {
    this.estimate = estimate;
    this.accounts = accounts;
    this.photos = photos;
    paper = new Paper(estimate, "Deck record, " + Moment.spoken(on));
  }

  /**
   * The workbook of a deck as it was left.
   *
   * @param on the day on which it is written
   */
  public static DeckRecordBook of(Estimate estimate, Accounts accounts, Photos photos, String on) {
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
    Tab counts = CountPage.tab(paper);
    CountPage.write(counts, accounts.items());
    return accounts.agreement().ties();
  }
}
