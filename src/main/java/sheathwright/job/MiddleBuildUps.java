package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import sheathwright.figure.Figure;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.Row;
import sheathwright.job.triage.LiftedPlaces;
import sheathwright.job.triage.LiftedPlaces.BuildUp;
import sheathwright.roof.Box;
import sheathwright.roof.Supports;
import sheathwright.sheathing.place.PlaceMap;

/**
 * Where the rafters of one plane are built up that were read at mid-length alone. The sag is a
 * parabola between two bearings, the upper one at the top of the plane; a sister is centered on it,
 * and a strip lies where more is low than may stay.
 *
 * <p>Where a reading does not say where its rafter stands, the number that its name ends in counts
 * the rafters from the left, and else its line does. Common practice, no source.
 */
final class MiddleBuildUps {

  private static final Pattern NUMBER = Pattern.compile(".*?(\\d{1,4})");

  /** A tape is read to an inch at the ends. */
  private static final double SLACK = 1;

  private final Job job;
  private final Leveling.AtMiddle middle;
  private final PlaceMap map;
  private final List<Row> readings = new ArrayList<>();
  private final Reading reading = new Reading();
  private final Supports supports;

  MiddleBuildUps(Job job, Leveling.AtMiddle middle, PlaceMap map, Supports supports) {
    this.job = job;
    this.middle = middle;
    this.map = map;
    this.supports = supports;
    for (int i = 0; i < job.readings().size(); i++) {
      Row row = job.readings().get(i);
      String plane = reading.word("plane of reading " + (i + 1), row.of(PlaceFields.PLANE));
      if (plane.equals(map.plane().name())) {
        readings.add(row);
      }
    }
  }

  /** The places over them; nothing where no rafter of the plane was read. */
  Optional<LiftedPlaces> lifted() {
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(LiftedPlaces.of(map, reading, buildUps()));
  }

  private List<BuildUp> buildUps() {
    Box bounds = map.plane().outline(reading).bounds();
    List<Double> centers = centers(bounds);
    double span = inches("bearing to bearing along a rafter", middle.span());
    double sister = inches("length of a sister", middle.stock().length());
    double sistered = inches("most drop to shim", job.fact(JobFields.SISTER_TOLERANCE));
    double shimmed = inches("drop left as is", job.fact(JobFields.SHIM_TOLERANCE));
    double mid = bounds.top() - span / 2;
    List<BuildUp> all = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      double drop =
          inches("drop of rafter " + (i + 1), readings.get(i).of(PlaceFields.DROP_AT_MIDDLE));
      double half = drop > sistered ? sister / 2 : span / 2 * Math.sqrt(1 - shimmed / drop);
      if (drop > shimmed) {
        double from = Math.max(bounds.bottom(), mid - half);
        all.add(new BuildUp(centers.get(i), from, Math.min(bounds.top(), mid + half)));
      }
    }
    return all;
  }

  /**
   * Where a rafter stands, as it was measured.
   *
   * @throws RefusedException if that is beside the plane
   */
  private double measured(int line, Box bounds) {
    Figure<?> along = readings.get(line).of(PlaceFields.RAFTER_ALONG);
    double center = inches("center of rafter " + (line + 1), along);
    if (center < bounds.left() - SLACK || center > bounds.right() + SLACK) {
      throw new RefusedException(
          "%s is given, but plane %s goes from %s to %s in along the eave; measure from its lower left corner"
              .formatted(
                  Shown.plain(center),
                  map.plane().name(),
                  Shown.plain(bounds.left()),
                  Shown.plain(bounds.right())),
          List.of(along));
    }
    return center;
  }

  private double inches(String what, Figure<?> figure) {
    return reading.number(what, figure, Units.INCH);
  }

  /** Where each rafter that was read stands. */
  private List<Double> centers(Box bounds) {
    List<Double> standing = supports.centers(reading).between(bounds.left(), bounds.right());
    List<Integer> counted = counted(standing.size());
    return IntStream.range(0, readings.size())
        .mapToObj(
            i ->
                readings.get(i).has(PlaceFields.RAFTER_ALONG)
                    ? measured(i, bounds)
                    : standing.get(Math.min(counted.get(i), standing.size()) - 1))
        .toList();
  }

  /** Which rafter from the left each is, from 1. */
  private List<Integer> counted(int standing) {
    List<Integer> named = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      String name =
          reading.word("name of rafter " + (i + 1), readings.get(i).of(PlaceFields.RAFTER));
      Matcher number = NUMBER.matcher(name.strip());
      named.add(number.matches() ? Integer.parseInt(number.group(1)) : 0);
    }
    boolean isByName = named.stream().allMatch(number -> number >= 1 && number <= standing);
    return isByName ? named : IntStream.rangeClosed(1, readings.size()).boxed().toList();
  }
}
