package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.workbook.book.Tab;

/** What is bought: the order for the office, the materials of the price for the homeowner. */
final class BuyPage {

  private BuyPage() {}

  static void write(Tab tab, Estimate estimate, LevelPages levels) {
    if (tab.audience().isOffice()) {
      order(tab, estimate);
    } else {
      included(tab, estimate);
    }
    levels.stock(tab);
  }

  private static void order(Tab tab, Estimate estimate) {
    tab.heading("The order");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    tab.list(
        estimate.order(),
        List.of("What", "Needed", "Unit", "In a package", "Packages to buy, incl. overage"),
        Sections.units(null, Units.RATIO, null, Units.RATIO, Units.RATIO));
    tab.heading("Counts behind it");
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
