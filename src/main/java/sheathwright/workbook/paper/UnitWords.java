package sheathwright.workbook.paper;

import sheathwright.job.life.Item;
import sheathwright.life.bill.AgreedItem;

/** What an item is counted in, as its owner reads it. */
final class UnitWords {

  private UnitWords() {}

  /** What it is and how it counts. */
  static String heading(AgreedItem agreed) {
    return agreed.item() == Item.SHEET
        ? label(agreed) + ": " + sheets(agreed.unit())
        : label(agreed);
  }

  /** What it is, beside a number of them. */
  static String label(AgreedItem agreed) {
    String label = agreed.item().label();
    return agreed.unit().equals("ft") ? label + ", in feet" : label;
  }

  /** What one of an item is called beside a number. */
  static String counted(Item item, String unit) {
    return item == Item.SHEET ? item.unit() : unit;
  }

  private static String sheets(String rule) {
    return switch (rule) {
      case "half" -> "a piece of up to 16 sq ft counts one half";
      case "area" -> "32 sq ft count one, the sum up to the next quarter";
      default -> "each piece counts one, whole or cut";
    };
  }
}
