package sheathwright.levelling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the readings round a reading say that it should be, in inches. Along the rafter: the
 * straight line through the readings before and after it. Across: the straight line through the
 * rafters to its left and right, at its height. At an end it is the line through the next two, run
 * on. Of the two answers the one nearer to the reading counts: a rafter that sags alone is smooth
 * along its length, a dip over all rafters is smooth across them, and only a wrong reading is
 * neither. The rule is ours.
 */
final class Neighbours {

  /**
   * One reading as its neighbours see it.
   *
   * @param expected what they say; the reading itself if there are too few to say anything
   * @param spread half of the readings on this rafter and on the two beside it depart by no more
   */
  record Opinion(double expected, double spread) {}

  private final List<RafterProfile> rafters;
  private final List<Profile> lines;
  private final List<double[]> expected = new ArrayList<>();

  Neighbours(PlaneProfiles plane) {
    this.rafters = plane.rafters();
    this.lines = rafters.stream().map(RafterProfile::inches).toList();
    for (int rafter = 0; rafter < rafters.size(); rafter++) {
      double[] along = new double[lines.get(rafter).places().length];
      for (int station = 0; station < along.length; station++) {
        along[station] = expected(rafter, station);
      }
      expected.add(along);
    }
  }

  Opinion of(int rafter, int station) {
    return new Opinion(expected.get(rafter)[station], spread(rafter, station));
  }

  private double expected(int rafter, int station) {
    double read = lines.get(rafter).heights()[station];
    return Stream.of(along(rafter, station), across(rafter, station))
        .flatMap(Optional::stream)
        .min(java.util.Comparator.comparingDouble(said -> Math.abs(said - read)))
        .orElse(read);
  }

  private Optional<Double> along(int rafter, int station) {
    double[] places = lines.get(rafter).places();
    double[] heights = lines.get(rafter).heights();
    if (places.length < 3) {
      return Optional.empty();
    }
    int[] two = twoBeside(station, places.length);
    return Optional.of(
        onLine(places[station], places[two[0]], heights[two[0]], places[two[1]], heights[two[1]]));
  }

  private Optional<Double> across(int rafter, int station) {
    double up = lines.get(rafter).places()[station];
    if (rafters.size() < 3) {
      return Optional.empty();
    }
    int[] two = twoBeside(rafter, rafters.size());
    if (!reaches(two[0], up) || !reaches(two[1], up)) {
      return Optional.empty();
    }
    return Optional.of(
        onLine(
            rafters.get(rafter).centerInches(),
            rafters.get(two[0]).centerInches(),
            lines.get(two[0]).at(up),
            rafters.get(two[1]).centerInches(),
            lines.get(two[1]).at(up)));
  }

  private boolean reaches(int rafter, double up) {
    return up >= lines.get(rafter).first() && up <= lines.get(rafter).last();
  }

  /** The ones before and after; at an end the next two. */
  private static int[] twoBeside(int index, int count) {
    if (index == 0) {
      return new int[] {1, 2};
    }
    return index == count - 1 ? new int[] {count - 3, count - 2} : new int[] {index - 1, index + 1};
  }

  private static double onLine(
      double place, double first, double firstHeight, double last, double lastHeight) {
    return firstHeight + (place - first) / (last - first) * (lastHeight - firstHeight);
  }

  private double spread(int rafter, int station) {
    List<Double> departures = new ArrayList<>();
    int from = Math.max(0, rafter - 1);
    int to = Math.min(rafters.size() - 1, rafter + 1);
    for (int i = from; i <= to; i++) {
      for (int j = 0; j < expected.get(i).length; j++) {
        if (i != rafter || j != station) {
          departures.add(Math.abs(lines.get(i).heights()[j] - expected.get(i)[j]));
        }
      }
    }
    return median(departures.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static double median(double[] values) {
    if (values.length == 0) {
      return 0;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
