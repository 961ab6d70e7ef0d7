package sheathwright.workbook.draw;

import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Spot;
import sheathwright.workbook.part.Anchor;
import sheathwright.workbook.part.Ink;
import sheathwright.workbook.part.ShapeGroup;
import sheathwright.workbook.part.ShapeGroup.Frame;
import sheathwright.workbook.part.ShapeGroup.Label;
import sheathwright.workbook.part.ShapeGroup.Outline;
import sheathwright.workbook.part.Sheet;
import sheathwright.workbook.part.Words;

/**
 * A drawing to scale on a page, made of lines and areas and therefore crisp at any size. It is
 * drawn in inches, upwards and to the right.
 */
final class Sketch {

  /** How something is drawn: a line of its own, and an area filled or left open. */
  enum Pen {
    WOOD("F3EDDD", "", 0, false),
    CHIP("FFFFFF", "", 0, false),
    SHEET("", "3B4A3F", 0.75, false),
    OUTLINE("", "1F2A24", 1.75, false),
    SUPPORT("", "8A8F84", 0.5, true),
    OPENING("FFFFFF", "1F2A24", 1.25, false),
    PATCH("FFFFFF", "1F2A24", 2, false),
    HATCH("", "1F2A24", 0.5, false),
    MARK("F6DDD6", "9A2F1C", 1, false),
    NOTE("", "9A2F1C", 1, true),
    JOINT("", "9A2F1C", 2.25, false),
    CONTOUR("", "9A2F1C", 1, false);

    private final Ink ink;

    Pen(String area, String line, double points, boolean isDashed) {
      ink = new Ink(area, line, points, isDashed);
    }
  }

  /** Drawing units in an inch of roof. */
  private static final int FINE = 100;

  private static final String LETTERS = "Arial";
  private static final String INK = "1F2A24";

  private final ShapeGroup group;
  private final Box frame;

  /**
   * A drawing between two corners of a page.
   *
   * @param frame what of the roof it shows, in inches
   * @param words said in its place where it cannot be seen
   */
  Sketch(Sheet sheet, Words words, Box frame, int top, int columns, int lines) {
    this.frame = frame;
    Anchor place = Anchor.ofCells(top, columns, lines);
    group = sheet.layer().group(place, words, fine(frame.width()), fine(frame.height()));
  }

  /** Closed areas, or their outlines, as one shape. */
  void areas(Pen pen, List<List<Spot>> rings) {
    draw(pen, rings, true);
  }

  /** Open lines as one shape. */
  void lines(Pen pen, List<List<Spot>> lines) {
    draw(pen, lines, false);
  }

  /** An upright rectangle. */
  void box(Pen pen, Box box) {
    areas(pen, List.of(corners(box)));
  }

  static List<Spot> corners(Box box) {
    return List.of(
        new Spot(box.left(), box.bottom()),
        new Spot(box.right(), box.bottom()),
        new Spot(box.right(), box.top()),
        new Spot(box.left(), box.top()));
  }

  /** Words in the middle of a place, in points on paper. */
  void words(String text, Spot middle, double wide, double high, double points) {
    Box place = Box.at(middle.x() - wide / 2, middle.y() - high / 2, wide, high);
    group.label(placed(place), new Label(text, LETTERS, points, INK));
  }

  private void draw(Pen pen, List<List<Spot>> rings, boolean isClosed) {
    if (rings.isEmpty()) {
      return;
    }
    double left = rings.stream().flatMap(List::stream).mapToDouble(Spot::x).min().orElse(0);
    double right = rings.stream().flatMap(List::stream).mapToDouble(Spot::x).max().orElse(0);
    double bottom = rings.stream().flatMap(List::stream).mapToDouble(Spot::y).min().orElse(0);
    double top = rings.stream().flatMap(List::stream).mapToDouble(Spot::y).max().orElse(0);
    Box extent = new Box(left, bottom, Math.max(right, left + 0.01), Math.max(top, bottom + 0.01));
    Outline outline = new Outline(fine(extent.width()), fine(extent.height()));
    for (List<Spot> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        int x = fine(ring.get(i).x() - extent.left());
        int y = fine(extent.top() - ring.get(i).y());
        if (i == 0) {
          outline.moveTo(x, y);
        } else {
          outline.lineTo(x, y);
        }
      }
      if (isClosed) {
        outline.close();
      }
    }
    if (isClosed) {
      group.areas(placed(extent), outline, pen.ink);
    } else {
      group.lines(placed(extent), outline, pen.ink);
    }
  }

  private Frame placed(Box place) {
    int left = fine(place.left() - frame.left());
    int top = fine(frame.top() - place.top());
    int right = fine(place.right() - frame.left());
    int bottom = fine(frame.top() - place.bottom());
    return new Frame(left, top, right - left, bottom - top);
  }

  private static int fine(double inches) {
    return (int) Math.round(inches * FINE);
  }
}
