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

  private static final int[] WIDTHS = {6, 9, 11, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7};

  /** It stands with the mark on another page, and would make lines tall here. */
  private static final String REASON = "reason";

  private static final List<String> HEADINGS =
      List.of(
          "Mark",
          "Place",
          "On",
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
    List<Unit<?>> units = new ArrayList<>(Sections.units(null, null, null));
    units.addAll(Collections.nCopies(HEADINGS.size() - units.size(), Units.RATIO));
    for (ItemAccount item : items) {
      List<String> shown =
          item.roll().columns().stream().filter(column -> !column.equals(REASON)).toList();
      tab.heading(UnitWords.heading(item.agreed()));
      tab.list(item.roll().only(shown), HEADINGS, units);
    }
  }
}
