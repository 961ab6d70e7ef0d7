package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;

/**
 * The planes of a job as they add up to its deck: those between eave and ridge, those of other
 * shapes, less openings.
 */
public final class DeckAreas {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private final boolean hasLeans;
  private final Optional<Roll> planes;
  private final Optional<Roll> shapes;
  private final Optional<Roll> openings;
  private final Figure<Area> total;

  DeckAreas(Job job, Deck deck) {
    List<Map<String, Traced>> levels =
        job.planes().stream().filter(row -> !row.containsKey("corners_ft")).toList();
    hasLeans =
        levels.stream()
            .anyMatch(row -> row.containsKey("left_lean_ft") || row.containsKey("right_lean_ft"));
    planes = levels.isEmpty() ? Optional.empty() : Optional.of(planes(levels));
    List<Deck.Part> outlines =
        deck.parts().stream()
            .filter(part -> Solution.behind(part.plane().measures().area()).isPresent())
            .toList();
    shapes = outlines.isEmpty() ? Optional.empty() : Optional.of(shapes(job, outlines));
    openings = job.openings().isEmpty() ? Optional.empty() : Optional.of(openings(job));
    Figure<Area> sum = null;
    for (Roll roll : rolls(planes, shapes)) {
      Figure<Area> area = roll.sum("area_sf", Units.SQUARE_FOOT);
      sum = sum == null ? area : sum.plus(area);
    }
    for (Roll roll : rolls(openings)) {
      sum = sum.minus(roll.sum("area_sf", Units.SQUARE_FOOT));
    }
    total = sum.as("deck_area_sf", Units.SQUARE_FOOT);
  }

  @SafeVarargs
  private static List<Roll> rolls(Optional<Roll>... rolls) {
    List<Roll> present = new ArrayList<>();
    for (Optional<Roll> roll : rolls) {
      roll.ifPresent(present::add);
    }
    return present;
  }

  private Roll planes(List<Map<String, Traced>> rows) {
    List<Roll.Column<Map<String, Traced>>> columns = new ArrayList<>();
    columns.add(Roll.column("plane", row -> row.get("plane")));
    columns.add(Roll.column("eave_ft", row -> row.get("eave_ft")));
    columns.add(Roll.column("slope_length_ft", row -> row.get("slope_length_ft")));
    if (hasLeans) {
      columns.add(Roll.column("left_lean_ft", row -> Deck.lean(row, "left_lean_ft")));
      columns.add(Roll.column("right_lean_ft", row -> Deck.lean(row, "right_lean_ft")));
    }
    columns.add(Roll.column("area_sf", this::area));
    return Roll.of("planes", "the roof planes", rows, columns);
  }

  private Figure<Area> area(Map<String, Traced> row) {
    var eave = Job.figure(row, "eave_ft", Units.FOOT);
    var slope = Job.figure(row, "slope_length_ft", Units.FOOT);
    if (!hasLeans) {
      return eave.times(slope).in(Units.SQUARE_FOOT);
    }
    var leans = Deck.lean(row, "left_lean_ft").plus(Deck.lean(row, "right_lean_ft"));
    return eave.minus(leans.dividedBy(TWO)).times(slope).in(Units.SQUARE_FOOT);
  }

  private static Roll shapes(Job job, List<Deck.Part> outlines) {
    return Roll.of(
        "shapes",
        "the planes of other shapes",
        outlines,
        Roll.<Deck.Part>column("plane", part -> row(job, part).get("plane")),
        Roll.column("corners_ft", part -> row(job, part).get("corners_ft")),
        Roll.column("area_sf", part -> part.plane().measures().area()));
  }

  private static Map<String, Traced> row(Job job, Deck.Part part) {
    return job.planes().stream()
        .filter(row -> row.get("plane").plain().equals(part.plane().name()))
        .findFirst()
        .orElseThrow();
  }

  private static Roll openings(Job job) {
    return Roll.of(
        "openings",
        "the openings",
        job.openings(),
        Roll.<Map<String, Traced>>column("plane", row -> row.get("plane")),
        Roll.column("along_ft", row -> row.get("along_ft")),
        Roll.column("up_ft", row -> row.get("up_ft")),
        Roll.column("width_ft", row -> row.get("width_ft")),
        Roll.column("height_ft", row -> row.get("height_ft")),
        Roll.column(
            "area_sf",
            row ->
                Job.figure(row, "width_ft", Units.FOOT)
                    .times(Job.figure(row, "height_ft", Units.FOOT))
                    .in(Units.SQUARE_FOOT)));
  }

  /** Planes between a level eave and a level ridge. */
  public Optional<Roll> planes() {
    return planes;
  }

  /** Whether any of those planes has a side that leans. */
  public boolean hasLeans() {
    return hasLeans;
  }

  /** Planes given by their corners. */
  public Optional<Roll> shapes() {
    return shapes;
  }

  public Optional<Roll> openings() {
    return openings;
  }

  /** All planes, openings taken off. */
  public Figure<Area> total() {
    return total;
  }
}
