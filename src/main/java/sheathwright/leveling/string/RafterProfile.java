package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;

/**
 * A rafter with its stations.
 *
 * @param rafter its name on the plane: {@code A-7}
 * @param center from the plane's left edge
 * @param stations at least one, in any order, no two at one place
 */
public record RafterProfile(String rafter, Figure<Length> center, List<RafterStation> stations) {

  private static final double APART = 1e-6;

  public RafterProfile {
    stations =
        stations.stream().sorted(Comparator.comparingDouble(RafterStation::upInches)).toList();
    if (stations.isEmpty()) {
      throw new RefusedException("rafter %s has no station; read at least one".formatted(rafter));
    }
    for (int i = 1; i < stations.size(); i++) {
      if (stations.get(i).upInches() - stations.get(i - 1).upInches() < APART) {
        throw new RefusedException(
            "rafter %s has two stations at %s; a place is read once"
                .formatted(rafter, stations.get(i).up()),
            List.of(stations.get(i).up(), stations.get(i - 1).up()));
      }
    }
  }

  /** The same stations as plain inches. */
  public Profile inches() {
    return new Profile(
        stations.stream().mapToDouble(RafterStation::upInches).toArray(),
        stations.stream().mapToDouble(RafterStation::inches).toArray());
  }

  double centerInches() {
    return center.in(Units.INCH).value();
  }

  /** What an answer found on this rafter was found for. */
  List<Solution.Input> given() {
    List<Solution.Input> given = new ArrayList<>();
    given.add(new Solution.Input("center of rafter " + rafter, center));
    for (RafterStation station : stations) {
      String place = "rafter %s at %s".formatted(rafter, station.up());
      given.add(new Solution.Input("station of " + place, station.up()));
      given.add(new Solution.Input(place, station.amount()));
    }
    return given;
  }
}
