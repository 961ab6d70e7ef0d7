package sheathwright.workbook.draw;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Lengths;
import sheathwright.leveling.target.Surface;
import sheathwright.roof.Box;
import sheathwright.roof.Spot;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.Sketch.Pen;
import sheathwright.workbook.part.Words;

/**
 * Build-up over a plane as a map: rafters and the stations where the string was read, and lines on
 * which the build-up is the same, each with its height.
 */
public final class LevelMap {

  private static final double LINE_POINTS = 15;
  private static final double PAGE_POINTS = 555;
  private static final double HEADING = 40;
  private static final double KEY = 34;
  private static final int MOST_LINES = 18;
  private static final double DOT_POINTS = 3;

  private final String plane;
  private final List<List<Surface.Height>> rafters;
  private final Box bounds;
  private final double scale;

  private LevelMap(String plane, List<List<Surface.Height>> rafters) {
    this.plane = plane;
    this.rafters = rafters;
    Box box = null;
    for (List<Surface.Height> rafter : rafters) {
      for (Surface.Height station : rafter) {
        Box here = Box.at(station.at().x(), station.at().y(), 0, 0);
        box = box == null ? here : box.with(here);
      }
    }
    this.bounds = box;
    this.scale =
        Math.max(bounds.width() / PAGE_POINTS, bounds.height() / (MOST_LINES * LINE_POINTS));
  }

  /** Draws the map below what stands on the page, if there is anything between the stations. */
  public static void draw(
      Tab page, String heading, String plane, List<List<Surface.Height>> rafters) {
    if (!Surface.through(rafters).isEmpty()) {
      new LevelMap(plane, rafters).on(page, heading);
    }
  }

  private void on(Tab page, String heading) {
    double margin = 14 * scale;
    Box frame = bounds.grown(margin);
    int lines = Math.max(4, (int) Math.ceil(frame.height() / scale / LINE_POINTS));
    Page.keepTogether(page, lines * LINE_POINTS + HEADING + KEY);
    page.heading(heading);
    double high = lines * LINE_POINTS * scale;
    double wide = PAGE_POINTS * scale + 2 * margin;
    Box padded = Box.at(frame.left(), frame.bottom() - (high - frame.height()), wide, high);
    double greatest =
        rafters.stream().flatMap(List::stream).mapToDouble(Surface.Height::value).max().orElse(0);
    Sketch sketch =
        new Sketch(
            page.sheet(),
            new Words(Drawing.BUILD_UP.named(plane), heading, inWords(greatest)),
            padded,
            page.next(),
            page.columns(),
            lines);
    sketch.box(Pen.WOOD, bounds);
    rafters(sketch);
    Surface surface = Surface.through(rafters);
    for (double level : Surface.levels(greatest)) {
      contour(sketch, surface.lines(level), Lengths.inInches(level));
    }
    sketch.words("eave side", edge(bounds.bottom() - margin / 2), 120 * scale, margin, 8);
    sketch.words("ridge side", edge(bounds.top() + margin / 2), 120 * scale, margin, 8);
    page.skip(lines);
    page.note(
        "Broken lines are rafters, dots where the string was read. Along a full line the wood is built up equally, by as many inches as stand on it. Seen as one looks up the slope.");
  }

  private String inWords(double greatest) {
    return "Map of %s rafters to scale, with lines of the same build-up; the most is %s in."
        .formatted(rafters.size(), Lengths.inInches(greatest));
  }

  private Spot edge(double y) {
    return new Spot(bounds.middleX(), y);
  }

  private void rafters(Sketch sketch) {
    List<List<Spot>> lines = new ArrayList<>();
    List<List<Spot>> dots = new ArrayList<>();
    for (List<Surface.Height> rafter : rafters) {
      lines.add(rafter.stream().map(Surface.Height::at).toList());
      double dot = DOT_POINTS * scale;
      rafter.forEach(
          station ->
              dots.add(
                  Sketch.corners(
                      Box.at(station.at().x() - dot / 2, station.at().y() - dot / 2, dot, dot))));
    }
    sketch.areas(Pen.OUTLINE, dots);
    sketch.lines(Pen.SUPPORT, lines);
  }

  private void contour(Sketch sketch, List<Surface.Line> lines, String height) {
    if (lines.isEmpty()) {
      return;
    }
    sketch.lines(Pen.CONTOUR, lines.stream().map(line -> List.of(line.from(), line.to())).toList());
    Surface.Line middle = lines.get(lines.size() / 2);
    Spot at =
        new Spot(
            (middle.from().x() + middle.to().x()) / 2, (middle.from().y() + middle.to().y()) / 2);
    double wide = (5 * height.length() + 4) * scale;
    double high = 10 * scale;
    sketch.box(Pen.CHIP, Box.at(at.x() - wide / 2, at.y() - high / 2, wide, high));
    sketch.words(height, at, wide, high, 8);
  }
}
