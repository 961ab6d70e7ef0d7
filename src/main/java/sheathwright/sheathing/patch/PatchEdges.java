package sheathwright.sheathing.patch;

import static java.util.Comparator.comparingDouble;
import static sheathwright.sheathing.layout.LayoutRules.HAIR;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.roof.Box;
import sheathwright.roof.Outline;
import sheathwright.roof.Spot;
import sheathwright.sheathing.patch.Patch.End;

/** What the edges of patches take, each line counted once where two patches meet on it. */
final class PatchEdges {

  private PatchEdges() {}

  /** Inches of level edge that old or new wood lies beside, and that no support carries. */
  static double blocking(Outline deck, List<Patch> patches) {
    List<Box> lines = new ArrayList<>();
    patches.stream()
        .map(Patch::box)
        .flatMap(
            box ->
                Stream.of(
                    new Box(box.left(), box.bottom(), box.right(), box.bottom()),
                    new Box(box.left(), box.top(), box.right(), box.top())))
        .sorted(comparingDouble(Box::bottom).thenComparingDouble(Box::left))
        .forEach(line -> add(lines, line));
    return lines.stream()
        .mapToDouble(
            line ->
                deck.lengthInside(
                    new Spot(line.left(), line.bottom()), new Spot(line.right(), line.bottom())))
        .sum();
  }

  /** Adds a line to those below and to the left of it, as one with what it goes on. */
  private static void add(List<Box> lines, Box line) {
    for (int i = 0; i < lines.size(); i++) {
      Box earlier = lines.get(i);
      boolean goesOn =
          Math.abs(earlier.bottom() - line.bottom()) < HAIR && line.left() <= earlier.right();
      if (goesOn) {
        lines.set(i, earlier.with(line));
        return;
      }
    }
    lines.add(line);
  }

  /** Ends that no support carries; two that meet at a joint share a scab. */
  static long scabs(List<Patch> patches) {
    long shared =
        patches.stream()
            .filter(patch -> patch.right() == End.SCAB)
            .filter(patch -> patches.stream().anyMatch(other -> meets(patch.box(), other)))
            .count();
    long left = patches.stream().filter(patch -> patch.left() == End.SCAB).count();
    long right = patches.stream().filter(patch -> patch.right() == End.SCAB).count();
    return left + right - shared;
  }

  private static boolean meets(Box box, Patch other) {
    return other.left() == End.SCAB
        && Math.abs(other.box().left() - box.right()) < HAIR
        && Math.min(other.box().top(), box.top()) - Math.max(other.box().bottom(), box.bottom())
            > HAIR;
  }
}
