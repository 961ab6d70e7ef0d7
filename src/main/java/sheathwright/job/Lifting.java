package sheathwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.triage.LiftedPlaces;
import sheathwright.roof.Supports;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;

/**
 * The old sheets that come up and go down again because rafters under them are built up. Where the
 * price has a whole new deck, none do: all of them are taken off anyway.
 */
final class Lifting {

  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);
  private static final Source COUNTED =
      Source.derived("the places over built-up rafters, but those that are replaced whole");

  private final Map<String, LiftedPlaces> byPlane = new LinkedHashMap<>();
  private final Choice<YesNo> isLaidAnew;

  /**
   * What the leveling of a job's rafters lifts.
   *
   * @param leveling of its rafters, if they are leveled
   * @param planes what lies on them, and what they stand on
   * @param planned sheets in the price
   * @param whole sheets that take the place of the whole deck, counted in every way there is
   */
  Lifting(
      Job job,
      Optional<Leveling> leveling,
      Map<PlaceMap, Supports> planes,
      Figure<Sheets> planned,
      List<Figure<Sheets>> whole) {
    isLaidAnew =
        Choice.choose(
                Condition.any(whole.stream().map(planned::isAtLeast).toArray(Condition[]::new)),
                YesNo.YES,
                YesNo.NO)
            .as("whole_deck_laid_anew");
    leveling
        .flatMap(Leveling::survey)
        .ifPresent(
            survey -> survey.planes().forEach(plane -> put(planes.keySet(), plane.name(), plane)));
    leveling
        .flatMap(Leveling::atMiddle)
        .ifPresent(
            middle ->
                planes.forEach(
                    (map, supports) ->
                        new MiddleBuildUps(job, middle, map, supports)
                            .lifted()
                            .ifPresent(lifted -> byPlane.put(map.plane().name(), lifted))));
  }

  private void put(Set<PlaceMap> maps, String name, SurveyedPlane plane) {
    maps.stream()
        .filter(map -> map.plane().name().equals(name))
        .forEach(map -> byPlane.put(name, LiftedPlaces.of(map, plane.plan())));
  }

  /** Whether no rafter was read. */
  boolean isEmpty() {
    return byPlane.isEmpty();
  }

  /** The places of a plane that are lifted, those among them that marks have replaced too. */
  List<Place> places(Reading reading, String plane) {
    LiftedPlaces lifted = byPlane.get(plane);
    if (lifted == null) {
      return List.of();
    }
    reading.word("places over built-up rafters", lifted.keys());
    boolean isAnew = reading.word("is the whole deck laid anew", isLaidAnew) == YesNo.YES;
    return isAnew ? List.of() : lifted.places();
  }

  /**
   * How many sheets are lifted, but those that are replaced whole.
   *
   * @param sheets that many; 0 where the whole deck is laid anew
   * @param solution what they were counted from
   */
  record Count(Figure<Pieces> sheets, Solution solution) {}

  /** How many sheets that is; nothing where no rafter was read. */
  Optional<Count> sheets(List<Deck.Part> parts) {
    if (isEmpty()) {
      return Optional.empty();
    }
    Reading reading = new Reading();
    int count = 0;
    for (Deck.Part part : parts) {
      LiftedPlaces lifted = byPlane.get(part.plane().name());
      if (lifted != null) {
        reading.word("places over built-up rafters", lifted.keys());
        Set<PlaceKey> replaced = part.replacedWhole(reading);
        count += (int) lifted.places().stream().filter(at -> !replaced.contains(at.key())).count();
      }
    }
    Solution solution = reading.solution("sheets_over_rafters");
    Figure<Pieces> counted = solution.figure("sheets_over_rafters", count, Units.PIECE, COUNTED);
    Figure<Pieces> sheets =
        Figure.choose(isLaidAnew.is(YesNo.YES), NONE, counted).as("sheets_to_lift", Units.PIECE);
    return Optional.of(new Count(sheets, solution));
  }

  /** What was solved for it. */
  List<Solution> solutions() {
    List<Solution> solutions = new ArrayList<>();
    byPlane.values().forEach(each -> Solution.behind(each.keys()).ifPresent(solutions::add));
    return solutions;
  }
}
