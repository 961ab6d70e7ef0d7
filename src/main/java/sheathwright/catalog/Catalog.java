package sheathwright.catalog;

import static java.util.Comparator.comparingInt;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toCollection;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import sheathwright.figure.RefusedException;

/** Every library function, found through the index that the build makes of the doc comments. */
public final class Catalog {

  private static final String INDEX = "functions.properties";
  private static final Catalog SHIPPED = new Catalog(index());

  private final CardReader reader;
  private final Map<String, String> places = new LinkedHashMap<>();
  private final Map<String, Card> read = new ConcurrentHashMap<>();

  private Catalog(Properties index) {
    reader = new CardReader(index);
    reader.places().forEach(place -> places.put(Nearest.folded(CardReader.name(place)), place));
  }

  /** The functions that ship with the library. */
  public static Catalog shipped() {
    return SHIPPED;
  }

  /** Every function, by room and name. */
  public List<Card> cards() {
    return places.values().stream().map(this::at).toList();
  }

  /** The packages in which functions stand. */
  public Set<String> packages() {
    return places.values().stream()
        .map(place -> place.substring(0, place.lastIndexOf('.')))
        .collect(toCollection(LinkedHashSet::new));
  }

  /** The card of one function; it is read when it is first asked for, as classes cost time. */
  private Card at(String place) {
    return read.computeIfAbsent(place, reader::card);
  }

  /** The function that is called exactly so, as tables write it or as Java does. */
  public Optional<Card> called(String name) {
    return find(name).filter(card -> card.name().equals(name) || card.call().equals(name));
  }

  /** The function of this name without regard to case, blanks and hyphens, if there is one. */
  public Optional<Card> find(String name) {
    return Optional.ofNullable(places.get(Nearest.folded(name))).map(this::at);
  }

  /**
   * The function of this name.
   *
   * @param name in snake case or as Java writes it, without regard to case
   * @throws RefusedException if there is none, with the nearest names
   */
  public Card named(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new RefusedException(
                    "there is no function \"%.60s\"; the nearest are %s"
                        .formatted(name, nearest(Nearest.folded(name)))));
  }

  /** The functions that speak of all these words, best first. */
  public List<Card> about(List<String> words) {
    return cards().stream()
        .filter(card -> words.stream().allMatch(word -> weight(card, word) > 0))
        .sorted(comparingInt(card -> -words.stream().mapToInt(word -> weight(card, word)).sum()))
        .toList();
  }

  private static int weight(Card card, String word) {
    String wanted = Nearest.singular(word);
    int weight = card.name().contains(wanted) ? 4 : 0;
    weight += card.words().stream().anyMatch(each -> speaksOf(each, wanted)) ? 4 : 0;
    weight += speaksOf(card.text().summary(), wanted) ? 2 : 0;
    boolean elsewhere =
        card.parameters().stream().anyMatch(parameter -> parameter.column().contains(wanted))
            || speaksOf(card.text().notes(), wanted)
            || card.room().contains(wanted);
    return weight + (elsewhere ? 1 : 0);
  }

  private static boolean speaksOf(String text, String wanted) {
    return text.toLowerCase(Locale.ROOT).contains(wanted);
  }

  private String nearest(String wanted) {
    return cards().stream()
        .sorted(comparingInt(card -> distance(wanted, Nearest.folded(card.name()))))
        .limit(3)
        .map(Card::name)
        .collect(joining(", "));
  }

  /** The number of single letters to change, put in or take out to make one word of the other. */
  public static int distance(String left, String right) {
    int[] above = new int[right.length() + 1];
    Arrays.setAll(above, column -> column);
    for (int row = 1; row <= left.length(); row++) {
      int[] here = new int[right.length() + 1];
      here[0] = row;
      for (int column = 1; column <= right.length(); column++) {
        int changed =
            above[column - 1] + (left.charAt(row - 1) == right.charAt(column - 1) ? 0 : 1);
        here[column] = Math.min(changed, Math.min(above[column], here[column - 1]) + 1);
      }
      above = here;
    }
    return above[right.length()];
  }

  private static Properties index() {
    Properties index = new Properties();
    try (InputStream stream = Catalog.class.getResourceAsStream(INDEX)) {
      index.load(stream);
      return index;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
