package sheathwright.sheathing.patch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.cutting.Patience;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.roof.Outline;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.CutList;
import sheathwright.sheathing.layout.CutPiece;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.layout.SlantedEnds;
import sheathwright.sheathing.layout.StockSheet;
import sheathwright.sheathing.layout.StripRule;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.sheathing.place.SheetUnits;

/** Counts what the patches of a plane come to, with their pieces cut out of sheets. */
public final class PatchAnswer {

  private static final Source COUNTED = Source.derived("counted on the patches");

  private PatchAnswer() {}

  public static PatchPlan of(
      PlaceMap map,
      Supports supports,
      LayoutRules old,
      PatchRules rules,
      List<Mark> marks,
      Patience patience) {
    Plane plane = map.plane();
    Reading reading = new Reading();
    Outline outline = plane.outline(reading);
    List<Box> openings = plane.openings(reading);
    Centers centers = supports.centers(reading);
    LayoutRules.Plain lying = old.plain(reading);
    PatchRules.Plain plain = rules.plain(reading);
    List<Mark.Seen> seen = marks.stream().map(mark -> mark.seen(reading)).toList();
    check(map, outline, marks, seen);
    List<Mark.Seen> cutOut = seen.stream().filter(Mark.Seen::isCutOut).toList();
    List<Patch> patches =
        new Patcher(
                piece -> new PatchFrame(outline, piece.outline(), openings, centers, lying, plain),
                plain)
            .patches(map, reading, cutOut);
    Solution solution = reading.solution("patches_of_" + plane.name());
    List<CutPiece> pieces = new ArrayList<>();
    for (Patch patch : patches) {
      for (Patch.Piece piece : patch.pieces()) {
        String label = "P" + patch.number();
        pieces.add(
            new CutPiece(
                label, SlantedEnds.fine(piece.width()), SlantedEnds.fine(piece.height()), 1));
      }
    }
    double gap = lying.gap();
    StockSheet sheet =
        new StockSheet(LayoutRules.MODULE_LENGTH - gap, LayoutRules.MODULE_WIDTH - gap);
    CutList cutList = CutList.of(sheet, List.of(), gap, pieces, patience);
    Map<PlaceKey, Double> areas = new LinkedHashMap<>();
    for (Patch patch : patches) {
      double area = patch.pieces().stream().mapToDouble(Patch.Piece::area).sum();
      areas.merge(patch.place(), area, Double::sum);
    }
    SheetUnits units =
        SheetUnits.of(solution, "patched_on_" + plane.name(), List.copyOf(areas.values()));
    return new PatchPlan(
        figure(solution, "patches", patches.size(), Units.PIECE),
        figure(solution, "patch_pieces", pieces.size(), Units.PIECE),
        units.area(),
        units,
        figure(solution, "patch_sheets", cutList.sheets(), Units.SHEET),
        figure(solution, "patch_sheets_at_least", cutList.atLeast(), Units.SHEET),
        figure(solution, "patch_cuts", cutList.cuts(), Units.RATIO),
        figure(solution, "scabs", PatchEdges.scabs(patches), Units.PIECE),
        figure(solution, "blocking_ft", PatchEdges.blocking(outline, patches) / 12, Units.FOOT),
        patches,
        List.copyOf(marks),
        CourseLayout.of(plane, supports, asLaid(old, map.joints())),
        work(solution, plane, patches),
        cutting(solution, plane, cutList));
  }

  /** The old sheets, to be drawn. */
  private static LayoutRules asLaid(LayoutRules old, OldJoints joints) {
    return old.origin(joints.first()).stagger(joints.stagger()).strips(StripRule.RIP).asLaid();
  }

  private static Roll work(Solution solution, Plane plane, List<Patch> patches) {
    return Roll.of(
        "patch_list_of_" + plane.name(),
        "the patches of " + plane.name(),
        patches,
        Roll.<Patch>column(
            "patch", patch -> word(solution, "P%s in %s".formatted(patch.number(), patch.place()))),
        Roll.column("marks", patch -> word(solution, String.join(", ", patch.marks()))),
        Roll.column("along_in", patch -> inches(solution, patch.box().left())),
        Roll.column("up_in", patch -> inches(solution, patch.box().bottom())),
        Roll.column("width_in", patch -> inches(solution, patch.box().width())),
        Roll.column("height_in", patch -> inches(solution, patch.box().height())));
  }

  private static Roll cutting(Solution solution, Plane plane, CutList cutList) {
    return Roll.of(
        "patch_cuts_of_" + plane.name(),
        "the pieces for " + plane.name(),
        cutList.pieces(),
        Roll.<CutList.Placed>column("piece", each -> word(solution, each.piece().label())),
        Roll.column("sheet", each -> figure(solution, "", each.sheet(), Units.RATIO)),
        Roll.column("x_in", each -> inches(solution, each.x())),
        Roll.column("y_in", each -> inches(solution, each.y())),
        Roll.column("cut_width_in", each -> inches(solution, each.piece().width())),
        Roll.column("cut_height_in", each -> inches(solution, each.piece().height())));
  }

  private static Choice<String> word(Solution solution, String word) {
    return solution.word("", word, COUNTED);
  }

  private static Figure<Quantity.Length> inches(Solution solution, double inches) {
    return figure(solution, "", inches, Units.INCH);
  }

  private static void check(PlaceMap map, Outline outline, List<Mark> marks, List<Mark.Seen> seen) {
    String plane = map.plane().name();
    Set<String> keys = new HashSet<>();
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks.get(i);
      if (!keys.add(mark.key())) {
        throw new RefusedException(
            "two marks are named %s; give each its own key".formatted(mark.key()));
      }
      if (!seen.get(i).whole().isEmpty() && !map.has(seen.get(i).whole())) {
        throw new RefusedException(
            "mark %s is place %s, which is not on plane %s"
                .formatted(mark.key(), seen.get(i).whole(), plane));
      }
      if (outline.within(seen.get(i).box()).isEmpty()) {
        throw new RefusedException(
            "mark %s lies off plane %s; along is measured from the plane's left corner, up from its eave"
                .formatted(mark.key(), plane),
            List.of(mark.along(), mark.up(), mark.width(), mark.height()));
      }
    }
  }

  private static <Q extends Quantity> Figure<Q> figure(
      Solution solution, String name, double number, Unit<Q> unit) {
    return solution.figure(name, number, unit, COUNTED);
  }
}
