package sheathwright.catalog;

import static java.util.Comparator.comparingInt;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The name that somebody meant who wrote another one. */
public final class Nearest {

  private Nearest() {}

  /** The known name that is a slip or two away, without regard to case, blanks and hyphens. */
  public static Optional<String> to(String given, Collection<String> known) {
    String wanted = folded(given);
    return known.stream()
        .filter(name -> Catalog.distance(wanted, folded(name)) <= 1 + wanted.length() / 4)
        .min(comparingInt(name -> Catalog.distance(wanted, folded(name))));
  }

  /** The same as a question behind a message: {@code "; did you mean marks"}, or nothing. */
  public static String asked(String given, Collection<String> known) {
    return to(given, known).map("; did you mean %s"::formatted).orElse("");
  }

  static String folded(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[_ -]", "");
  }
}
