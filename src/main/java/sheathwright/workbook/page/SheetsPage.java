package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.table.Problem;
import sheathwright.life.found.BoardsSettled;
import sheathwright.life.found.FoundWork;
import sheathwright.life.found.SheetsSettled;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;

/** The office's page on which what is found is settled against what is sold, sheet by sheet. */
final class SheetsPage {

  private SheetsPage() {}

  static Tab tab(Book book, String subtitle) {
    return Sections.titled(book.tab("Sheets", 31, 13, 12, 12, 12, 24, 42, 6, 6), subtitle);
  }

  static void write(Tab tab, Estimate estimate, FoundWork work, SheetsSettled settled) {
    tab.heading("Sheets of the old deck, as the bill counts them");
    tab.list(
        settled.planes(),
        List.of("Plane", "Places", "At most", "Found by the marks", "Still possible"),
        Sections.units(null, Units.SHEET, Units.SHEET, Units.SHEET, Units.SHEET));
    tab.link("One sheet is counted by", estimate.billRule(), "place, half or area");
    tab.link("At most, every place", estimate.sheetsAtWorst(), "the ceiling of every bill");
    tab.shown("In the price", settled.included(), "");
    tab.shown("Found by the marks", settled.found(), "whoever finds more marks it first");
    tab.entry("Still possible", settled.possible(), "no mark calls for them yet");
    tab.entry("Found beyond the price", settled.beyond(), "each needs a change order");
    tab.entry("In the price, not needed so far", settled.notNeeded(), "");
    tab.shown("Credit for one not needed", settled.creditEach(), "");
    tab.entry("Comes back if no more is found", settled.credit(), "");
    BoardsSettled.of(estimate, work).ifPresent(boards -> boards(tab, boards));
    items(tab, settled);
    marks(tab, estimate, work);
  }

  private static void boards(Tab tab, BoardsSettled boards) {
    tab.heading("Boards of the old deck, in feet");
    tab.list(
        boards.planes(),
        List.of("Plane", "One covers, in", "All of it", "Found by the marks", "Still possible"),
        Sections.units(null, Units.INCH, Units.FOOT, Units.FOOT, Units.FOOT));
    tab.link(
        "At most, every board", boards.most(), "the ceiling of every bill, up to the next foot");
    tab.shown("Found by the marks", boards.found(), "");
    tab.entry("Still possible", boards.possible(), "no mark calls for them yet");
  }

  private static void items(Tab tab, SheetsSettled settled) {
    tab.heading("What was found beyond the price, and what each would cost");
    tab.list(
        settled.items(),
        List.of("What", "Counted in", "Found", "Each", "Amount"),
        Sections.units(null, null, Units.RATIO, Units.USD, Units.USD));
    tab.total("All of it", settled.comesTo(), "if it is agreed; not in the total of the quote");
    List<Problem> unpriced = settled.unpriced();
    unpriced.forEach(problem -> tab.caution("No price yet: " + problem + "."));
  }

  /** On pages of their own where there are many, so that the settlement stays one page. */
  private static void marks(Tab tab, Estimate estimate, FoundWork work) {
    boolean isMarked = !work.list().isEmpty();
    if (isMarked && !tab.isLongerThanAPage(work.roll())) {
      Page.startNew(tab);
    }
    if (!isMarked) {
      tab.heading("Mark by mark");
      tab.paragraph("Nothing is marked yet.");
    } else {
      tab.listUnder(
          "Mark by mark",
          "Mark by mark",
          work.roll(),
          List.of(
              "Mark",
              "Place",
              "Action",
              "How many",
              "Counted in",
              "Leads to",
              "Why",
              "None",
              "Anew"),
          Sections.units(
              null, null, null, Units.RATIO, null, null, null, Units.RATIO, Units.RATIO));
      tab.note(
          "Action and why follow the cells of the tab Marks. What was counted follows when the job is written anew: where Anew is 1,"
              + " the action is no longer the one that was counted.");
      tab.entry("Marks without an action", work.withoutAction(), "none, when all is well");
      tab.entry("Marks decided anew since", work.decidedAnew(), "none, when all is well");
    }
    estimate
        .job()
        .rules()
        .roll()
        .ifPresent(
            roll -> {
              tab.heading("The firm's own rules for marks");
              tab.list(
                  roll,
                  List.of("Test", "Limit", "Action", "Why", "Whose"),
                  Sections.units(null, Units.RATIO, null, null, null));
            });
  }
}
