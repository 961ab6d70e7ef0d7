package sheathwright.leveling.string;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sheathwright.leveling.string.Neighbors.Spot;

/**
 * Which readings are not to be heard where others are judged. One wrong reading makes its neighbors
 * look wrong too; so the one whose silence clears up most is silenced first, and so on until nobody
 * is contradicted any more.
 */
final class GrossErrors {

  /**
   * How many of the most contradicted are tried at each turn. Of 160 invented planes with one to
   * eight wrong readings (SuspectWork): half and double suspect the same; one suspects 15 right
   * ones more.
   */
  private static final int TRIED = 8;

  /**
   * Where more readings than one in so many are contradicted, there is nobody to believe. Half and
   * double suspect the same on those planes, which have too few wrong readings for it; a sixteenth
   * overlooks two more.
   */
  private static final int BELIEVED = 4;

  private final PlaneProfiles.Plain plane;
  private final double multiple;
  private final double floor;
  private final double part;

  private GrossErrors(PlaneProfiles.Plain plane, SuspicionRules.Plain rules) {
    this.plane = plane;
    this.multiple = rules.multiple();
    this.floor = rules.floor();
    this.part = rules.part();
  }

  /** What is left of the readings' neighbors when the contradicted ones are silent. */
  static Neighbors silenced(PlaneProfiles.Plain plane, SuspicionRules.Plain rules) {
    return new GrossErrors(plane, rules).silenced();
  }

  private Neighbors silenced() {
    Set<Spot> silent = new HashSet<>();
    Neighbors heard = new Neighbors(plane, silent);
    int most = heard.spots().size() / BELIEVED;
    while (silent.size() < most) {
      List<Spot> worst = worst(heard, silent);
      if (worst.isEmpty()) {
        return heard;
      }
      heard =
          worst.stream()
              .map(spot -> with(silent, spot))
              .min(Comparator.comparingDouble(this::excess))
              .orElseThrow();
      silent.clear();
      silent.addAll(heard.unheard());
    }
    return heard;
  }

  private Neighbors with(Set<Spot> silent, Spot spot) {
    Set<Spot> more = new HashSet<>(silent);
    more.add(spot);
    return new Neighbors(plane, more);
  }

  private List<Spot> worst(Neighbors heard, Set<Spot> silent) {
    return heard.spots().stream()
        .filter(spot -> !silent.contains(spot) && excess(heard, spot) > 0)
        .sorted(Comparator.comparingDouble((Spot spot) -> -excess(heard, spot)))
        .limit(TRIED)
        .toList();
  }

  private double excess(Neighbors heard) {
    return heard.spots().stream()
        .filter(spot -> !heard.unheard().contains(spot))
        .mapToDouble(spot -> excess(heard, spot))
        .sum();
  }

  private double excess(Neighbors heard, Spot spot) {
    double departure = heard.departure(spot);
    double doubt = heard.doubt(spot);
    double bent = Math.max(doubt * floor, part * heard.beside(spot));
    return departure <= bent
        ? 0
        : Math.max(0, departure - Math.max(bent, doubt * multiple * heard.spread(spot))) / doubt;
  }
}
