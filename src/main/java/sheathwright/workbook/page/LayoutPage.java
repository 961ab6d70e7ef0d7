package sheathwright.workbook.page;

import sheathwright.job.Estimate;
import sheathwright.workbook.book.Tab;

/** What the order is counted from. */
final class LayoutPage {

  private LayoutPage() {}

  static void write(Tab tab, Estimate estimate, LevelPages levels) {
    tab.heading("Counts behind the order");
    tab.entry("Deck sheets, by area", estimate.deckSheets(), "a quick count, not a layout");
    tab.shown("Nails in each sheet", estimate.nailsInASheet(), "away from the roof's edges");
    tab.shown(
        "Nails in a sheet near them", estimate.site().nailing().inASheetNearEdges(), "as ordered");
    DeckPages.layout(tab, estimate);
    DeckPages.cutting(tab, estimate);
    levels.stock(tab);
  }
}
