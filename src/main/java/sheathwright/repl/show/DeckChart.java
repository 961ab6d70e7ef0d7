package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Lengths;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.roof.Box;
import sheathwright.roof.Outline;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.CourseLine;
import sheathwright.sheathing.layout.Joint;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.patch.PatchPlan;

/**
 * A plane of the deck in characters, the eave below: a cell is twice as high as it is wide, as
 * letters are.
 */
final class DeckChart {

  /** Inches: finer than the width of a board nothing is drawn. */
  private static final double NARROWEST_CELL = 4;

  private final CourseLayout layout;
  private final Box bounds;
  private final double cell;
  private final int widest;
  private final char[][] picture;

  private DeckChart(CourseLayout layout, int widest) {
    this.layout = layout;
    this.widest = widest;
    this.bounds = layout.plane().outline(Reading.aside()).bounds();
    this.cell = Math.max(NARROWEST_CELL, bounds.width() / widest);
    int rows = Math.max(1, (int) Math.round(bounds.height() / (2 * cell)));
    int columns = (int) Math.ceil(bounds.width() / cell);
    picture = new char[rows][columns];
    for (char[] row : picture) {
      Arrays.fill(row, ' ');
    }
  }

  /** New sheets on a plane. */
  static String of(CourseLayout layout, int columns) {
    DeckChart chart = new DeckChart(layout, columns);
    chart.wood('.');
    chart.courses();
    chart.joints();
    return chart.text(List.of());
  }

  /** What was marked on a plane, and what is cut out of it. */
  static String of(PatchPlan plan, int columns) {
    DeckChart chart = new DeckChart(plan.old(), columns);
    chart.wood('.');
    for (Patch patch : plan.list()) {
      patch.pieces().forEach(piece -> chart.fill(piece.box(), '/'));
    }
    chart.courses();
    chart.joints();
    List<Mark.Seen> marks = plan.marks().stream().map(mark -> mark.seen(Reading.aside())).toList();
    marks.forEach(mark -> chart.fill(mark.box(), mark.finding().letter()));
    return chart.text(marks);
  }

  private void wood(char wood) {
    Outline outline = layout.plane().outline(Reading.aside());
    for (int row = 0; row < picture.length; row++) {
      for (int column = 0; column < picture[row].length; column++) {
        double x = bounds.left() + (column + 0.5) * cell;
        double y = middle(row);
        Box spot = Box.at(x - 0.1, y - 0.1, 0.2, 0.2);
        boolean isOpening =
            layout.plane().openings(Reading.aside()).stream().anyMatch(spot::overlaps);
        picture[row][column] = isOpening ? 'x' : outline.covers(spot) ? wood : ' ';
      }
    }
  }

  private double middle(int row) {
    return bounds.top() - (row + 0.5) * 2 * cell;
  }

  private void courses() {
    for (CourseLine line : layout.laid(Reading.aside()).lines()) {
      int row = row(line.y());
      for (int column = 0; column < picture[row].length; column++) {
        if (picture[row][column] == '.') {
          picture[row][column] = '_';
        }
      }
    }
  }

  private void joints() {
    for (Joint joint : layout.laid(Reading.aside()).joints()) {
      Box place = Box.at(joint.x(), joint.bottom(), cell / 2, joint.length());
      char mark = joint.isSupported() ? '|' : joint.repair().word().charAt(0);
      fill(place, mark);
    }
  }

  /** Draws over wood, not over what lies outside or in an opening. */
  private void fill(Box box, char mark) {
    int first = column(box.left());
    int last = Math.max(first, column(box.right() - cell / 2));
    int top = row(box.top() - cell / 4);
    int bottom = Math.max(top, row(box.bottom() + cell));
    for (int row = top; row <= bottom; row++) {
      for (int column = first; column <= last; column++) {
        if (picture[row][column] != ' ' && picture[row][column] != 'x') {
          picture[row][column] = mark;
        }
      }
    }
  }

  private int column(double x) {
    return Math.max(0, Math.min(picture[0].length - 1, (int) ((x - bounds.left()) / cell)));
  }

  private int row(double y) {
    int row = (int) ((bounds.top() - y) / (2 * cell));
    return Math.max(0, Math.min(picture.length - 1, row));
  }

  private String text(List<Mark.Seen> marks) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s, %s along the eave, %s up the slope"
            .formatted(
                layout.plane().name(),
                Lengths.inFeetAndInches(bounds.width()),
                Lengths.inFeetAndInches(bounds.height())));
    for (char[] row : picture) {
      lines.add(new String(row).stripTrailing());
    }
    char[] feet = new char[picture[0].length];
    Arrays.fill(feet, ' ');
    layout
        .supports()
        .centers(Reading.aside())
        .between(bounds.left(), bounds.right())
        .forEach(x -> feet[column(x)] = '^');
    lines.add(new String(feet).stripTrailing());
    lines.addAll(Keys.lines(key(marks), widest));
    return String.join("\n", lines);
  }

  private Set<String> key(List<Mark.Seen> marks) {
    Set<String> key = new LinkedHashSet<>();
    key.add("| sheet end");
    key.add("_ course");
    key.add("^ support");
    if (!layout.plane().openings(Reading.aside()).isEmpty()) {
      key.add("x opening");
    }
    layout.laid(Reading.aside()).joints().stream()
        .filter(joint -> !joint.isSupported())
        .map(Joint::repair)
        .forEach(repair -> key.add(repair.word().charAt(0) + " sheet end to " + repair.word()));
    if (!marks.isEmpty()) {
      key.add("/ cut out");
    }
    for (Mark.Seen mark : marks) {
      Finding finding = mark.finding();
      key.add(finding.letter() + " " + Shown.inWords(finding.word()));
    }
    return key;
  }
}
