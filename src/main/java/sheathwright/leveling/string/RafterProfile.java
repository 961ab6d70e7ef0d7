package sheathwright.leveling.string;

import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/**
 * A rafter with its stations.
 *
 * @param rafter its name on the plane: {@code A-7}
 * @param center from the plane's left edge
 * @param stations at least one, in any order, no two at one place
 */
public record RafterProfile(String rafter, Figure<Length> center, List<RafterStation> stations) {

  /** Inches: lengths are taken to the millionth, so that closer places are one place. */
  private static final double APART = 1e-6;

  public RafterProfile {
    stations =
        stations.stream().sorted(Comparator.comparingDouble(RafterProfile::upInches)).toList();
    if (stations.isEmpty()) {
      throw new RefusedException("rafter %s has no station; read at least one".formatted(rafter));
    }
    for (int i = 1; i < stations.size(); i++) {
      if (upInches(stations.get(i)) - upInches(stations.get(i - 1)) < APART) {
        throw new RefusedException(
            "rafter %s has two stations at %s; a place is read once"
                .formatted(rafter, stations.get(i).up()),
            List.of(stations.get(i).up(), stations.get(i - 1).up()));
      }
    }
  }

  private static double upInches(RafterStation station) {
    return Reading.aside().number("station", station.up(), Units.INCH);
  }

  /**
   * A rafter as plain inches.
   *
   * @param rafter its name
   * @param center from the plane's left edge
   * @param along what was told at its stations
   */
  public record Plain(String rafter, double center, Profile along) {}

  /** Its center and its stations, read. */
  public Plain plain(Reading reading) {
    double across = reading.number("center of rafter " + rafter, center, Units.INCH);
    double[] places = new double[stations.size()];
    double[] heights = new double[stations.size()];
    for (int i = 0; i < stations.size(); i++) {
      RafterStation station = stations.get(i);
      String place = "rafter %s at %s".formatted(rafter, station.up());
      places[i] = reading.number("station of " + place, station.up(), Units.INCH);
      heights[i] = reading.number(place, station.amount(), Units.INCH);
    }
    return new Plain(rafter, across, new Profile(places, heights));
  }
}
