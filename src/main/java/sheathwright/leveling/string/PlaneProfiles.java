package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;

/** The rafters of one plane from the left, along each and across them. */
public final class PlaneProfiles {

  private final String plane;
  private final List<RafterProfile> rafters;

  public PlaneProfiles(String plane, List<RafterProfile> rafters) {
    this.plane = plane;
    this.rafters =
        rafters.stream().sorted(Comparator.comparingDouble(RafterProfile::centerInches)).toList();
    for (int i = 1; i < this.rafters.size(); i++) {
      RafterProfile left = this.rafters.get(i - 1);
      RafterProfile right = this.rafters.get(i);
      if (right.centerInches() - left.centerInches() < 1) {
        throw new RefusedException(
            "rafters %s and %s of plane %s have their centers at one place; two side by side are read as one"
                .formatted(left.rafter(), right.rafter(), plane),
            List.of(right.center(), left.center()));
      }
    }
  }

  String plane() {
    return plane;
  }

  List<RafterProfile> rafters() {
    return rafters;
  }

  /** The plane's name, as it may stand inside the name of a cell. */
  public String word() {
    return plane.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  List<Solution.Input> given() {
    return rafters.stream().flatMap(rafter -> rafter.given().stream()).toList();
  }

  /** Every height up the slope at which something was read. */
  TreeSet<Double> heights() {
    TreeSet<Double> heights = new TreeSet<>();
    rafters.forEach(
        rafter -> rafter.stations().forEach(station -> heights.add(station.upInches())));
    return heights;
  }

  /**
   * Across the rafters at one height, over those that were read on both sides of it or at it; empty
   * if there is none.
   */
  Profile across(double up) {
    List<double[]> crossed = new ArrayList<>();
    for (RafterProfile rafter : rafters) {
      Profile along = rafter.inches();
      if (along.reaches(up)) {
        crossed.add(new double[] {rafter.centerInches(), along.at(up)});
      }
    }
    return new Profile(
        crossed.stream().mapToDouble(point -> point[0]).toArray(),
        crossed.stream().mapToDouble(point -> point[1]).toArray());
  }
}
