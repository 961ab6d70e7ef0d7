package sheathwright.workbook.paper;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.Cause;
import sheathwright.job.life.MarkFields;

/** Why marks were there, where that goes on: whoever lives below has to have it put right. */
final class Causes {

  private static final Map<Cause, String> PUT_RIGHT =
      new EnumMap<>(
          Map.of(
              Cause.LEAK, "the place where the water came in is made tight",
              Cause.FAN, "the fan blows outside and not into the attic",
              Cause.EAVE_ICE, "the ceiling below is made tight and the attic stays cold",
              Cause.CONDENSATION,
                  "moist air from the house is kept out of the attic, and the attic is aired"));

  private static final Map<Cause, String> FROM =
      new EnumMap<>(
          Map.of(
              Cause.LEAK, "a leak",
              Cause.FAN, "a fan that blows into the attic",
              Cause.EAVE_ICE, "ice at the eave",
              Cause.CONDENSATION, "moist air that turned to water on the wood"));

  private Causes() {}

  /** A sentence each for what comes back unless it is put right. */
  static List<String> sentences(Estimate estimate) {
    Set<Cause> all = EnumSet.noneOf(Cause.class);
    for (Deck.Marked marked : estimate.deck().marked()) {
      if (marked.row().has(MarkFields.CAUSE)) {
        all.add(marked.row().of(MarkFields.CAUSE).value());
      }
    }
    return all.stream()
        .filter(PUT_RIGHT::containsKey)
        .map(
            cause ->
                "Some of it came from %s. That comes back unless %s."
                    .formatted(FROM.get(cause), PUT_RIGHT.get(cause)))
        .toList();
  }
}
