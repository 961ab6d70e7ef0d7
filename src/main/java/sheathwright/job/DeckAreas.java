package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;
import sheathwright.job.table.Row;
import sheathwright.sheathing.board.BoardStock;
import sheathwright.sheathing.board.Boards;

/**
 * The planes of a job as they add up to its deck: those between eave and ridge, those of other
 * shapes, less openings.
 */
public final class DeckAreas {

  /** Boards are counted by the foot here, however long they are sold. */
  private static final Figure<Length> STOCK = Figure.of(12, Units.FOOT);

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private final boolean hasLeans;
  private final Optional<Roll> planes;
  private final Optional<Roll> shapes;
  private final Optional<Roll> openings;
  private final Figure<Area> total;
  private final List<Deck.Part> boards;

  DeckAreas(Job job, Deck deck) {
    List<Row> levels = job.planes().stream().filter(row -> !row.has(PlaceFields.CORNERS)).toList();
    hasLeans =
        levels.stream()
            .anyMatch(row -> row.has(PlaceFields.LEFT_LEAN) || row.has(PlaceFields.RIGHT_LEAN));
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
    boards = deck.ofBoards();
  }

  @SafeVarargs
  private static List<Roll> rolls(Optional<Roll>... rolls) {
    List<Roll> present = new ArrayList<>();
    for (Optional<Roll> roll : rolls) {
      roll.ifPresent(present::add);
    }
    return present;
  }

  private Roll planes(List<Row> rows) {
    List<Roll.Column<Row>> columns = new ArrayList<>();
    columns.add(Row.column(PlaceFields.PLANE));
    columns.add(Row.column(PlaceFields.EAVE));
    columns.add(Row.column(PlaceFields.SLOPE_LENGTH));
    if (hasLeans) {
      columns.add(
          Roll.column(
              PlaceFields.LEFT_LEAN.name(), row -> OldDeck.lean(row, PlaceFields.LEFT_LEAN)));
      columns.add(
          Roll.column(
              PlaceFields.RIGHT_LEAN.name(), row -> OldDeck.lean(row, PlaceFields.RIGHT_LEAN)));
    }
    columns.add(Roll.column("area_sf", this::area));
    return Roll.of("planes", "the roof planes", rows, columns);
  }

  private Figure<Area> area(Row row) {
    var eave = row.of(PlaceFields.EAVE);
    var slope = row.of(PlaceFields.SLOPE_LENGTH);
    if (!hasLeans) {
      return eave.times(slope).in(Units.SQUARE_FOOT);
    }
    var leans =
        OldDeck.lean(row, PlaceFields.LEFT_LEAN).plus(OldDeck.lean(row, PlaceFields.RIGHT_LEAN));
    return eave.minus(leans.dividedBy(TWO)).times(slope).in(Units.SQUARE_FOOT);
  }

  private static Roll shapes(Job job, List<Deck.Part> outlines) {
    return Roll.of(
        "shapes",
        "the planes of other shapes",
        outlines,
        Roll.<Deck.Part>column(
            PlaceFields.PLANE.name(), part -> row(job, part).of(PlaceFields.PLANE)),
        Roll.column(PlaceFields.CORNERS.name(), part -> row(job, part).of(PlaceFields.CORNERS)),
        Roll.column("area_sf", part -> part.plane().measures().area()));
  }

  private static Row row(Job job, Deck.Part part) {
    return job.planes().stream()
        .filter(row -> row.of(PlaceFields.PLANE).plain().equals(part.plane().name()))
        .findFirst()
        .orElseThrow();
  }

  private static Roll openings(Job job) {
    return Roll.of(
        "openings",
        "the openings",
        job.openings(),
        Row.column(PlaceFields.PLANE),
        Row.column(PlaceFields.OPENING_ALONG),
        Row.column(PlaceFields.OPENING_UP),
        Row.column(PlaceFields.OPENING_WIDTH),
        Row.column(PlaceFields.OPENING_HEIGHT),
        Roll.column(
            "area_sf",
            row ->
                row.of(PlaceFields.OPENING_WIDTH)
                    .times(row.of(PlaceFields.OPENING_HEIGHT))
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

  /** The planes of sheets, openings taken off. */
  Figure<Area> ofSheets() {
    Figure<Area> sheets = total;
    for (Deck.Part part : boards) {
      sheets = sheets.minus(part.plane().area());
    }
    return boards.isEmpty() ? total : sheets.as("sheet_deck_area_sf", Units.SQUARE_FOOT);
  }

  /** The boards of all planes in whole feet, if there are any. */
  Optional<Figure<Length>> feetOfBoard() {
    return boards.stream()
        .map(DeckAreas::feetOfBoard)
        .reduce(Figure::plus)
        .map(
            feet ->
                feet.roundedUpTo(Figure.of(1, Units.FOOT)).as("boards_at_worst_ft", Units.FOOT));
  }

  /** All boards of a plane. */
  public static Figure<Length> feetOfBoard(Deck.Part part) {
    return Boards.boardsToReplace(
            part.plane().area(),
            BoardStock.face(part.map().board().orElseThrow()).stock(STOCK),
            Figure.of(0, Units.PERCENT))
        .laid();
  }

  /** All planes, openings taken off. */
  public Figure<Area> total() {
    return total;
  }
}
