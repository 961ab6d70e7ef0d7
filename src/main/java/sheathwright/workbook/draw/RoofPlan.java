package sheathwright.workbook.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.Sketch.Pen;
import sheathwright.workbook.part.Words;

/**
 * All planes of a roof in one picture and one scale, with numbers where something is marked: seen
 * from above with north up where it is told how they lie, else side by side, each under its name.
 */
public final class RoofPlan {

  private static final double LINE_POINTS = 15;
  private static final double WIDE_POINTS = 540;
  private static final double MOST_POINTS = 220;
  private static final double BETWEEN_POINTS = 22;
  private static final double NAME_POINTS = 20;
  private static final double NUMBER_POINTS = 13;
  private static final double LETTER_POINTS = 6;

  /** A number where something is marked. */
  public record Numbered(int number, Box box) {}

  /**
   * A plane.
   *
   * @param name as it is called on the page
   * @param plane its shape
   * @param marks what is marked on it
   * @param fromAbove where a bird sees its spots, in inches east and north, if that is known
   */
  public record Drawn(
      String name, Plane plane, List<Numbered> marks, Optional<UnaryOperator<Spot>> fromAbove) {

    private Box bounds() {
      return plane.outline(Reading.aside()).bounds();
    }

    private String inWords() {
      return marks.isEmpty()
          ? name + ": nothing marked"
          : name
              + ": marked "
              + marks.stream()
                  .map(mark -> String.valueOf(mark.number()))
                  .collect(Collectors.joining(", "));
    }
  }

  /** A plane with the place on the picture that each of its spots has. */
  private record Placed(Drawn drawn, UnaryOperator<Spot> onPaper, Spot name) {

    List<Spot> all(List<Spot> spots) {
      return spots.stream().map(onPaper).toList();
    }

    List<Spot> corners(Box box) {
      return all(Sketch.corners(box));
    }

    List<List<Spot>> rings() {
      return onPaper(OnWood.rings(drawn.plane().outline(Reading.aside()).regions()));
    }

    List<List<Spot>> onPaper(List<List<Spot>> rings) {
      return rings.stream().map(this::all).toList();
    }
  }

  private final List<Placed> planes;
  private final Box frame;
  private final String note;

  private RoofPlan(List<Placed> planes, Box frame, String note) {
    this.planes = planes;
    this.frame = frame;
    this.note = note;
  }

  /** Draws the planes below what stands on the page, as large as fits. */
  public static void draw(Tab page, List<Drawn> planes) {
    boolean isKnown = planes.stream().allMatch(plane -> plane.fromAbove().isPresent());
    (isKnown ? fromAbove(planes) : sideBySide(planes)).on(page);
  }

  private static RoofPlan fromAbove(List<Drawn> planes) {
    List<Placed> placed = new ArrayList<>();
    List<Spot> all = new ArrayList<>();
    for (Drawn each : planes) {
      UnaryOperator<Spot> onPaper = each.fromAbove().orElseThrow();
      Region piece = each.plane().outline(Reading.aside()).regions().get(0);
      Placed plane = new Placed(each, onPaper, onPaper.apply(piece.middle()));
      placed.add(plane);
      plane.rings().forEach(all::addAll);
    }
    double left = all.stream().mapToDouble(Spot::x).min().orElse(0);
    double right = all.stream().mapToDouble(Spot::x).max().orElse(1);
    double bottom = all.stream().mapToDouble(Spot::y).min().orElse(0);
    double top = all.stream().mapToDouble(Spot::y).max().orElse(1);
    double scale =
        Math.max(
            (right - left) / (WIDE_POINTS - BETWEEN_POINTS),
            (top - bottom) / (MOST_POINTS - BETWEEN_POINTS));
    Box frame = padded(new Box(left, bottom, right, top), scale, WIDE_POINTS, BETWEEN_POINTS);
    return new RoofPlan(placed, frame, "Seen from above, north at the top.");
  }

  /** A frame as wide as the page with what it holds in its middle. */
  private static Box padded(Box box, double scale, double widePoints, double airPoints) {
    double wide = (widePoints * scale - box.width()) / 2;
    double air = airPoints * scale / 2;
    return new Box(box.left() - wide, box.bottom() - air, box.right() + wide, box.top() + air);
  }

  private static RoofPlan sideBySide(List<Drawn> planes) {
    List<List<Drawn>> best = List.of(planes);
    for (int count = 2; count <= planes.size(); count++) {
      int each = (planes.size() + count - 1) / count;
      List<List<Drawn>> rows = new ArrayList<>();
      for (int first = 0; first < planes.size(); first += each) {
        rows.add(planes.subList(first, Math.min(planes.size(), first + each)));
      }
      if (scale(rows) < scale(best)) {
        best = rows;
      }
    }
    return inRows(best, scale(best));
  }

  /** Inches a point, for rows of planes that just fit; without end, where names alone fill them. */
  private static double scale(List<List<Drawn>> rows) {
    double scale = 0;
    double tall = 0;
    for (List<Drawn> row : rows) {
      double wide = row.stream().mapToDouble(each -> each.bounds().width()).sum();
      scale = Math.max(scale, over(wide, WIDE_POINTS - BETWEEN_POINTS * (row.size() + 1)));
      tall += height(row);
    }
    return Math.max(scale, over(tall, MOST_POINTS - rows.size() * (NAME_POINTS + BETWEEN_POINTS)));
  }

  private static double over(double inches, double points) {
    return points > 0 ? inches / points : Double.POSITIVE_INFINITY;
  }

  private static RoofPlan inRows(List<List<Drawn>> rows, double scale) {
    double between = BETWEEN_POINTS * scale;
    double name = NAME_POINTS * scale;
    double wide = WIDE_POINTS * scale;
    List<Placed> placed = new ArrayList<>();
    double top = 0;
    for (List<Drawn> row : rows) {
      double used = row.stream().mapToDouble(each -> each.bounds().width()).sum();
      double left = (wide - used - between * (row.size() - 1)) / 2;
      double foot = top - height(row);
      for (Drawn each : row) {
        Box bounds = each.bounds();
        double right = left - bounds.left();
        double up = foot - bounds.bottom();
        placed.add(
            new Placed(
                each,
                spot -> new Spot(spot.x() + right, spot.y() + up),
                new Spot(left + bounds.width() / 2, foot - name / 2)));
        left += bounds.width() + between;
      }
      top = foot - name - between;
    }
    return new RoofPlan(
        placed,
        new Box(0, top + between / 2, wide, between / 2),
        "Planes stand side by side, not as they meet; each is seen as one looks up its slope, the gutter below.");
  }

  private static double height(List<Drawn> row) {
    return row.stream().mapToDouble(each -> each.bounds().height()).max().orElse(0);
  }

  private void on(Tab page) {
    double scale = frame.width() / WIDE_POINTS;
    int lines = Math.max(4, (int) Math.ceil(frame.height() / scale / LINE_POINTS));
    double tall = lines * LINE_POINTS * scale;
    Box whole = new Box(frame.left(), frame.top() - tall, frame.right(), frame.top());
    Sketch sketch =
        new Sketch(
            page.sheet(),
            new Words(Drawing.ROOF.named(), "Plan of the roof", inWords()),
            whole,
            page.next(),
            page.columns(),
            lines);
    planes.forEach(plane -> draw(sketch, plane));
    List<Box> taken = new ArrayList<>();
    planes.forEach(plane -> taken.addAll(taken(plane, scale)));
    planes.forEach(plane -> name(sketch, plane, scale, taken));
    planes.forEach(plane -> numbers(sketch, plane, scale));
    page.skip(lines);
    boolean isMarked = planes.stream().anyMatch(plane -> !plane.drawn().marks().isEmpty());
    page.note(isMarked ? note + " Numbers are those of the list." : note);
  }

  private String inWords() {
    return planes.stream().map(Placed::drawn).map(Drawn::inWords).collect(Collectors.joining("; "))
        + ". "
        + note;
  }

  private static void draw(Sketch sketch, Placed plane) {
    sketch.areas(Pen.WOOD, plane.rings());
    for (Box opening : plane.drawn().plane().openings(Reading.aside())) {
      sketch.areas(Pen.OPENING, List.of(plane.corners(opening)));
    }
    sketch.areas(Pen.OUTLINE, plane.rings());
    for (Numbered mark : plane.drawn().marks()) {
      sketch.areas(Pen.MARK, plane.onPaper(on(plane, mark).rings()));
    }
  }

  private static OnWood on(Placed plane, Numbered mark) {
    return OnWood.of(plane.drawn().plane(), mark.box());
  }

  /** Where a name may not stand: on openings, on what is marked, and on its numbers. */
  private static List<Box> taken(Placed plane, double scale) {
    List<Box> taken = new ArrayList<>();
    plane.drawn().plane().openings(Reading.aside()).stream()
        .map(plane::corners)
        .map(FreeSpot::around)
        .forEach(taken::add);
    for (Numbered mark : plane.drawn().marks()) {
      plane.onPaper(on(plane, mark).rings()).stream().map(FreeSpot::around).forEach(taken::add);
      taken.add(chip(plane, mark, scale));
    }
    return taken;
  }

  /** Writes a plane's name where nothing lies, and takes its place. */
  private void name(Sketch sketch, Placed plane, double scale, List<Box> taken) {
    String name = plane.drawn().name();
    double wide = LETTER_POINTS * name.length() * scale;
    double high = NAME_POINTS * scale;
    Spot middle =
        new FreeSpot(plane.rings(), planes.stream().map(Placed::rings).toList(), frame, taken)
            .near(plane.name(), wide, high);
    taken.add(FreeSpot.box(middle, wide, high));
    sketch.words(name, middle, wide, high, 9);
  }

  private static void numbers(Sketch sketch, Placed plane, double scale) {
    for (Numbered mark : plane.drawn().marks()) {
      Box chip = chip(plane, mark, scale);
      sketch.box(Pen.CHIP, chip);
      sketch.words(
          String.valueOf(mark.number()),
          new Spot(chip.middleX(), chip.middleY()),
          chip.width(),
          chip.height(),
          9);
    }
  }

  /** What a number stands on, in the middle of what it marks. */
  private static Box chip(Placed plane, Numbered mark, double scale) {
    int digits = String.valueOf(mark.number()).length();
    Spot middle = plane.onPaper().apply(on(plane, mark).middle());
    return FreeSpot.box(middle, (digits * 7 + 5) * scale, NUMBER_POINTS * scale);
  }
}
