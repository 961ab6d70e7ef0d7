package sheathwright.job.table;

import static java.util.Comparator.comparingDouble;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import sheathwright.catalog.Nearest;

/**
 * The key or column that somebody meant who wrote one that is not there: a slip of letters, or else
 * the one that shares most words with it, by its name or by what it is.
 *
 * @param labels what each is, by its name
 * @param isOfAJob whether a command lists them
 */
public record Meant(Map<String, String> labels, boolean isOfAJob) {

  /** More names than these are not all said. */
  private static final int FEW = 20;

  private static final Pattern BETWEEN = Pattern.compile("[^\\p{Alnum}]+");

  /** Units, and words that say nothing of what is meant. */
  private static final Set<String> IDLE =
      Set.of(
          "in", "ft", "usd", "pct", "psf", "lb", "h", "of", "the", "a", "to", "on", "at", "for",
          "known");

  /** Fewer letters do not tell one word from another. */
  private static final int STEM = 4;

  private static final double BY_NAME = 1;
  private static final double BY_LABEL = 0.6;

  /** At least so much of what was written has to be found again. */
  private static final double LEAST = 0.5;

  /** Of names that say nothing of themselves. */
  public static Meant of(Collection<String> names) {
    Map<String, String> labels = new LinkedHashMap<>();
    names.forEach(name -> labels.put(name, ""));
    return new Meant(labels, false);
  }

  /** Of fields, by their names and labels. */
  static Meant of(List<? extends Field<?>> fields) {
    Map<String, String> labels = new LinkedHashMap<>();
    fields.forEach(field -> labels.putIfAbsent(field.name(), field.label()));
    return new Meant(labels, true);
  }

  Set<String> names() {
    return labels.keySet();
  }

  /** The nearest, if one is near. */
  Optional<String> nearest(String given) {
    return Nearest.to(given, names()).or(() -> byWords(given));
  }

  private Optional<String> byWords(String given) {
    List<String> wanted = words(given);
    return names().stream()
        .filter(name -> share(wanted, name) >= LEAST)
        .max(comparingDouble(name -> share(wanted, name)));
  }

  /** How much of what was wanted a name has, less a little for what else it has. */
  private double share(List<String> wanted, String name) {
    List<String> named = words(name);
    List<String> labeled = words(labels.get(name));
    double found =
        wanted.stream()
            .mapToDouble(word -> has(named, word) ? BY_NAME : has(labeled, word) ? BY_LABEL : 0)
            .sum();
    return wanted.isEmpty() ? 0 : found / wanted.size() - 0.01 * named.size();
  }

  private static boolean has(List<String> words, String wanted) {
    return words.stream()
        .anyMatch(
            word ->
                word.equals(wanted)
                    || (Math.min(word.length(), wanted.length()) >= STEM
                        && (word.startsWith(wanted) || wanted.startsWith(word))));
  }

  private static List<String> words(String text) {
    return Arrays.stream(BETWEEN.split(text.toLowerCase(Locale.ROOT)))
        .filter(word -> !word.isEmpty() && !IDLE.contains(word))
        .toList();
  }

  /**
   * What is said behind a name that is not known: the nearest, or else what there is.
   *
   * @param file of which table, for whoever has to look
   * @param all said before all of them, where they are few
   * @param others said behind them
   */
  String said(String given, String file, String all, String others) {
    return nearest(given)
        .map("; did you mean %s?"::formatted)
        .orElseGet(
            () ->
                !isOfAJob || names().size() <= FEW
                    ? "; %s %s%s".formatted(all, String.join(", ", names()), others)
                    : "; %s has %s others, and none is called nearly so: ./sheathwright tables %s lists them"
                        .formatted(file, names().size(), word(file)));
  }

  /** A table's name without its folder and its ending. */
  private static String word(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    return name.contains(".") ? name.substring(0, name.indexOf('.')) : name;
  }
}
