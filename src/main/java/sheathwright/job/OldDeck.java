package sheathwright.job;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.life.DeckBoards;
import sheathwright.job.life.MapRules;
import sheathwright.job.life.MapRules.OnMap;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.MarkNames;
import sheathwright.job.table.Belonging;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedTable;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.place.MeasuredJoint;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceMap;

/**
 * The old deck as a job's tables tell it: the map of each plane, and the marks on it. Whatever the
 * tables put on a plane lies on it, or all of what does not is said together.
 */
final class OldDeck {

  /** The tables without which nobody knows a plane. */
  static final List<JobTable> OF_PLANES =
      List.of(JobTable.PLANES, JobTable.OPENINGS, JobTable.JOINTS, JobTable.RAFTERS);

  private static final List<Field<?>> OF_A_MARK =
      List.of(PlaceFields.MARK, PlaceFields.PLANE, PlaceFields.FINDING);

  /** What gives a line of a table its shape. */
  private static final List<Field<?>> MEASURES =
      Stream.of(PlaceFields.PLANES, PlaceFields.OPENINGS, PlaceFields.SUPPORTS)
          .flatMap(List::stream)
          .filter(field -> field != PlaceFields.PLANE && field != PlaceFields.OPENING)
          .filter(field -> !PlaceFields.ON_THE_GROUND.contains(field))
          .<Field<?>>map(field -> field)
          .toList();

  private static final Figure<Length> NO_LEAN = Figure.of(0, Units.FOOT);

  private final Belonging planes;
  private final Optional<Belonging> marks;
  private final MarkNames names;
  private final DeckBoards boards;
  private final Map<String, PlaceMap> maps = new LinkedHashMap<>();
  private final Map<Row, Mark> marked = new IdentityHashMap<>();

  /**
   * The old deck of some tables, whose planes could all be read.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that lies off its map
   */
  OldDeck(KeyedTable job, Map<JobTable, ReadTable> tables) {
    planes =
        new Belonging(
            "lines_of_each_plane",
            PlaceFields.PLANE,
            new Belonging.Lines("plane", tables.get(JobTable.PLANES).rows()),
            new Belonging.Lines("opening", tables.get(JobTable.OPENINGS).rows()),
            new Belonging.Lines("rafter", tables.get(JobTable.RAFTERS).rows()),
            new Belonging.Lines("joint", tables.get(JobTable.JOINTS).rows()));
    names = MarkNames.of(tables.get(JobTable.MARKS).rows());
    boards = new DeckBoards(tables.get(JobTable.PLANES));
    List<Row> placed = tables.get(JobTable.MARKS).rows().stream().filter(this::isPlaced).toList();
    marks =
        placed.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Belonging(
                    "marks_of_each_plane",
                    PlaceFields.PLANE,
                    new Belonging.Lines(
                        "mark",
                        placed,
                        names.areShared()
                            ? List.of(PlaceFields.MARK, MarkFields.BY)
                            : List.of(PlaceFields.MARK))));
    Refusals refusals = new Refusals();
    Map<Row, OnMap> onMap = new IdentityHashMap<>();
    for (Row plane : tables.get(JobTable.PLANES).rows()) {
      refusals.tried(() -> map(plane)).ifPresent(map -> lay(plane, map, refusals, onMap));
    }
    MapRules rules =
        new MapRules(
            maps,
            tables.get(JobTable.MARKS),
            tables.get(JobTable.PHOTOS),
            tables.get(JobTable.PULL_TESTS),
            tables.get(JobTable.ZONES),
            tables.get(JobTable.PLACES),
            tables.get(JobTable.PLANES));
    rules.problems(onMap).forEach(refusals::add);
    if (maps.size() == tables.get(JobTable.PLANES).rows().size()) {
      new RoofRules(job, tables).beyondTheMap(maps.values()).forEach(refusals::add);
    }
    refusals.raise();
  }

  /** Whether a mark says where it is in words and numbers that could be read. */
  private boolean isPlaced(Row mark) {
    boolean isOnBoards = boards.isUnder(mark);
    boolean isMeasured =
        PlaceFields.MEASURES.stream()
            .allMatch(
                measure ->
                    mark.read(measure).isPresent()
                        || isOnBoards
                            && measure == PlaceFields.HEIGHT
                            && mark.read(DeckBoards.COUNT).isPresent());
    boolean isNamed =
        !isOnBoards
            && PlaceFields.MEASURES.stream().noneMatch(mark::has)
            && mark.read(PlaceFields.SHEET).isPresent();
    return (isMeasured || isNamed)
        && OF_A_MARK.stream().allMatch(field -> mark.read(field).isPresent());
  }

  private void lay(Row plane, PlaceMap map, Refusals refusals, Map<Row, OnMap> onMap) {
    String name = plane.of(PlaceFields.PLANE).plain();
    maps.put(name, map);
    Ground ground = new Ground(map);
    for (Row rafter : planes.on(name, "rafter")) {
      refusals.tried(
          () -> {
            ground.checkRafter(rafter);
            return rafter;
          });
    }
    for (Row row : marks(name)) {
      refusals
          .tried(() -> ground.mark(names.of(row), row))
          .ifPresent(
              mark -> {
                marked.put(row, mark);
                onMap.put(row, new OnMap(ground.places(row, mark)));
              });
    }
  }

  private PlaceMap map(Row row) {
    String name = row.of(PlaceFields.PLANE).plain();
    Plane plane = said(row, () -> shape(name, row));
    for (Row opening : planes.on(name, "opening")) {
      Plane solid = plane;
      plane =
          said(
              opening,
              () ->
                  solid.without(
                      opening.of(PlaceFields.OPENING_ALONG),
                      opening.of(PlaceFields.OPENING_UP),
                      opening.of(PlaceFields.OPENING_WIDTH),
                      opening.of(PlaceFields.OPENING_HEIGHT)));
    }
    Solution told = planes.solution();
    Plane whole = plane.restingOn(Shown.inWords(told.name()), told.state());
    if (DeckBoards.isOf(row) && row.has(DeckBoards.BOARD)) {
      return PlaceMap.ofBoards(whole, row.of(DeckBoards.BOARD));
    }
    OldJoints joints = oldJoints(row, planes.on(name, "joint"));
    return said(row, () -> PlaceMap.of(whole, joints));
  }

  private static Plane shape(String name, Row row) {
    if (row.has(PlaceFields.CORNERS)) {
      return Plane.outline(name, row.of(PlaceFields.CORNERS));
    }
    return Plane.trapezoid(
        name,
        row.of(PlaceFields.EAVE),
        row.of(PlaceFields.SLOPE_LENGTH),
        lean(row, PlaceFields.LEFT_LEAN),
        lean(row, PlaceFields.RIGHT_LEAN));
  }

  static Figure<Length> lean(Row row, Field<Figure<Length>> side) {
    return row.or(side, NO_LEAN);
  }

  private static OldJoints oldJoints(Row row, List<Row> measured) {
    OldJoints assumed = OldJoints.ASSUMED;
    return assumed
        .first(row.or(PlaceFields.FIRST_JOINT, assumed.first()))
        .stagger(row.or(PlaceFields.STAGGER, assumed.stagger()))
        .firstCourse(row.or(PlaceFields.FIRST_COURSE, assumed.firstCourse()))
        .measured(
            measured.stream()
                .map(
                    joint ->
                        new MeasuredJoint(
                            joint.of(PlaceFields.COURSE), joint.of(PlaceFields.JOINT)))
                .toList());
  }

  /** What is refused for a line of a table: its measures, or else its shape in words. */
  static <T> T said(Row row, Supplier<T> made) {
    List<Traced> measures = MEASURES.stream().filter(row::has).<Traced>map(row::of).toList();
    return RefusedException.solvedFor(measures, made);
  }

  /** The map of a plane. */
  PlaceMap map(String plane) {
    return maps.get(plane);
  }

  /** The same, which rests on what tells of the marks as well, if there are any. */
  PlaceMap markedMap(String plane) {
    PlaceMap map = map(plane);
    return marks
        .map(Belonging::solution)
        .map(told -> map.restingOn(Shown.inWords(told.name()), told.state()))
        .orElse(map);
  }

  /** The measured rafters of a plane. */
  List<Row> rafters(String plane) {
    return planes.on(plane, "rafter");
  }

  /** The lines of the marks of a plane. */
  List<Row> marks(String plane) {
    return marks.map(all -> all.on(plane, "mark")).orElse(List.of());
  }

  /** What a line of the table of marks says. */
  Mark mark(Row row) {
    return marked.get(row);
  }

  /** Which lines belong to which plane, as they were told apart. */
  List<Solution> solutions() {
    List<Solution> all = new ArrayList<>(List.of(planes.solution()));
    marks.map(Belonging::solution).ifPresent(all::add);
    return all;
  }

  /** One plane, for whatever is put on it. */
  private static final class Ground {

    /** A tape is read to an inch at the ends. */
    private static final double SLACK = 1;

    private final Plane plane;
    private final PlaceMap map;
    private final Box bounds;

    Ground(PlaceMap map) {
      this.map = map;
      this.plane = map.plane();
      this.bounds = plane.outline(Reading.aside()).bounds();
    }

    /**
     * Refuses a rafter that stands beside its plane.
     *
     * @throws RefusedException with its place
     */
    void checkRafter(Row row) {
      double center = row.of(PlaceFields.CENTER).value();
      if (center < bounds.left() - SLACK || center > bounds.right() + SLACK) {
        throw refused(row, PlaceFields.CENTER, "%s is given".formatted(plain(center)), true);
      }
    }

    /**
     * A mark of this plane: a place by its key, or what was measured.
     *
     * @param key what it is called
     * @throws RefusedException with its place in the table, if it is not on the map, reaches off
     *     the plane, lies in an opening, or in another place than it says
     */
    Mark mark(String key, Row row) {
      if (!row.has(PlaceFields.WIDTH)) {
        return Mark.of(key, row.of(PlaceFields.FINDING), map, row.of(PlaceFields.SHEET));
      }
      checkMark(row);
      Mark measured =
          Mark.of(
              key,
              row.of(PlaceFields.FINDING),
              row.of(PlaceFields.ALONG),
              row.of(PlaceFields.UP),
              row.of(PlaceFields.WIDTH),
              height(row));
      return row.has(PlaceFields.SHEET) ? measured.in(map, row.of(PlaceFields.SHEET)) : measured;
    }

    /** As it was measured, or so many boards. */
    private Figure<Length> height(Row row) {
      return row.has(PlaceFields.HEIGHT)
          ? row.of(PlaceFields.HEIGHT)
          : row.of(DeckBoards.COUNT)
              .times(map.board().orElseThrow())
              .in(Units.INCH)
              .as("boards_high_in", Units.INCH);
    }

    private void checkMark(Row row) {
      Box mark =
          Box.at(
              row.of(PlaceFields.ALONG).value(),
              row.of(PlaceFields.UP).value(),
              row.of(PlaceFields.WIDTH).value(),
              height(row).value());
      String reach = "the mark reaches from %s to %s in";
      if (mark.left() < bounds.left() - SLACK || mark.right() > bounds.right() + SLACK) {
        String given = reach.formatted(plain(mark.left()), plain(mark.right()));
        throw refused(row, PlaceFields.ALONG, given, true);
      }
      if (mark.bottom() < bounds.bottom() - SLACK || mark.top() > bounds.top() + SLACK) {
        String given = reach.formatted(plain(mark.bottom()), plain(mark.top()));
        throw refused(row, PlaceFields.UP, given, false);
      }
      if (plane.outline(Reading.aside()).within(mark).isEmpty()) {
        String what =
            plane.openings(Reading.aside()).stream().anyMatch(opening -> opening.overlaps(mark))
                ? "no wood is there: the mark lies in an opening of plane %s ("
                    + JobTable.OPENINGS.file()
                    + ")"
                : "no wood is there: the mark lies outside the sides of plane %s";
        throw new RefusedException(
            what.formatted(plane.name()) + "; measure it from the plane's lower left corner",
            List.of(row.of(PlaceFields.ALONG)));
      }
    }

    private RefusedException refused(Row row, Field<?> field, String given, boolean isAlong) {
      return new RefusedException(
          "%s, but plane %s goes from %s to %s in %s; measure from its lower left corner"
              .formatted(
                  given,
                  plane.name(),
                  plain(isAlong ? bounds.left() : bounds.bottom()),
                  plain(isAlong ? bounds.right() : bounds.top()),
                  isAlong ? "along the eave" : "up the slope"),
          List.of(row.of(field)));
    }

    private static String plain(double inches) {
      return Shown.plain(inches);
    }

    /** The places that a mark lies in. */
    List<String> places(Row row, Mark mark) {
      Reading aside = Reading.aside();
      return row.has(PlaceFields.WIDTH)
          ? map.touchedBy(aside, mark.seen(aside).box()).stream()
              .map(Place::key)
              .map(Object::toString)
              .toList()
          : List.of(row.of(PlaceFields.SHEET).value().strip());
    }
  }
}
