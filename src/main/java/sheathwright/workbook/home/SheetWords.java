package sheathwright.workbook.home;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.sheathing.place.BillRule;

/** How a homeowner is told of sheets. */
final class SheetWords {

  private static final List<String> SMALL =
      List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

  private SheetWords() {}

  /** How many sheets are in a price, as the head of a sentence. */
  static String included(Figure<Sheets> sheets) {
    int count = (int) sheets.value();
    String number = count < SMALL.size() ? SMALL.get(count) : String.valueOf(count);
    return number + (count == 1 ? " deck sheet is" : " deck sheets are");
  }

  /** So many sheets. */
  static String counted(Figure<Sheets> sheets) {
    return Shown.with(Units.SHEET, sheets.value());
  }

  /** What counts as one sheet. */
  static String one(BillRule rule) {
    return switch (rule) {
      case PLACE -> "One sheet is any one piece of the deck that lies there, whole or cut.";
      case HALF ->
          "One sheet is a piece of the deck of over 16 square feet; a piece of up to 16 square feet counts half a sheet.";
      case AREA ->
          "One sheet is 32 square feet of the deck; what is replaced is added up, and goes up to the next quarter of a sheet.";
    };
  }
}
