package sheathwright.workbook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names of cells and ranges in one workbook: lower case, unique without regard to case, and
 * never anything that a spreadsheet program reads as a cell address or a truth value.
 */
final class Names {

  private static final Pattern ADDRESS =
      Pattern.compile("[a-z]{1,3}\\d+|r\\d*c\\d*|r\\d+|c\\d+|r|c|true|false");

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
    do {
      number++;
    } while (!taken.add(owned + "_" + number));
    numbers.put(owned, number);
    return owned + "_" + number;
  }

  static String legal(String wanted) {
    String plain = wanted.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9_]+", "_");
    String started = plain.isEmpty() || !Character.isLetter(plain.charAt(0)) ? "n_" + plain : plain;
    return ADDRESS.matcher(started).matches() ? started + "_" : started;
  }
}
