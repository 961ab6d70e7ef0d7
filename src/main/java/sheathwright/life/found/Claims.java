package sheathwright.life.found;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Reading;
import sheathwright.job.Deck;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;

/**
 * Which mark each replaced place is counted with: every place once, however many marks touch it,
 * with the one that is counted first.
 */
final class Claims {

  private final Map<String, Map<PlaceKey, Double>> byMark = new LinkedHashMap<>();
  private final Map<PlaceKey, String> claimed = new HashMap<>();
  private final Set<PlaceKey> whole = new HashSet<>();

  /**
   * The places that are replaced.
   *
   * @param marks as they were read, in the order of their table
   */
  Claims(Reading reading, List<Deck.Part> parts, List<ReadMark> marks) {
    for (Deck.Part part : parts) {
      if (part.patches().isEmpty()) {
        continue;
      }
      Map<PlaceKey, Double> areas = part.patched(reading);
      whole.addAll(part.replacedWhole(reading));
      Map<PlaceKey, Set<String>> cured = new LinkedHashMap<>();
      for (Patch patch : part.patches().get().list()) {
        cured.computeIfAbsent(patch.place(), key -> new HashSet<>()).addAll(patch.marks());
      }
      areas.forEach((place, area) -> claim(place, area, among(cured.get(place), marks)));
    }
  }

  private static List<ReadMark> among(Set<String> keys, List<ReadMark> marks) {
    return marks.stream().filter(mark -> keys.contains(mark.key())).toList();
  }

  private void claim(PlaceKey place, double area, List<ReadMark> marks) {
    ReadMark first = marks.stream().min(ReadMark.COUNTED).orElseThrow();
    claimed.put(place, first.key());
    byMark.computeIfAbsent(first.key(), key -> new LinkedHashMap<>()).put(place, area);
  }

  /** Square inches of the new panel in each place that is counted with a mark. */
  List<Double> of(String mark) {
    return new ArrayList<>(byMark.getOrDefault(mark, Map.of()).values());
  }

  /** Which mark a place is counted with; empty where it is not replaced. */
  String claimant(Place place) {
    return claimed.getOrDefault(place.key(), "");
  }

  /** Whether a place is replaced whole, so that nothing of the old sheet stays in it. */
  boolean isWhole(Place place) {
    return whole.contains(place.key());
  }
}
