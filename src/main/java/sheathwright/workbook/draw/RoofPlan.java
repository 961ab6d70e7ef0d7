package sheathwright.workbook.draw;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.Sketch.Pen;

/**
 * All planes of a roof in one picture and one scale, side by side, each under its name, with
 * numbers where something is marked.
 */
public final class RoofPlan {

  private static final double LINE_POINTS = 15;
  private static final double WIDE_POINTS = 540;
  private static final double MOST_POINTS = 270;
  private static final double BETWEEN_POINTS = 22;
  private static final double NAME_POINTS = 20;
  private static final double NUMBER_POINTS = 13;

  /** A number where something is marked. */
  public record Numbered(int number, Box box) {}

  /** A plane with its name and what is marked on it. */
  public record Drawn(String name, Plane plane, List<Numbered> marks) {

    private Box bounds() {
      return plane.outline(Reading.aside()).bounds();
    }
  }

  private final List<List<Drawn>> rows;
  private final double scale;

  private RoofPlan(List<List<Drawn>> rows) {
    this.rows = rows;
    double widest = 0;
    double tall = 0;
    for (List<Drawn> row : rows) {
      widest = Math.max(widest, row.stream().mapToDouble(each -> each.bounds().width()).sum());
      tall += row.stream().mapToDouble(each -> each.bounds().height()).max().orElse(0);
    }
    int most = rows.stream().mapToInt(List::size).max().orElse(1);
    double wide = WIDE_POINTS - BETWEEN_POINTS * (most + 1);
    double high = MOST_POINTS - rows.size() * (NAME_POINTS + BETWEEN_POINTS);
    scale = Math.max(widest / wide, tall / high);
  }

  /** Draws the planes below what stands on the page, as large as fits. */
  public static void draw(Tab page, List<Drawn> planes) {
    RoofPlan best = null;
    for (int count = 1; count <= planes.size(); count++) {
      int each = (planes.size() + count - 1) / count;
      List<List<Drawn>> rows = new ArrayList<>();
      for (int first = 0; first < planes.size(); first += each) {
        rows.add(planes.subList(first, Math.min(planes.size(), first + each)));
      }
      RoofPlan plan = new RoofPlan(rows);
      if (plan.scale > 0 && (best == null || plan.scale < best.scale)) {
        best = plan;
      }
    }
    if (best != null) {
      best.on(page);
    }
  }

  private void on(Tab page) {
    double between = BETWEEN_POINTS * scale;
    double name = NAME_POINTS * scale;
    double high = between / 2;
    for (List<Drawn> row : rows) {
      high += height(row) + name + between;
    }
    int lines = Math.max(4, (int) Math.ceil(high / scale / LINE_POINTS));
    double tall = lines * LINE_POINTS * scale;
    double wide = WIDE_POINTS * scale;
    Sketch sketch =
        new Sketch(page.sheet(), new Box(0, 0, wide, tall), page.next(), page.columns(), lines, 1);
    double top = tall - between / 2;
    for (List<Drawn> row : rows) {
      double used = row.stream().mapToDouble(each -> each.bounds().width()).sum();
      double left = (wide - used - between * (row.size() - 1)) / 2;
      double bottom = top - height(row) - name;
      for (Drawn each : row) {
        draw(sketch, each, left, bottom + name);
        left += each.bounds().width() + between;
      }
      top = bottom - between;
    }
    page.skip(lines);
    page.note(
        "Planes stand side by side, not as they meet; each is seen as one looks up its slope, the gutter below. Numbers are those of the list.");
  }

  private static double height(List<Drawn> row) {
    return row.stream().mapToDouble(each -> each.bounds().height()).max().orElse(0);
  }

  private void draw(Sketch sketch, Drawn drawn, double left, double bottom) {
    Box bounds = drawn.bounds();
    double right = left - bounds.left();
    double up = bottom - bounds.bottom();
    List<List<Spot>> rings = new ArrayList<>();
    for (Region region : drawn.plane().outline(Reading.aside()).regions()) {
      rings.add(moved(region.corners(), right, up));
      region.holes().forEach(hole -> rings.add(moved(hole, right, up)));
    }
    sketch.areas(Pen.WOOD, rings);
    for (Box opening : drawn.plane().openings(Reading.aside())) {
      sketch.box(Pen.OPENING, moved(opening, right, up));
    }
    sketch.areas(Pen.OUTLINE, rings);
    for (Numbered mark : drawn.marks()) {
      sketch.box(Pen.MARK, moved(mark.box(), right, up));
    }
    for (Numbered mark : drawn.marks()) {
      number(sketch, mark.number(), moved(mark.box(), right, up));
    }
    sketch.words(
        drawn.name(),
        new Spot(left + bounds.width() / 2, bottom - NAME_POINTS * scale / 2),
        Math.max(bounds.width(), 90 * scale),
        NAME_POINTS * scale,
        10);
  }

  private void number(Sketch sketch, int number, Box box) {
    double high = NUMBER_POINTS * scale;
    double wide = (String.valueOf(number).length() * 7 + 5) * scale;
    Spot middle = new Spot(box.middleX(), box.middleY());
    sketch.box(Pen.CHIP, Box.at(middle.x() - wide / 2, middle.y() - high / 2, wide, high));
    sketch.words(String.valueOf(number), middle, wide, high, 9);
  }

  private static List<Spot> moved(List<Spot> corners, double right, double up) {
    return corners.stream().map(spot -> new Spot(spot.x() + right, spot.y() + up)).toList();
  }

  private static Box moved(Box box, double right, double up) {
    return new Box(box.left() + right, box.bottom() + up, box.right() + right, box.top() + up);
  }
}
