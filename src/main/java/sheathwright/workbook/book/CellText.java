package sheathwright.workbook.book;

import java.util.regex.Pattern;

/**
 * A text as a workbook's file holds it. There {@code _x0041_} stands for a character by its number
 * (ST_Xstring of ECMA-376, 22.9.2.19), so that what a user typed just so is written with its first
 * underscore by number; and so is a character that XML cannot hold.
 */
final class CellText {

  private static final Pattern LOOKS_LIKE_A_NUMBER = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  /** Control characters, halves of a pair that stand alone, and what is no character at all. */
  private static final Pattern NOT_IN_XML =
      Pattern.compile("[^\\t\\n\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  private CellText() {}

  static String of(String text) {
    if (text.indexOf('_') < 0 && text.chars().allMatch(CellText::isUsual)) {
      return text;
    }
    String plain =
        text.contains("_x") ? LOOKS_LIKE_A_NUMBER.matcher(text).replaceAll("_x005F_") : text;
    return NOT_IN_XML
        .matcher(plain)
        .replaceAll(found -> "_x%04X_".formatted((int) found.group().charAt(0)));
  }

  /** Letters and signs that stand for themselves in every file, as nearly all do. */
  private static boolean isUsual(int character) {
    return character >= ' ' && character < Character.MIN_SURROGATE;
  }
}
