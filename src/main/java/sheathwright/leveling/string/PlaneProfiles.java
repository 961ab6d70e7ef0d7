package sheathwright.leveling.string;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/** The rafters of one plane from the left, along each and across them. */
public final class PlaneProfiles {

  private final String plane;
  private final List<RafterProfile> rafters;

  public PlaneProfiles(String plane, List<RafterProfile> rafters) {
    this.plane = plane;
    this.rafters =
        rafters.stream().sorted(Comparator.comparingDouble(PlaneProfiles::center)).toList();
    for (int i = 1; i < this.rafters.size(); i++) {
      RafterProfile left = this.rafters.get(i - 1);
      RafterProfile right = this.rafters.get(i);
      if (center(right) - center(left) < 1) {
        throw new RefusedException(
            "rafters %s and %s of plane %s have their centers at one place; two side by side are read as one"
                .formatted(left.rafter(), right.rafter(), plane),
            List.of(right.center(), left.center()));
      }
    }
  }

  List<RafterProfile> rafters() {
    return rafters;
  }

  /** The plane's name, as it may stand inside the name of a cell. */
  public String word() {
    return plane.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  private static double center(RafterProfile rafter) {
    return Reading.aside().number("center", rafter.center(), Units.INCH);
  }

  /** The rafters from the left, read. */
  Plain plain(Reading reading) {
    return new Plain(rafters.stream().map(rafter -> rafter.plain(reading)).toList());
  }

  /**
   * The rafters as plain inches.
   *
   * @param rafters from the left
   */
  record Plain(List<RafterProfile.Plain> rafters) {

    /** Every height up the slope at which something was read. */
    TreeSet<Double> heights() {
      TreeSet<Double> heights = new TreeSet<>();
      rafters.forEach(
          rafter -> Arrays.stream(rafter.along().places()).forEach(up -> heights.add(up)));
      return heights;
    }

    /**
     * Across the rafters at one height, over those that were read on both sides of it or at it;
     * empty if there is none.
     */
    Profile across(double up) {
      List<RafterProfile.Plain> crossed =
          rafters.stream().filter(rafter -> rafter.along().reaches(up)).toList();
      return new Profile(
          crossed.stream().mapToDouble(RafterProfile.Plain::center).toArray(),
          crossed.stream().mapToDouble(rafter -> rafter.along().at(up)).toArray());
    }
  }
}
