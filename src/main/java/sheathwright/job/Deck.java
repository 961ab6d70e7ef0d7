package sheathwright.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.DeckMarks.OnPlane;
import sheathwright.job.site.Site;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.job.triage.LiftedPlaces;
import sheathwright.job.triage.MarkDecision;
import sheathwright.job.triage.Wanted;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.sheathing.patch.PatchRules;
import sheathwright.sheathing.place.MeasuredJoint;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.sheathing.place.SheetUnits;

/**
 * A job's planes with what they stand on, what was found on them, and what new sheets and patches
 * they take.
 */
public final class Deck {

  /** What gives a line of a table its shape. */
  private static final List<Field<?>> MEASURES =
      Stream.of(PlaceFields.PLANES, PlaceFields.OPENINGS, PlaceFields.SUPPORTS)
          .flatMap(List::stream)
          .filter(field -> field != PlaceFields.PLANE)
          .<Field<?>>map(field -> field)
          .toList();

  private static final Figure<Length> NO_LEAN = Figure.of(0, Units.FOOT);

  private final Job job;
  private final Belonging planes;
  private final Optional<Belonging> marks;
  private final DeckMarks found;
  private final List<Part> parts;
  private final DeckLayout layout;
  private final Figure<Nails> nails;

  /**
   * One plane.
   *
   * @param map of its old sheets
   * @param courses sheets laid on it anew
   * @param marks what was found on it
   * @param patches what is cut out of it, if anything was found
   */
  public record Part(
      PlaceMap map, CourseLayout courses, List<Mark> marks, Optional<PatchPlan> patches) {

    /** Its shape. */
    public Plane plane() {
      return map.plane();
    }
  }

  /**
   * A line of the table of marks with what it is on the deck.
   *
   * @param row as it was told
   * @param mark where it lies, decided
   * @param decision what is done about it, and why
   * @param part the plane that it lies on
   */
  public record Marked(Row row, Mark mark, MarkDecision decision, Part part) {}

  /** A plane before anything is cut out of it. */
  private record Laid(
      Row row, Plane plane, PlaceMap map, Supports supports, Map<Row, Mark> marks) {}

  Deck(Job job, Site site, Optional<Leveling> leveling) {
    this.job = job;
    this.planes =
        new Belonging(
            "lines_of_each_plane",
            new Belonging.Lines("plane", job.planes()),
            new Belonging.Lines("opening", job.openings()),
            new Belonging.Lines("rafter", job.supports()),
            new Belonging.Lines("joint", job.joints()));
    this.marks =
        job.marks().isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Belonging(
                    "marks_of_each_plane",
                    new Belonging.Lines("mark", job.marks(), List.of(PlaceFields.MARK))));
    List<Laid> laid = job.planes().stream().map(this::laid).toList();
    this.found =
        new DeckMarks(
            job,
            Wanted.of(site, job.maker()),
            laid.stream().map(plane -> new OnPlane(marked(plane.map()), plane.marks())).toList(),
            leveling);
    this.parts = laid.stream().map(this::part).toList();
    List<CourseLayout> planes = parts.stream().map(Part::courses).toList();
    this.layout = Layouts.together(planes);
    this.nails = DeckNails.of(job, site, planes);
  }

  /** The planes, in the order of the table. */
  public List<Part> parts() {
    return parts;
  }

  /** New sheets on all planes, what is cut off the one used on the other. */
  public DeckLayout layout() {
    return layout;
  }

  /** What every place of the old deck counts together. */
  public SheetUnits units() {
    return SheetUnits.together(parts.stream().map(part -> part.map().units()).toList());
  }

  /** The sheets of a plane that come up and go down again, if its rafters were surveyed. */
  public Optional<LiftedPlaces> lifted(Part part) {
    return found.lifted(part.plane().name());
  }

  /** Every mark with its plane, in the order of the table. */
  public List<Marked> marked() {
    List<Marked> all = new ArrayList<>();
    for (Row row : job.marks()) {
      String plane = row.of(PlaceFields.PLANE).plain();
      parts.stream()
          .filter(part -> part.plane().name().equals(plane))
          .map(part -> new Marked(row, found.mark(row), found.decision(row), part))
          .forEach(all::add);
    }
    return all;
  }

  /** Every mark, if there are any, with its place where one names it. */
  public Optional<Roll> marks() {
    List<Roll.Column<Row>> columns =
        new ArrayList<>(
            List.of(
                Row.column(PlaceFields.MARK),
                Row.column(PlaceFields.PLANE),
                Row.column(PlaceFields.FINDING),
                Roll.column("along_in", row -> found.mark(row).along()),
                Roll.column("up_in", row -> found.mark(row).up()),
                Roll.column("width_in", row -> found.mark(row).width()),
                Roll.column("height_in", row -> found.mark(row).height())));
    if (job.marks().stream().anyMatch(row -> row.has(PlaceFields.SHEET))) {
      columns.add(
          Roll.column(
              PlaceFields.SHEET.name(), row -> row.or(PlaceFields.SHEET, Choice.literal(""))));
    }
    return job.marks().isEmpty()
        ? Optional.empty()
        : Optional.of(Roll.of("marks", "what was found", job.marks(), columns));
  }

  /** How the old sheets lie, where a plane says so. */
  public Optional<Roll> oldSheets() {
    List<Row> told =
        job.planes().stream()
            .filter(row -> PlaceFields.OLD_SHEETS.stream().anyMatch(row::has))
            .toList();
    return told.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "old_sheets",
                "how the old sheets lie",
                told,
                Row.column(PlaceFields.PLANE),
                assumedWhereBlank(PlaceFields.FIRST_JOINT, OldJoints.ASSUMED.first()),
                assumedWhereBlank(PlaceFields.STAGGER, OldJoints.ASSUMED.stagger()),
                assumedWhereBlank(PlaceFields.FIRST_COURSE, OldJoints.ASSUMED.firstCourse())));
  }

  private static Roll.Column<Row> assumedWhereBlank(
      Field<Figure<Length>> field, Figure<Length> assumed) {
    return Roll.column(field.name(), row -> row.or(field, Figure.of(assumed.value(), Units.INCH)));
  }

  /** The end joints that were measured, if there are any. */
  public Optional<Roll> measuredJoints() {
    return job.joints().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "joints",
                "the measured end joints",
                job.joints(),
                PlaceFields.JOINTS.stream().<Roll.Column<Row>>map(Row::column).toList()));
  }

  /** The measured centers of supports, if there are any. */
  public Optional<Roll> measuredSupports() {
    return job.supports().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "rafters",
                "the measured rafters",
                job.supports(),
                List.of(Row.column(PlaceFields.PLANE), Row.column(PlaceFields.CENTER))));
  }

  /** Everything that was solved and not computed. */
  public List<Solution> solutions() {
    List<Solution> solutions = new ArrayList<>(List.of(planes.solution()));
    marks.map(Belonging::solution).ifPresent(solutions::add);
    solutions.addAll(found.solutions());
    for (Part part : parts) {
      Solution.behind(part.plane().measures().area()).ifPresent(solutions::add);
      Solution.behind(part.map().units().places()).ifPresent(solutions::add);
      part.patches()
          .flatMap(patches -> Solution.behind(patches.sheets()))
          .ifPresent(solutions::add);
    }
    Solution.behind(layout.sheets()).ifPresent(solutions::add);
    Solution.behind(nails).ifPresent(solutions::add);
    return solutions;
  }

  /** The nails of all those sheets. */
  public Figure<Nails> nails() {
    return nails;
  }

  private Laid laid(Row row) {
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
    Plane whole = restingOn(plane, planes);
    OldJoints joints = oldJoints(row, planes.on(name, "joint"));
    PlaceMap map = said(row, () -> PlaceMap.of(whole, joints));
    DeckPlaces places = new DeckPlaces(map);
    List<Row> rafters = planes.on(name, "rafter");
    rafters.forEach(places::checkRafter);
    Supports supports = rafters.isEmpty() ? regularSupports() : measuredSupports(rafters);
    Map<Row, Mark> told = new LinkedHashMap<>();
    marks
        .map(all -> all.on(name, "mark"))
        .orElse(List.of())
        .forEach(mark -> told.put(mark, places.mark(mark)));
    return new Laid(row, whole, map, supports, told);
  }

  private Part part(Laid laid) {
    List<Mark> marks = laid.marks().keySet().stream().map(found::mark).toList();
    Optional<PatchPlan> patches =
        marks.isEmpty()
            ? Optional.empty()
            : Optional.of(
                said(
                    laid.row(),
                    () ->
                        Layouts.patches(
                            marked(laid.map()),
                            laid.supports(),
                            rules(),
                            patchRules(),
                            marks,
                            PatchPatience.ofEach(markedPlanes()))));
    CourseLayout courses =
        said(laid.row(), () -> Layouts.courses(laid.plane(), laid.supports(), rules()));
    return new Part(marked(laid.map()), courses, marks, patches);
  }

  /** A map that rests on which marks belong to its plane as well. */
  private PlaceMap marked(PlaceMap map) {
    return marks.map(all -> restingOn(map, all)).orElse(map);
  }

  private int markedPlanes() {
    return (int)
        job.marks().stream().map(mark -> mark.of(PlaceFields.PLANE).plain()).distinct().count();
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
    return row.has(side) ? row.of(side) : NO_LEAN;
  }

  private Supports regularSupports() {
    Figure<Length> spacing = job.fact(JobFields.SUPPORT_SPACING);
    return RefusedException.solvedFor(List.of(spacing), () -> Supports.every(spacing));
  }

  /** Rafters as measured; two that do not stand beside each other are said where the second is. */
  private static Supports measuredSupports(List<Row> rafters) {
    List<Row> sorted = rafters.stream().sorted(Comparator.comparingDouble(Deck::inches)).toList();
    for (int i = 1; i < sorted.size(); i++) {
      List<Figure<Length>> two = List.of(center(sorted.get(i - 1)), center(sorted.get(i)));
      RefusedException.solvedFor(List.of(two.get(1)), () -> Supports.at(two));
    }
    return RefusedException.solvedFor(
        List.of(center(sorted.get(0))),
        () -> Supports.at(rafters.stream().map(Deck::center).toList()));
  }

  private static Figure<Length> center(Row rafter) {
    return rafter.of(PlaceFields.CENTER);
  }

  private static double inches(Row rafter) {
    return center(rafter).value();
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

  private LayoutRules rules() {
    LayoutRules rules = Layouts.usual();
    if (job.knows(JobFields.GAP)) {
      rules = rules.gap(job.fact(JobFields.GAP));
    }
    return job.knows(JobFields.STRIP_RULE) ? rules.strips(job.fact(JobFields.STRIP_RULE)) : rules;
  }

  private PatchRules patchRules() {
    return job.knows(JobFields.BEYOND_MARK)
        ? PatchRules.USUAL.beyondMark(job.fact(JobFields.BEYOND_MARK))
        : PatchRules.USUAL;
  }

  private static Plane restingOn(Plane plane, Belonging lines) {
    Solution told = lines.solution();
    return plane.restingOn(Shown.inWords(told.name()), told.state());
  }

  private static PlaceMap restingOn(PlaceMap map, Belonging lines) {
    Solution told = lines.solution();
    return map.restingOn(Shown.inWords(told.name()), told.state());
  }

  /** What is refused for a line of a table: its measures, or else its shape in words. */
  private static <T> T said(Row row, Supplier<T> made) {
    List<Traced> measures = MEASURES.stream().filter(row::has).<Traced>map(row::of).toList();
    return RefusedException.solvedFor(measures, made);
  }
}
