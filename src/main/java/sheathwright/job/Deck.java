package sheathwright.job;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;
import sheathwright.job.DeckMarks.OnPlane;
import sheathwright.job.life.MapRecord;
import sheathwright.job.site.Site;
import sheathwright.job.solve.PatchPatience;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.job.triage.MarkDecision;
import sheathwright.job.triage.Wanted;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.sheathing.patch.PatchRules;
import sheathwright.sheathing.place.BillRule;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.sheathing.place.SheetUnits;

/**
 * A job's planes with what they stand on, what was found on them, and what new sheets and patches
 * they take.
 */
public final class Deck {

  /** Square inches that a patch may lack of the place that it replaces whole. */
  private static final double HAIR = 2;

  private final Job job;
  private final OldDeck old;
  private final DeckMarks found;
  private final List<Part> parts;
  private final DeckLayout layout;
  private final Figure<Nails> nails;
  private final Lifting lifting;
  private final Optional<Lifting.Count> lifted;

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

    /** Square inches of new panel that patches lay in each place that they touch. */
    public Map<PlaceKey, Double> patched(Reading reading) {
      Map<PlaceKey, Double> areas = new LinkedHashMap<>();
      patches.ifPresent(
          plan -> {
            reading.number("patches on " + plane().name(), plan.area(), Units.SQUARE_FOOT);
            for (Patch patch : plan.list()) {
              double area = patch.pieces().stream().mapToDouble(Patch.Piece::area).sum();
              areas.merge(patch.place(), area, Double::sum);
            }
          });
      return areas;
    }

    /** The places of which nothing stays: what is laid in them is all that they were. */
    public Set<PlaceKey> replacedWhole(Reading reading) {
      Map<PlaceKey, Double> areas = patched(reading);
      return map.places(reading).stream()
          .filter(place -> areas.getOrDefault(place.key(), 0.0) > place.area() - HAIR)
          .map(Place::key)
          .collect(toSet());
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
      Row row, PlaceMap map, Supports supports, CourseLayout courses, Map<Row, Mark> marks) {

    String name() {
      return map.plane().name();
    }
  }

  Deck(Job job, Site site, Choice<BillRule> rule, Optional<Leveling> leveling) {
    this.job = job;
    this.old = new OldDeck(job.told(), job.tables());
    List<Laid> laid = job.planes().stream().map(this::laid).toList();
    this.layout = Layouts.together(laid.stream().map(Laid::courses).toList());
    this.lifting = lifting(laid, rule, leveling);
    this.found =
        new DeckMarks(
            job,
            Wanted.of(site, job.maker()),
            laid.stream()
                .map(plane -> new OnPlane(old.markedMap(plane.name()), plane.marks()))
                .toList(),
            lifting);
    this.parts = laid.stream().map(this::part).toList();
    this.nails = DeckNails.of(job, site, parts.stream().map(Part::courses).toList());
    this.lifted = lifting.sheets(parts);
  }

  private Lifting lifting(List<Laid> laid, Choice<BillRule> rule, Optional<Leveling> leveling) {
    Map<PlaceMap, Supports> planes = new LinkedHashMap<>();
    laid.forEach(plane -> planes.put(old.markedMap(plane.name()), plane.supports()));
    SheetUnits units =
        SheetUnits.together(laid.stream().map(plane -> plane.map().units()).toList());
    return new Lifting(
        job,
        leveling,
        planes,
        job.fact(JobFields.PLANNED_SHEETS),
        List.of(layout.sheets(), units.by(rule, "sheets_of_the_old_deck")));
  }

  /** The planes, in the order of the table. */
  public List<Part> parts() {
    return parts;
  }

  /** Its places as a document names them today, to be kept. */
  public MapRecord mapRecord() {
    return MapRecord.of(parts.stream().map(Part::map).toList());
  }

  /** New sheets on all planes, what is cut off the one used on the other. */
  public DeckLayout layout() {
    return layout;
  }

  /** What every place of the old deck counts together. */
  public SheetUnits units() {
    return SheetUnits.together(parts.stream().map(part -> part.map().units()).toList());
  }

  /** Whether any of it is sheets. */
  public boolean hasSheets() {
    return ofBoards().size() < parts.size();
  }

  /** The planes whose deck is boards. */
  public List<Part> ofBoards() {
    return parts.stream().filter(part -> part.map().board().isPresent()).toList();
  }

  /** The sheets of a plane that come up and go down again because rafters are built up. */
  public List<Place> lifted(Reading reading, Part part) {
    return lifting.places(reading, part.plane().name());
  }

  /** How many of them are not replaced by marks; nothing where no rafter was read. */
  public Optional<Figure<Pieces>> sheetsToLift() {
    return lifted.map(Lifting.Count::sheets);
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
    List<Solution> solutions = new ArrayList<>(old.solutions());
    solutions.addAll(lifting.solutions());
    lifted.map(Lifting.Count::solution).ifPresent(solutions::add);
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
    PlaceMap map = old.map(name);
    List<Row> rafters = old.rafters(name);
    Supports supports = rafters.isEmpty() ? regularSupports() : measuredSupports(rafters);
    Map<Row, Mark> told = new LinkedHashMap<>();
    old.marks(name).forEach(mark -> told.put(mark, old.mark(mark)));
    CourseLayout courses = OldDeck.said(row, () -> Layouts.courses(map.plane(), supports, rules()));
    return new Laid(row, map, supports, courses, told);
  }

  private Part part(Laid laid) {
    PlaceMap map = old.markedMap(laid.name());
    List<Mark> marks = laid.marks().keySet().stream().map(found::mark).toList();
    Optional<PatchPlan> patches =
        marks.isEmpty() || map.board().isPresent()
            ? Optional.empty()
            : Optional.of(
                OldDeck.said(
                    laid.row(),
                    () ->
                        Layouts.patches(
                            map,
                            laid.supports(),
                            rules(),
                            patchRules(),
                            marks,
                            PatchPatience.ofEach(markedPlanes()))));
    return new Part(map, laid.courses(), marks, patches);
  }

  private int markedPlanes() {
    return (int)
        job.marks().stream().map(mark -> mark.of(PlaceFields.PLANE).plain()).distinct().count();
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
}
