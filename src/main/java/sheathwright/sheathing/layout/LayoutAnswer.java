package sheathwright.sheathing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sheathwright.cutting.Patience;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** Counts what laid planes come to, with the pieces of all of them cut together. */
public final class LayoutAnswer {

  private static final Source COUNTED = Source.derived("counted on the layout");
  private static final int FEWEST_SPANS = 2;

  // Of ten of our sheet lists, half of them hard: half 6 proven, 408 sheets; double 8, 407; this 8,
  // 407.
  /** How long a search for the fewest sheets may go on: a second or few, counted and not timed. */
  public static final int PATIENCE = 3000;

  private final List<CourseLayout> planes;
  private final List<CourseLayout.Laid> laid;
  private final double gap;
  private final Solution solution;

  private LayoutAnswer(List<CourseLayout> planes) {
    this.planes = planes;
    Reading reading = new Reading();
    this.laid = planes.stream().map(plane -> plane.laid(reading)).toList();
    this.gap = planes.get(0).rules().plain(reading).gap();
    String names =
        planes.stream().map(plane -> plane.plane().name()).collect(Collectors.joining("_"));
    this.solution = reading.solution("layout_of_" + names);
  }

  public static DeckLayout of(List<CourseLayout> planes, Patience patience) {
    return new LayoutAnswer(planes).answered(patience);
  }

  /** Places whose sheet crosses fewer than two spans. */
  public static long shortPieces(CourseLayout.Laid plane) {
    return plane.sheets().stream().filter(sheet -> sheet.spans() < FEWEST_SPANS).count();
  }

  private DeckLayout answered(Patience patience) {
    CutList cutList = cutList(patience);
    double whole = sum(plane -> plane.sheets().stream().filter(Sheet::isWhole).count());
    Figure<Quantity.Length> lastCourse = figure("last_course_in", lowest(), Units.INCH);
    return new DeckLayout(
        figure("sheets", whole + cutList.sheets(), Units.SHEET),
        figure("sheets_at_least", whole + cutList.atLeast(), Units.SHEET),
        figure("whole_sheets", whole, Units.SHEET),
        figure("places", sum(plane -> plane.sheets().size()), Units.PIECE),
        figure("cuts", cutList.cuts(), Units.RATIO),
        figure("joints_off", sum(LayoutAnswer::jointsOff), Units.RATIO),
        figure("joint_off_ft", sum(plane -> plane.jointLength(false)) / 12, Units.FOOT),
        figure("joint_on_ft", sum(plane -> plane.jointLength(true)) / 12, Units.FOOT),
        figure("edge_ft", sum(CourseLayout.Laid::lineLength) / 12, Units.FOOT),
        figure("edge_bays", sum(LayoutAnswer::bays), Units.RATIO),
        figure("short_pieces", sum(LayoutAnswer::shortPieces), Units.PIECE),
        figure("slivers", sum(LayoutAnswer::slivers), Units.PIECE),
        lastCourse,
        lastCourse.isLessThan(planes.get(0).rules().minStrip()).as("narrow"),
        planes,
        cutList);
  }

  private double lowest() {
    return laid.stream().mapToDouble(CourseLayout.Laid::lastCourse).min().orElse(0);
  }

  private <Q extends Quantity> Figure<Q> figure(String name, double number, Unit<Q> unit) {
    return solution.figure(name, number, unit, COUNTED);
  }

  private double sum(ToDoubleFunction<CourseLayout.Laid> of) {
    return laid.stream().mapToDouble(of).sum();
  }

  private static long jointsOff(CourseLayout.Laid plane) {
    return plane.joints().stream().filter(joint -> !joint.isSupported()).count();
  }

  private static long slivers(CourseLayout.Laid plane) {
    return plane.sheets().stream().filter(Sheet::hasSliver).count();
  }

  private static int bays(CourseLayout.Laid plane) {
    return plane.lines().stream().mapToInt(CourseLine::bays).sum();
  }

  /** The pieces of every cut sheet, out of sheets as they fill the module less its gap. */
  private CutList cutList(Patience patience) {
    List<SlantedEnds.Part> parts = cutParts();
    StockSheet sheet =
        new StockSheet(LayoutRules.MODULE_LENGTH - gap, LayoutRules.MODULE_WIDTH - gap);
    CutList square =
        CutList.of(
            sheet,
            List.of(),
            gap,
            parts.stream().map(part -> SlantedEnds.rectangle(part, gap)).toList(),
            patience);
    return SlantedEnds.nested(parts, gap)
        .map(pieces -> CutList.of(sheet, List.of(), gap, pieces, patience))
        .map(nested -> nested.sheets() < square.sheets() ? nested : square)
        .map(fewer -> fewer.boundedBy(areaBound(parts)))
        .orElse(square);
  }

  /**
   * Sheets that the parts fill by their area alone: the only bound that holds however slanted parts
   * are nested.
   */
  private static int areaBound(List<SlantedEnds.Part> parts) {
    double area = parts.stream().mapToDouble(part -> part.region().area()).sum();
    double module = LayoutRules.MODULE_LENGTH * LayoutRules.MODULE_WIDTH;
    return (int) Math.ceil(area / module - 1e-6);
  }

  private List<SlantedEnds.Part> cutParts() {
    List<SlantedEnds.Part> parts = new ArrayList<>();
    for (int plane = 0; plane < planes.size(); plane++) {
      int number = 0;
      int course = 0;
      for (Sheet sheet : laid.get(plane).sheets()) {
        number = sheet.course() == course ? number + 1 : 1;
        course = sheet.course();
        if (!sheet.isWhole()) {
          String label = planes.get(plane).plane().name() + " " + course + "-" + number;
          sheet.parts().forEach(part -> parts.add(new SlantedEnds.Part(label, part)));
        }
      }
    }
    return parts;
  }
}
