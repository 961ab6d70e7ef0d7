package sheathwright.catalog;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The order in which people count what they number: R-2 before R-10, A-3-5 before A-3-10. Names
 * that count alike stand as their letters do, so that two names are never one.
 */
public enum NaturalOrder implements Comparator<String> {
  OF_NAMES;

  /** Digits that stand together, or anything else that does. */
  private static final Pattern PART = Pattern.compile("[0-9]+|[^0-9]+");

  @Override
  public int compare(String one, String other) {
    List<String> ones = parts(one);
    List<String> others = parts(other);
    for (int i = 0; i < Math.min(ones.size(), others.size()); i++) {
      int order = byPart(ones.get(i), others.get(i));
      if (order != 0) {
        return order;
      }
    }
    int shorterFirst = Integer.compare(ones.size(), others.size());
    return shorterFirst != 0 ? shorterFirst : one.compareTo(other);
  }

  private static List<String> parts(String name) {
    List<String> parts = new ArrayList<>();
    Matcher each = PART.matcher(name.toLowerCase(Locale.ROOT));
    while (each.find()) {
      parts.add(each.group());
    }
    return parts;
  }

  private static int byPart(String one, String other) {
    return isCount(one) && isCount(other)
        ? new BigInteger(one).compareTo(new BigInteger(other))
        : one.compareTo(other);
  }

  private static boolean isCount(String part) {
    return part.charAt(0) >= '0' && part.charAt(0) <= '9';
  }
}
