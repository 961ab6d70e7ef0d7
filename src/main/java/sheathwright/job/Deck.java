package sheathwright.job;

import java.util.ArrayList;
import java.util.Comparator;
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
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.layout.StripRule;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.sheathing.patch.PatchRules;

/**
 * A job's planes with what they stand on, what was found on them, and what new sheets and patches
 * they take.
 */
public final class Deck {

  private static final String CENTER = "center_in";
  private static final Figure<Length> NO_LEAN = Figure.of(0, Units.FOOT);

  private final Job job;
  private final Belonging planes;
  private final Optional<Belonging> marks;
  private final List<Part> parts;
  private final DeckLayout layout;
  private final Figure<Nails> nails;

  /**
   * One plane.
   *
   * @param plane its shape
   * @param courses sheets laid on it anew
   * @param marks what was found on it
   * @param patches what is cut out of it, if anything was found
   */
  public record Part(
      Plane plane, CourseLayout courses, List<Mark> marks, Optional<PatchPlan> patches) {}

  Deck(Job job) {
    this.job = job;
    this.planes =
        Belonging.of("lines_of_each_plane")
            .with("plane", job.planes(), "plane")
            .with("opening", job.openings(), "plane")
            .with("rafter", job.supports(), "plane");
    this.marks =
        job.marks().isEmpty()
            ? Optional.empty()
            : Optional.of(
                Belonging.of("marks_of_each_plane").with("mark", job.marks(), "mark", "plane"));
    this.parts = job.planes().stream().map(this::part).toList();
    List<CourseLayout> planes = parts.stream().map(Part::courses).toList();
    this.layout = Layouts.together(planes);
    this.nails = DeckNails.of(job, planes);
  }

  /** The planes, in the order of the table. */
  public List<Part> parts() {
    return parts;
  }

  /** New sheets on all planes, what is cut off the one used on the other. */
  public DeckLayout layout() {
    return layout;
  }

  /** Every mark, if there are any. */
  public Optional<Roll> marks() {
    return job.marks().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "marks",
                "what was found",
                job.marks(),
                Stream.of("mark", "plane", "finding", "along_in", "up_in", "width_in", "height_in")
                    .map(Deck::column)
                    .toList()));
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
                List.of(column("plane"), column("center_in"))));
  }

  private static Roll.Column<Map<String, Traced>> column(String name) {
    return Roll.column(name, row -> row.get(name));
  }

  /** Everything that was solved and not computed. */
  public List<Solution> solutions() {
    List<Solution> solutions = new ArrayList<>(List.of(planes.solution()));
    marks.map(Belonging::solution).ifPresent(solutions::add);
    for (Part part : parts) {
      Solution.behind(part.plane().measures().area()).ifPresent(solutions::add);
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

  private Part part(Map<String, Traced> row) {
    String name = row.get("plane").plain();
    Plane plane = said(row, () -> shape(name, row));
    for (Map<String, Traced> opening : on(name, job.openings())) {
      Plane solid = plane;
      plane =
          said(
              opening,
              () ->
                  solid.without(
                      Job.figure(opening, "along_ft", Units.FOOT),
                      Job.figure(opening, "up_ft", Units.FOOT),
                      Job.figure(opening, "width_ft", Units.FOOT),
                      Job.figure(opening, "height_ft", Units.FOOT)));
    }
    Plane whole = plane.given(planes.input());
    DeckPlaces places = new DeckPlaces(whole);
    List<Map<String, Traced>> rafters = on(name, job.supports());
    rafters.forEach(places::checkRafter);
    Supports supports = rafters.isEmpty() ? regularSupports() : measuredSupports(rafters);
    List<Map<String, Traced>> found = on(name, job.marks());
    found.forEach(places::checkMark);
    List<Mark> marks = found.stream().map(Deck::mark).toList();
    Optional<PatchPlan> patches =
        marks.isEmpty()
            ? Optional.empty()
            : Optional.of(
                said(
                    row,
                    () ->
                        Layouts.patches(
                            whole.given(this.marks.orElseThrow().input()),
                            supports,
                            rules(),
                            patchRules(),
                            marks,
                            PatchPatience.ofEach(markedPlanes()))));
    CourseLayout courses = said(row, () -> Layouts.courses(whole, supports, rules()));
    return new Part(whole, courses, marks, patches);
  }

  private int markedPlanes() {
    return (int) job.marks().stream().map(mark -> mark.get("plane").plain()).distinct().count();
  }

  private static Plane shape(String name, Map<String, Traced> row) {
    if (row.get("corners_ft") instanceof Choice<?> corners) {
      @SuppressWarnings("unchecked") // a field of text is read as a string
      Choice<String> text = (Choice<String>) corners;
      return Plane.outline(name, text);
    }
    return Plane.trapezoid(
        name,
        Job.figure(row, "eave_ft", Units.FOOT),
        Job.figure(row, "slope_length_ft", Units.FOOT),
        lean(row, "left_lean_ft"),
        lean(row, "right_lean_ft"));
  }

  static Figure<Length> lean(Map<String, Traced> row, String column) {
    return row.containsKey(column) ? Job.figure(row, column, Units.FOOT) : NO_LEAN;
  }

  private Supports regularSupports() {
    Figure<Length> spacing = job.fact("support_spacing_in", Units.INCH);
    return RefusedException.solvedFor(List.of(spacing), () -> Supports.every(spacing));
  }

  /** Rafters as measured; two that do not stand beside each other are said where the second is. */
  private static Supports measuredSupports(List<Map<String, Traced>> rafters) {
    List<Map<String, Traced>> sorted =
        rafters.stream().sorted(Comparator.comparingDouble(Deck::inches)).toList();
    for (int i = 1; i < sorted.size(); i++) {
      List<Figure<Length>> two = List.of(center(sorted.get(i - 1)), center(sorted.get(i)));
      RefusedException.solvedFor(List.of(two.get(1)), () -> Supports.at(two));
    }
    return RefusedException.solvedFor(
        List.of(center(sorted.get(0))),
        () -> Supports.at(rafters.stream().map(Deck::center).toList()));
  }

  private static Figure<Length> center(Map<String, Traced> rafter) {
    return Job.figure(rafter, CENTER, Units.INCH);
  }

  private static double inches(Map<String, Traced> rafter) {
    return center(rafter).value();
  }

  private static Mark mark(Map<String, Traced> row) {
    @SuppressWarnings("unchecked") // the field says of which enum its words are
    Choice<Finding> finding = (Choice<Finding>) row.get("finding");
    return Mark.of(
        row.get("mark").plain(),
        finding,
        Job.figure(row, "along_in", Units.INCH),
        Job.figure(row, "up_in", Units.INCH),
        Job.figure(row, "width_in", Units.INCH),
        Job.figure(row, "height_in", Units.INCH));
  }

  private LayoutRules rules() {
    LayoutRules rules = Layouts.usual();
    if (job.knows("gap_in")) {
      rules = rules.gap(job.fact("gap_in", Units.INCH));
    }
    return job.knows("strip_rule") ? rules.strips(job.<StripRule>word("strip_rule")) : rules;
  }

  private PatchRules patchRules() {
    return job.knows("beyond_mark_in")
        ? PatchRules.USUAL.beyondMark(job.fact("beyond_mark_in", Units.INCH))
        : PatchRules.USUAL;
  }

  private static List<Map<String, Traced>> on(String plane, List<Map<String, Traced>> rows) {
    return rows.stream().filter(row -> row.get("plane").plain().equals(plane)).toList();
  }

  /** What is refused for a line of a table: its measures, or else its shape in words. */
  private static <T> T said(Map<String, Traced> row, Supplier<T> made) {
    List<Traced> measures =
        row.entrySet().stream()
            .filter(cell -> cell.getValue() instanceof Figure || cell.getKey().equals("corners_ft"))
            .map(Map.Entry::getValue)
            .toList();
    return RefusedException.solvedFor(measures, made);
  }
}
