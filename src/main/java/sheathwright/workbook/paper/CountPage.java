package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.life.bill.ItemAccount;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** The page that counts: of each item what was found, what is in the price, and what is billed. */
final class CountPage {

  private static final int[] WIDTHS = {6, 11, 11, 30, 8, 8, 8, 8, 9, 9, 8, 8, 8, 8, 8, 8};

  private static final List<String> HEADINGS =
      List.of(
          "Mark",
          "Place",
          "On",
          "Why",
          "How many",
          "Of these refused",
          "Left of it",
          "Up to here",
          "Below both limits",
          "Below the ceiling",
          "In the price",
          "Billed",
          "Price open",
          "No charge",
          "On earlier orders",
          "Still to order");

  private CountPage() {}

  static Tab tab(Paper paper) {
    return paper.page("How it is counted", WIDTHS);
  }

  static void write(Tab tab, List<ItemAccount> items) {
    tab.note(
        "The marks in the order in which they were found. The first are those in the agreed price; then come those that are billed, up to the ceiling and to where both sides talk again.");
    List<Unit<?>> units = new ArrayList<>(Sections.units(null, null, null, null));
    units.addAll(Collections.nCopies(HEADINGS.size() - units.size(), Units.RATIO));
    for (ItemAccount item : items) {
      tab.heading(UnitWords.heading(item.agreed()));
      tab.list(item.roll(), HEADINGS, units);
    }
  }
}
