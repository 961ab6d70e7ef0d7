package sheathwright.catalog;

import static java.util.Comparator.comparingInt;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The name that somebody meant who wrote another one. */
public final class Nearest {

  private static final int LETTERS_A_SLIP = 4;
  private static final int FEWEST_LETTERS = 3;

  /** More words than these are not read to their end. */
  private static final int FEW = 12;

  private static final Pattern BETWEEN_WORDS = Pattern.compile("[_ -]");

  private Nearest() {}

  /**
   * The known name that is a slip or two away, or that the given one begins, without regard to
   * case, blanks and hyphens.
   */
  public static Optional<String> to(String given, Collection<String> known) {
    String wanted = folded(given);
    return known.stream()
        .filter(name -> isNear(wanted, folded(name)))
        .min(comparingInt(name -> Catalog.distance(wanted, folded(name))));
  }

  /** The same as a question behind a message: {@code " (did you mean marks?)"}, or nothing. */
  public static String asked(String given, Collection<String> known) {
    return to(given, known).map(" (did you mean %s?)"::formatted).orElse("");
  }

  /**
   * What is said behind a word that is none of those that may be given: the nearest, and all of
   * them where they are few or none is near.
   */
  public static String instead(String given, Collection<String> words) {
    Optional<String> nearest = to(given, words);
    return nearest.isPresent() && words.size() > FEW
        ? "; did you mean %s?".formatted(nearest.get())
        : asked(given, words) + "; it must be one of " + String.join(", ", words);
  }

  private static boolean isNear(String wanted, String name) {
    boolean isBegun = wanted.length() >= FEWEST_LETTERS && name.startsWith(wanted);
    return isBegun || Catalog.distance(wanted, name) <= 1 + wanted.length() / LETTERS_A_SLIP;
  }

  /** A word as it is looked for: small letters, one of many. */
  public static String singular(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    return small.length() > FEWEST_LETTERS && small.endsWith("s") && !small.endsWith("ss")
        ? small.substring(0, small.length() - 1)
        : small;
  }

  static String folded(String name) {
    return BETWEEN_WORDS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
  }
}
