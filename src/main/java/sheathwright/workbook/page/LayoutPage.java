package sheathwright.workbook.page;

import sheathwright.job.Estimate;
import sheathwright.workbook.book.Tab;

/** What the order is counted from, and the materials of the price for the homeowner. */
final class LayoutPage {

  private LayoutPage() {}

  static void write(Tab tab, Estimate estimate, LevelPages levels) {
    if (tab.audience().isOffice()) {
      counts(tab, estimate);
    } else {
      included(tab, estimate);
    }
    levels.stock(tab);
  }

  private static void counts(Tab tab, Estimate estimate) {
    tab.heading("Counts behind the order");
    tab.entry("Deck sheets, by area", estimate.deckSheets(), "a quick count, not a layout");
    tab.shown("Nails in each sheet", estimate.nailsInASheet(), "away from the roof's edges");
    tab.shown(
        "Nails in a sheet near them", estimate.site().nailing().inASheetNearEdges(), "as ordered");
    DeckPages.layout(tab, estimate);
    DeckPages.cutting(tab, estimate);
  }

  private static void included(Tab tab, Estimate estimate) {
    tab.heading("Materials included");
    tab.repeat("Deck sheets", estimate.plannedSheets(), "");
    tab.entry("Sheets of the whole deck", estimate.deckSheets(), "a count by area");
    tab.entry("The same, as they would be laid", estimate.deck().layout().sheets(), "");
    tab.shown("Nails in each sheet", estimate.nailsInASheet(), "");
  }
}
