package sheathwright.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Word;

/** The option that somebody means who says a word: the table's, the trade's, or Java's. */
public final class Spoken {

  private Spoken() {}

  /**
   * The option of a set that a text names, whatever its case; spaces and underscores are hyphens,
   * and {@code #} is a number. The beginning of one word alone will do, up to a hyphen.
   */
  public static Optional<Enum<?>> option(String said, Class<? extends Enum<?>> options) {
    String wanted = folded(said);
    List<Enum<?>> begun = new ArrayList<>();
    for (Enum<?> option : options.getEnumConstants()) {
      if (names(option).anyMatch(wanted::equals)) {
        return Optional.of(option);
      }
      if (Choice.literal(option).plain().startsWith(wanted + "-")) {
        begun.add(option);
      }
    }
    return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
  }

  /** Whether a text names an option in full. */
  public static boolean names(String said, Enum<?> option) {
    return names(option).anyMatch(folded(said)::equals);
  }

  /** The words of a set that can be typed, the trade's own short ones behind theirs. */
  public static List<String> words(Class<? extends Enum<?>> options) {
    List<String> words = new ArrayList<>();
    for (Enum<?> option : options.getEnumConstants()) {
      List<String> trade = option instanceof Word word ? word.inTheTrade() : List.of();
      String plain = Choice.literal(option).plain();
      words.add(trade.isEmpty() ? plain : plain + " (" + String.join(", ", trade) + ")");
    }
    return words;
  }

  private static Stream<String> names(Enum<?> option) {
    Stream<String> own =
        option instanceof Word word
            ? Stream.concat(Stream.of(word.word(), word.alsoWritten()), word.inTheTrade().stream())
            : Stream.empty();
    return Stream.concat(Stream.of(option.name()), own)
        .filter(name -> !name.isEmpty())
        .map(Spoken::folded);
  }

  private static String folded(String said) {
    return said.strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("^(?:#|no\\.?[ _-]?)(?=\\d)", "no-")
        .replaceAll("[ _]+", "-");
  }
}
