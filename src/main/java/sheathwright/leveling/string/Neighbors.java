package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What the readings round a reading say that it should be, in inches. Along the rafter: the
 * straight line through the readings before and after it. Across: the straight line through the
 * rafters to its left and right, at its height. At an end it is the line through the next two, run
 * on, which a bent line leaves the faster the farther it runs: such an answer is doubted that much
 * more. Of the two answers the one that contradicts less counts: a rafter that sags alone is smooth
 * along its length, a dip over all rafters is smooth across them, and only a wrong reading is
 * neither. The rule is ours.
 */
final class Neighbors {

  /**
   * Fewer readings than this say nothing of what is usual: the rafters beside are asked too. Of 720
   * wrong readings on 160 invented planes (SuspectWork) it overlooks 198 and suspects 83 right
   * ones; half 230 and 97; double 189 and 84 with twice the work.
   */
  private static final int ENOUGH = 24;

  /**
   * A reading by where it stands.
   *
   * @param rafter counted from 0 at the left
   * @param station counted from 0 at the eave
   */
  record Spot(int rafter, int station) {}

  /**
   * An answer.
   *
   * @param expected drop
   * @param doubt how many times the usual departure means no more than the usual one does between
   *     two neighbors; one between them
   * @param beside the greater drop or rise of the two readings that it was made from
   */
  private record Said(double expected, double doubt, double beside) {

    double contradicts(double read) {
      return Math.abs(expected - read) / doubt;
    }
  }

  private final List<RafterProfile.Plain> rafters;
  private final Set<Spot> unheard;
  private final List<Profile> lines;
  private final List<Profile> heard;
  private final List<Said[]> said = new ArrayList<>();

  /**
   * The neighbors on a plane.
   *
   * @param unheard readings that nobody is to be judged by
   */
  Neighbors(PlaneProfiles.Plain plane, Set<Spot> unheard) {
    this.rafters = plane.rafters();
    this.unheard = unheard;
    this.lines = rafters.stream().map(RafterProfile.Plain::along).toList();
    List<Profile> kept = new ArrayList<>();
    for (int rafter = 0; rafter < rafters.size(); rafter++) {
      kept.add(heard(rafter));
    }
    this.heard = kept;
    for (int rafter = 0; rafter < rafters.size(); rafter++) {
      Said[] ofRafter = new Said[lines.get(rafter).places().length];
      for (int station = 0; station < ofRafter.length; station++) {
        ofRafter[station] = said(rafter, station);
      }
      said.add(ofRafter);
    }
  }

  private Profile heard(int rafter) {
    Profile line = lines.get(rafter);
    List<Integer> kept = new ArrayList<>();
    for (int station = 0; station < line.places().length; station++) {
      if (!unheard.contains(new Spot(rafter, station))) {
        kept.add(station);
      }
    }
    return new Profile(
        kept.stream().mapToDouble(station -> line.places()[station]).toArray(),
        kept.stream().mapToDouble(station -> line.heights()[station]).toArray());
  }

  /** Readings that nobody is judged by. */
  Set<Spot> unheard() {
    return unheard;
  }

  /** Every reading. */
  List<Spot> spots() {
    List<Spot> spots = new ArrayList<>();
    for (int rafter = 0; rafter < lines.size(); rafter++) {
      for (int station = 0; station < lines.get(rafter).places().length; station++) {
        spots.add(new Spot(rafter, station));
      }
    }
    return spots;
  }

  /** What they say; the reading itself if there are too few to say anything. */
  double expected(Spot spot) {
    return said.get(spot.rafter())[spot.station()].expected();
  }

  /** How much more than between two neighbors that is to be doubted: one or more. */
  double doubt(Spot spot) {
    return said.get(spot.rafter())[spot.station()].doubt();
  }

  /** The greatest drop or rise of the readings beside it, along and across. */
  double beside(Spot spot) {
    return said.get(spot.rafter())[spot.station()].beside();
  }

  /** How far a reading is from that, either way. */
  double departure(Spot spot) {
    return Math.abs(lines.get(spot.rafter()).heights()[spot.station()] - expected(spot));
  }

  /** Half of the readings round a reading depart by no more than this, for each time of doubt. */
  double spread(Spot spot) {
    double[] round = new double[0];
    for (int reach = 1; round.length < ENOUGH && reach <= rafters.size(); reach++) {
      round = departures(spot, reach);
    }
    return median(round);
  }

  private double[] departures(Spot spot, int reach) {
    DoubleStream.Builder departures = DoubleStream.builder();
    int from = Math.max(0, spot.rafter() - reach);
    int to = Math.min(rafters.size() - 1, spot.rafter() + reach);
    for (int rafter = from; rafter <= to; rafter++) {
      for (int station = 0; station < said.get(rafter).length; station++) {
        Spot other = new Spot(rafter, station);
        if (!other.equals(spot) && !unheard.contains(other)) {
          departures.add(departure(other) / doubt(other));
        }
      }
    }
    return departures.build().toArray();
  }

  private static double median(double[] values) {
    if (values.length == 0) {
      return 0;
    }
    Arrays.sort(values);
    int middle = values.length / 2;
    return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
  }

  private Said said(int rafter, int station) {
    double read = lines.get(rafter).heights()[station];
    double up = lines.get(rafter).places()[station];
    List<Said> answers =
        Stream.of(along(rafter, up), across(rafter, up)).flatMap(Optional::stream).toList();
    double beside = answers.stream().mapToDouble(Said::beside).max().orElse(0);
    return answers.stream()
        .min(java.util.Comparator.comparingDouble(answer -> answer.contradicts(read)))
        .map(answer -> new Said(answer.expected(), answer.doubt(), beside))
        .orElse(new Said(read, 1, 0));
  }

  private Optional<Said> along(int rafter, double up) {
    Profile line = heard.get(rafter);
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < line.places().length; i++) {
      if (line.places()[i] != up) {
        points.add(new double[] {line.places()[i], line.heights()[i]});
      }
    }
    return said(points, up);
  }

  private Optional<Said> across(int rafter, double up) {
    List<double[]> points = nearest(rafter, up, -1);
    Collections.reverse(points);
    points.addAll(nearest(rafter, up, 1));
    return said(points, rafters.get(rafter).center());
  }

  /** The nearest two rafters to one side that were read on both sides of a height. */
  private List<double[]> nearest(int rafter, double up, int step) {
    List<double[]> points = new ArrayList<>();
    for (int i = rafter + step; i >= 0 && i < heard.size() && points.size() < 2; i += step) {
      if (heard.get(i).reaches(up)) {
        points.add(new double[] {rafters.get(i).center(), heard.get(i).at(up)});
      }
    }
    return points;
  }

  /** The line through the points on both sides of a place, or through the nearest two. */
  private static Optional<Said> said(List<double[]> points, double place) {
    if (points.size() < 2) {
      return Optional.empty();
    }
    int after = 0;
    while (after < points.size() && points.get(after)[0] < place) {
      after++;
    }
    int second = Math.min(Math.max(after, 1), points.size() - 1);
    double[] left = points.get(second - 1);
    double[] right = points.get(second);
    double share = (place - left[0]) / (right[0] - left[0]);
    return Optional.of(
        new Said(
            left[1] + share * (right[1] - left[1]),
            Math.max(1, share * (share - 1)),
            Math.max(Math.abs(left[1]), Math.abs(right[1]))));
  }
}
