package sheathwright.job.triage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.plan.LevelAction;
import sheathwright.leveling.plan.LevelPlan;
import sheathwright.leveling.plan.PlannedRafter;
import sheathwright.roof.Box;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceMap;

/**
 * The old sheets of one plane that come up and go down again because a rafter under them is built
 * up: those that its stretch from the first to the last build-up crosses.
 *
 * @param places from the eave up, from the left
 * @param keys the same in one word, which rests on the leveling plan and on the map
 */
public record LiftedPlaces(List<Place> places, Choice<String> keys) {

  private static final double HALF_A_RAFTER = 0.75;
  private static final Source CROSSED =
      Source.derived("the places over the build-up of the leveling plan");

  /**
   * Where a rafter is built up.
   *
   * @param center of the rafter, in inches from the left
   * @param from where that begins, in inches from the eave
   * @param to where it ends
   */
  public record BuildUp(double center, double from, double to) {

    private Box box() {
      return new Box(center - HALF_A_RAFTER, from, center + HALF_A_RAFTER, to);
    }
  }

  /** The places over the build-ups of a plan. */
  public static LiftedPlaces of(PlaceMap map, LevelPlan plan) {
    Reading reading = new Reading();
    List<BuildUp> buildUps = new ArrayList<>();
    for (PlannedRafter rafter : plan.rafters()) {
      LevelAction action =
          reading.word("what is done to rafter " + rafter.rafter(), rafter.action());
      double[] ends = ends(reading, plan, rafter.rafter()).sorted().toArray();
      double center =
          reading.number("center of rafter " + rafter.rafter(), rafter.center(), Units.INCH);
      boolean isBuiltUp = action == LevelAction.SHIM || action == LevelAction.SISTER;
      if (isBuiltUp && ends.length > 1) {
        buildUps.add(new BuildUp(center, ends[0], ends[ends.length - 1]));
      }
    }
    return of(map, reading, buildUps);
  }

  /**
   * The places over build-ups.
   *
   * @param reading what they were found with
   */
  public static LiftedPlaces of(PlaceMap map, Reading reading, List<BuildUp> buildUps) {
    Set<Place> crossed = new LinkedHashSet<>();
    buildUps.forEach(each -> crossed.addAll(map.touchedBy(reading, each.box())));
    List<Place> places = new ArrayList<>(crossed);
    places.sort(
        Comparator.comparingInt((Place place) -> place.key().course())
            .thenComparingInt(place -> place.key().number())
            .thenComparing(place -> place.key().letter()));
    Solution solution = reading.solution("lifted_on_" + map.plane().name());
    String words = String.join(", ", places.stream().map(place -> place.key().toString()).toList());
    return new LiftedPlaces(
        List.copyOf(places), solution.word("", words.isEmpty() ? "none" : words, CROSSED));
  }

  /** Where a rafter's strips and its sister begin and end. */
  private static DoubleStream ends(Reading reading, LevelPlan plan, String rafter) {
    Stream<Figure<?>> strips =
        plan.strips().stream()
            .filter(strip -> strip.rafter().equals(rafter))
            .flatMap(strip -> Stream.of(strip.from(), strip.to()));
    Stream<Figure<?>> sister =
        plan.marks().stream().filter(mark -> mark.rafter().equals(rafter)).map(mark -> mark.up());
    return Stream.concat(strips, sister)
        .mapToDouble(end -> reading.number("build-up of rafter " + rafter, end, Units.INCH));
  }
}
