package sheathwright.workbook.book;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names of cells and ranges in one workbook: lower case, unique, never too long, and never
 * anything that a spreadsheet program reads as a cell address or a truth value. A name that is too
 * long keeps its beginning and its end, and a number between them that is made from all of it.
 */
final class Names {

  private static final Pattern ADDRESS =
      Pattern.compile("[a-z]{1,3}\\d+|r\\d*c\\d*|r\\d+|c\\d+|r|c|true|false");

  /** Far below the 255 that a program allows, so that formulas stay short as well. */
  private static final int LONGEST = 80;

  private static final int KEPT = 35;

  private static final Pattern NOT_LEGAL = Pattern.compile("[^a-z0-9_]+");

  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> numbers = new HashMap<>();

  /** A name like the wanted one; if it is taken, one that says whose it is as well. */
  String taken(String wanted, String owner) {
    String name = legal(wanted);
    if (taken.add(name)) {
      return name;
    }
    String owned = legal(owner + "_" + wanted);
    if (taken.add(owned)) {
      return owned;
    }
    int number = numbers.getOrDefault(owned, 1);
    String numbered;
    do {
      number++;
      numbered = legal(owned + "_" + number);
    } while (!taken.add(numbered));
    numbers.put(owned, number);
    return numbered;
  }

  /** Leaves a name to what is called by it already. */
  void leave(String name) {
    taken.add(legal(name));
  }

  static String legal(String wanted) {
    String lower = wanted.toLowerCase(Locale.ROOT);
    String plain =
        lower.chars().allMatch(Names::isLegal) ? lower : NOT_LEGAL.matcher(lower).replaceAll("_");
    String started = plain.isEmpty() || !Character.isLetter(plain.charAt(0)) ? "n_" + plain : plain;
    boolean isAddress = started.indexOf('_') < 0 && ADDRESS.matcher(started).matches();
    return shortened(isAddress ? started + "_" : started);
  }

  private static boolean isLegal(int character) {
    return character >= 'a' && character <= 'z'
        || character >= '0' && character <= '9'
        || character == '_';
  }

  private static String shortened(String name) {
    if (name.length() <= LONGEST) {
      return name;
    }
    String end = name.substring(name.length() - KEPT);
    return "%s_%08x_%s".formatted(name.substring(0, KEPT), name.hashCode(), end);
  }
}
