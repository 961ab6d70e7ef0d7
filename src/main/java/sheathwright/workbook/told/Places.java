package sheathwright.workbook.told;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import sheathwright.sheathing.place.PlaceKey;

/** Keys of places, in words that somebody finds a sheet by who has no map. */
public final class Places {

  private Places() {}

  /** Each of several keys by itself. */
  public static List<String> each(String keys) {
    return Arrays.stream(keys.split(",")).map(String::strip).toList();
  }

  /** Each key with where it lies; one that names no place, as it is. */
  public static String inWords(String keys) {
    return each(keys).stream()
        .map(key -> PlaceKey.read(key).map(Places::inWords).orElse(key))
        .collect(Collectors.joining("; "));
  }

  private static String inWords(PlaceKey key) {
    return "%s: course %s from the eave, sheet %s%s from left"
        .formatted(key, key.course(), key.number(), key.letter());
  }
}
