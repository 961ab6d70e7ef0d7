package sheathwright.repl.line;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.catalog.Catalog;

/** A word that stands behind a number as a unit does, and is none. */
public final class UnknownUnit {

  /** A number with a word behind it that ends what is typed, or a part of it. */
  private static final Pattern SAID =
      Pattern.compile("(?<![\\w.\"'])\\d[\\d,.]*\\s*([A-Za-z]{1,15})(?=\\s*(?:[-+*/,;)]|$))");

  private UnknownUnit() {}

  /** The first such word of a line. */
  public static Optional<String> in(String typed) {
    Matcher said = SAID.matcher(typed);
    while (said.find()) {
      if (UnitWord.words().noneMatch(said.group(1)::equals)) {
        return Optional.of(said.group(1));
      }
    }
    return Optional.empty();
  }

  /** The unit that was meant, if one is spelled nearly so. */
  public static Optional<String> nearest(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    ToIntFunction<String> distance = unit -> Catalog.distance(small, unit);
    return UnitWord.words()
        .min(Comparator.comparingInt(distance))
        .filter(unit -> distance.applyAsInt(unit) <= word.length() / 3);
  }
}
