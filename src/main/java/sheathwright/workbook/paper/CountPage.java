package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.life.bill.ItemAccount;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** The page that counts: of each item what was found, what is in the price, and what is billed. */
final class CountPage {

  private static final int[] WIDTHS = {8, 12, 11, 34, 8, 9, 9, 9, 9, 9, 9, 9, 9};

  private static final List<String> HEADINGS =
      List.of(
          "Mark",
          "Place",
          "Found on",
          "Why",
          "How many",
          "Of these refused",
          "Up to here",
          "In the price",
          "Billed",
          "Price open",
          "No charge",
          "Earlier orders",
          "This order");

  private CountPage() {}

  static Tab tab(Paper paper) {
    return paper.page("How it is counted", WIDTHS);
  }

  static void write(Tab tab, List<ItemAccount> items) {
    tab.note(
        "The marks in the order in which they were found. The first are those in the agreed price; then come those that are billed.");
    for (ItemAccount item : items) {
      tab.heading(item.item().label() + ", counted by the " + item.agreed().unit());
      tab.list(
          item.roll(),
          HEADINGS,
          Sections.units(
              null,
              null,
              null,
              null,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO,
              Units.RATIO));
    }
  }
}
