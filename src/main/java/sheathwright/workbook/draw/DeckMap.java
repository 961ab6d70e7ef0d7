package sheathwright.workbook.draw;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import sheathwright.figure.Lengths;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.Joint;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.Sketch.Pen;
import sheathwright.workbook.part.Words;

/**
 * A plane of the deck drawn to scale, as one looks up at it: its old sheets with their keys, or new
 * ones with the joints that miss their support; supports, what was found and what is cut out. Each
 * is told by a letter or a hatching, never by color alone.
 */
public final class DeckMap {

  private static final double LINE_POINTS = 15;
  private static final double PAGE_POINTS = 555;
  private static final int PAGE_CHARACTERS = 107;
  private static final double HEADING = 40;
  private static final double KEY_LINE = 17;
  private static final int MOST_LINES = 18;
  private static final double HATCH_POINTS = 5;
  private static final double LARGEST_KEY = 8;
  private static final double SMALLEST_KEY = 4;
  private static final double LETTER_WIDTH = 0.62;
  private static final double LETTER_HEIGHT = 1.25;
  private static final double LABEL_POINTS = 11;

  /** No map takes more of a page with its heading and its key, in points. */
  public static final double TALLEST = (MOST_LINES + 2) * LINE_POINTS + HEADING + 5 * KEY_LINE;

  private final Plane plane;
  private final Supports supports;
  private final List<Region> sheets;
  private final List<Joint> bareJoints;
  private final Optional<PlaceMap> old;
  private final List<Mark.Seen> marks;
  private final List<Patch> patches;
  private final Box bounds;
  private final Optional<UnaryOperator<String>> numbers;
  private final List<Box> labeled = new ArrayList<>();
  private final double scale;

  private DeckMap(
      Plane plane,
      Supports supports,
      List<Region> sheets,
      List<Joint> bareJoints,
      Optional<PlaceMap> old,
      List<Mark> marks,
      List<Patch> patches,
      Optional<UnaryOperator<String>> numbers) {
    this.plane = plane;
    this.supports = supports;
    this.sheets = sheets;
    this.bareJoints = bareJoints;
    this.old = old;
    this.marks = marks.stream().map(mark -> mark.seen(Reading.aside())).toList();
    this.patches = patches;
    this.numbers = numbers;
    this.bounds = plane.outline(Reading.aside()).bounds();
    this.scale =
        Math.max(bounds.width() / PAGE_POINTS, bounds.height() / (MOST_LINES * LINE_POINTS));
  }

  /**
   * Draws a plane as it is laid below what stands on the page, under a heading, with its key, all
   * on one page.
   */
  public static void draw(
      Tab page, String heading, CourseLayout layout, List<Mark> marks, List<Patch> patches) {
    CourseLayout.Laid laid = layout.laid(Reading.aside());
    new DeckMap(
            layout.plane(),
            layout.supports(),
            laid.sheets().stream().flatMap(sheet -> sheet.parts().stream()).toList(),
            laid.joints().stream().filter(joint -> !joint.isSupported()).toList(),
            Optional.empty(),
            marks,
            patches,
            Optional.empty())
        .on(page, heading);
  }

  /** Draws a plane of the old deck likewise, with the key of each place. */
  public static void draw(
      Tab page,
      String heading,
      PlaceMap map,
      Supports supports,
      List<Mark> marks,
      List<Patch> patches) {
    draw(page, heading, map, supports, marks, patches, Optional.empty());
  }

  /**
   * The same for somebody who has no use for keys: marks, and what is new for them, are called by
   * the numbers of a list.
   *
   * @param numbers of the marks
   */
  public static void numbered(
      Tab page,
      String heading,
      PlaceMap map,
      Supports supports,
      List<Mark> marks,
      List<Patch> patches,
      UnaryOperator<String> numbers) {
    draw(page, heading, map, supports, marks, patches, Optional.of(numbers));
  }

  private static void draw(
      Tab page,
      String heading,
      PlaceMap map,
      Supports supports,
      List<Mark> marks,
      List<Patch> patches,
      Optional<UnaryOperator<String>> numbers) {
    new DeckMap(
            map.plane(),
            supports,
            map.places(Reading.aside()).stream().map(Place::piece).toList(),
            List.of(),
            Optional.of(map),
            marks,
            patches,
            numbers)
        .on(page, heading);
  }

  private void on(Tab page, String heading) {
    double margin = 14 * scale;
    Box frame = bounds.grown(margin);
    int lines = Math.max(4, (int) Math.ceil(frame.height() / scale / LINE_POINTS));
    Page.keepTogether(page, lines * LINE_POINTS + HEADING + KEY_LINE * key().size());
    page.heading(heading);
    double high = lines * LINE_POINTS * scale;
    double wide = PAGE_POINTS * scale + 2 * margin;
    Box padded = Box.at(frame.left(), frame.bottom() - (high - frame.height()), wide, high);
    Sketch sketch =
        new Sketch(
            page.sheet(),
            new Words(Drawing.MAP.named(plane.name()), heading, inWords()),
            padded,
            page.next(),
            page.columnsIn(PAGE_CHARACTERS),
            lines);
    wood(sketch);
    supports(sketch);
    patches.forEach(patch -> patch(sketch, patch));
    sketch.lines(Pen.SHEET, sheetEdges());
    openings(sketch);
    old.filter(map -> numbers.isEmpty()).ifPresent(map -> keys(sketch, map));
    marks.forEach(mark -> mark(sketch, mark));
    joints(sketch);
    sketch.areas(Pen.OUTLINE, OnWood.rings(plane.outline(Reading.aside()).regions()));
    labels(sketch, margin);
    page.skip(lines);
    key().forEach(page::note);
  }

  private String inWords() {
    List<String> told = new ArrayList<>();
    told.add(
        "Plane %s to scale, %s along the eave and %s up the slope, with %s %s"
            .formatted(
                plane.name(),
                Lengths.inFeetAndInches(bounds.width()),
                Lengths.inFeetAndInches(bounds.height()),
                sheets.size(),
                old.isEmpty()
                    ? "sheets as they would be laid"
                    : numbers.isPresent() ? "old sheets" : "old sheets by their keys"));
    told.add(plane.openings(Reading.aside()).size() + " openings");
    told.add(
        marks.isEmpty()
            ? "nothing marked"
            : "marked: "
                + marks.stream()
                    .map(mark -> called(mark.key()) + " " + Shown.inWords(mark.finding().word()))
                    .collect(joining(", ")));
    told.add(patches.isEmpty() ? "nothing cut out" : patches.size() + " patches");
    return String.join("; ", told) + ".";
  }

  /** What a mark is called: its key, or the number that stands for it. */
  private String called(String mark) {
    return numbers.map(number -> "No. " + number.apply(mark)).orElse(mark);
  }

  /** What stands on a patch: its own number, or those of the marks that it is for. */
  private String labelOf(Patch patch) {
    return numbers
        .map(number -> patch.marks().stream().map(number).distinct().collect(joining(", ")))
        .orElse("P" + patch.number());
  }

  private void wood(Sketch sketch) {
    sketch.areas(Pen.WOOD, OnWood.rings(plane.outline(Reading.aside()).regions()));
  }

  private void supports(Sketch sketch) {
    List<List<Spot>> lines = new ArrayList<>();
    for (double x : supports.centers(Reading.aside()).between(bounds.left(), bounds.right())) {
      Box strip = new Box(x - 0.05, bounds.bottom(), x + 0.05, bounds.top());
      for (Region part : plane.outline(Reading.aside()).within(strip)) {
        lines.add(List.of(new Spot(x, part.bounds().bottom()), new Spot(x, part.bounds().top())));
      }
    }
    sketch.lines(Pen.SUPPORT, lines);
  }

  private List<List<Spot>> sheetEdges() {
    List<List<Spot>> edges = new ArrayList<>();
    for (List<Spot> ring : OnWood.rings(sheets)) {
      List<Spot> closed = new ArrayList<>(ring);
      closed.add(ring.get(0));
      edges.add(closed);
    }
    return edges;
  }

  private void openings(Sketch sketch) {
    for (Box opening : plane.openings(Reading.aside())) {
      sketch.box(Pen.OPENING, opening);
      List<Spot> corners = Sketch.corners(opening);
      sketch.lines(
          Pen.OPENING,
          List.of(
              List.of(corners.get(0), corners.get(2)), List.of(corners.get(1), corners.get(3))));
    }
  }

  private void patch(Sketch sketch, Patch patch) {
    List<List<Spot>> rings = new ArrayList<>();
    for (Patch.Piece piece : patch.pieces()) {
      rings.addAll(OnWood.rings(plane.outline(Reading.aside()).within(piece.box())));
    }
    sketch.areas(Pen.PATCH, rings);
    sketch.lines(Pen.HATCH, Hatching.lines(rings, 45, HATCH_POINTS * scale));
    label(sketch, labelOf(patch), new Spot(patch.box().middleX(), patch.box().top()), -8);
  }

  private void mark(Sketch sketch, Mark.Seen mark) {
    OnWood part = OnWood.of(plane, mark.box());
    sketch.areas(mark.isCutOut() ? Pen.MARK : Pen.NOTE, part.rings());
    char letter = mark.finding().letter();
    String key = numbers.map(number -> number.apply(mark.key())).orElse(mark.key());
    label(sketch, key.startsWith(letter + "-") ? key : letter + " " + key, part.middle(), 0);
  }

  private void joints(Sketch sketch) {
    for (Joint joint : bareJoints) {
      Spot foot = joint.foot();
      Spot head = new Spot(foot.x(), foot.y() + joint.length());
      sketch.lines(Pen.JOINT, List.of(List.of(foot, head)));
      String letter = joint.repair().word().substring(0, 1).toUpperCase(java.util.Locale.ROOT);
      label(sketch, letter, new Spot(foot.x(), (foot.y() + head.y()) / 2), 0);
    }
  }

  /** The key of each place, as large as fits: in its upper left corner, or in its middle. */
  private void keys(Sketch sketch, PlaceMap map) {
    List<List<Spot>> chips = new ArrayList<>();
    List<Runnable> words = new ArrayList<>();
    for (Place place : map.places(Reading.aside())) {
      Region piece = place.piece();
      Box box = piece.bounds();
      String text = place.key().onItsPlane();
      double points =
          Math.min(
              box.height() / scale / LETTER_HEIGHT,
              box.width() / scale / (LETTER_WIDTH * text.length()));
      double size = Math.max(SMALLEST_KEY, Math.min(LARGEST_KEY, points));
      double wide = (LETTER_WIDTH * text.length() * size + 1) * scale;
      double high = LETTER_HEIGHT * size * scale;
      Box chip =
          piece.isRectangle()
              ? Box.at(box.left() + scale, box.top() - high - scale, wide, high)
              : Box.at(piece.middle().x() - wide / 2, piece.middle().y() - high / 2, wide, high);
      chips.add(Sketch.corners(chip));
      Spot middle = new Spot(chip.middleX(), chip.middleY());
      words.add(() -> sketch.words(text, middle, wide, high, size));
    }
    sketch.areas(Pen.CHIP, chips);
    words.forEach(Runnable::run);
  }

  /**
   * Words on a chip of white, so that a hatching does not run through them; below others that stand
   * there already.
   */
  private void label(Sketch sketch, String text, Spot at, double pointsUp) {
    double wide = (5 * text.length() + 4) * scale;
    double high = LABEL_POINTS * scale;
    Box chip = Box.at(at.x() - wide / 2, at.y() + pointsUp * scale - high / 2, wide, high);
    while (labeled.stream().anyMatch(chip::overlaps)) {
      chip = Box.at(chip.left(), chip.bottom() - high, wide, high);
    }
    labeled.add(chip);
    sketch.box(Pen.CHIP, chip);
    sketch.words(text, new Spot(chip.middleX(), chip.middleY()), wide, high, 8);
  }

  private void labels(Sketch sketch, double margin) {
    sketch.words(
        "eave, " + Lengths.inFeetAndInches(bounds.width()),
        new Spot(bounds.middleX(), bounds.bottom() - margin / 2),
        120 * scale,
        margin,
        8);
    sketch.words(
        "ridge side",
        new Spot(bounds.middleX(), bounds.top() + margin / 2),
        120 * scale,
        margin,
        8);
  }

  private boolean isOfBoards() {
    return old.flatMap(PlaceMap::board).isPresent();
  }

  private List<String> key() {
    List<String> key = new ArrayList<>();
    key.add(
        "Solid lines are %s, broken lines supports (%s); a crossed box is an opening. Seen as one looks up the slope, %s up the slope."
            .formatted(
                old.isEmpty() ? "sheets" : isOfBoards() ? "the plane's sides" : "the old sheets",
                supports,
                Lengths.inFeetAndInches(bounds.height())));
    if (isOfBoards() && numbers.isEmpty()) {
      key.add(
          "The deck is boards, which have no places: a mark is known by the plane and its own key.");
    }
    if (numbers.isPresent() && !isOfBoards() && old.orElseThrow().joints().areAssumed()) {
      key.add("How the old sheets lie is assumed: nobody has measured their joints yet.");
    }
    old.filter(map -> !isOfBoards() && numbers.isEmpty())
        .ifPresent(
            map -> {
              PlaceKey first = map.places(Reading.aside()).get(0).key();
              key.add(
                  "%s here is %s everywhere else: plane, course from the lowest point, place from the left; %s."
                      .formatted(
                          first.onItsPlane(),
                          first,
                          map.joints().areAssumed()
                              ? "joints assumed, nobody has measured them yet"
                              : "joints as far as they were measured"));
            });
    if (!patches.isEmpty()) {
      key.add(
          numbers.isPresent()
              ? "Hatched with a heavy edge: cut out and put in new, for the numbers of the list."
              : "Hatched with a heavy edge, P1, P2, …: cut out and put in new.");
    }
    Set<Finding> found = new LinkedHashSet<>();
    marks.forEach(mark -> found.add(mark.finding()));
    if (!found.isEmpty()) {
      List<String> letters = new ArrayList<>();
      found.forEach(finding -> letters.add(finding.letter() + " " + Shown.inWords(finding.word())));
      key.add(
          "A tinted box with a letter and the mark's %s; broken where the wood stays: "
                  .formatted(numbers.isPresent() ? "number in the list" : "key")
              + String.join(", ", letters)
              + ".");
    }
    Set<Joint.Repair> repairs = new LinkedHashSet<>();
    bareJoints.forEach(joint -> repairs.add(joint.repair()));
    if (!repairs.isEmpty()) {
      List<String> letters = new ArrayList<>();
      repairs.forEach(
          repair ->
              letters.add(
                  repair.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                      + " "
                      + repair.word()));
      key.add(
          "A heavy joint misses its support; its letter says what makes it good: "
              + String.join(", ", letters)
              + ".");
    }
    return key;
  }
}
