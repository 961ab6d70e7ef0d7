package sheathwright.sheathing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import sheathwright.roof.Box;

/**
 * Makes patches of marks: each grown to sound wood, its ends moved out to supports, neighbours made
 * one where that is cheaper or where too little of the old sheet would be left between them.
 */
final class Patcher {

  private static final double SQUARE_INCHES = 144;

  private final PatchFrame frame;
  private final double anotherPatch;

  /** A rectangle to be cut out, and the marks that it cures. */
  private record Draft(Box box, TreeSet<String> marks) {

    Draft with(Box other, Draft marked) {
      TreeSet<String> all = new TreeSet<>(marks);
      all.addAll(marked.marks);
      return new Draft(other, all);
    }
  }

  Patcher(PatchFrame frame, PatchRules rules) {
    this.frame = frame;
    this.anotherPatch = rules.anotherPatch().value() * SQUARE_INCHES;
  }

  /** Patches for all marks that are to be cut out. */
  List<Patch> patches(List<Mark> marks) {
    List<Draft> drafts = new ArrayList<>();
    for (Mark mark : marks) {
      for (Box part : frame.besideOpenings(mark.box())) {
        drafts.add(new Draft(frame.cutOut(part), new TreeSet<>(List.of(mark.key()))));
      }
    }
    while (joinsTwo(drafts)) {
      // until no two are better as one
    }
    separate(drafts);
    drafts.sort(
        Comparator.comparingDouble((Draft each) -> each.box().bottom())
            .thenComparingDouble(each -> each.box().left()));
    List<Patch> patches = new ArrayList<>();
    for (Draft draft : drafts) {
      patches.add(frame.patch(patches.size() + 1, List.copyOf(draft.marks()), draft.box()));
    }
    return patches;
  }

  /** Makes the two patches one that gain most by it; says whether there were any. */
  private boolean joinsTwo(List<Draft> drafts) {
    double most = Double.NEGATIVE_INFINITY;
    int one = -1;
    int other = -1;
    Box best = null;
    for (int i = 0; i < drafts.size(); i++) {
      for (int j = i + 1; j < drafts.size(); j++) {
        Optional<Box> joined = joined(drafts.get(i).box(), drafts.get(j).box());
        double gain = joined.map(box -> gain(drafts, box)).orElse(Double.NEGATIVE_INFINITY);
        if (joined.isPresent() && gain > most) {
          most = gain;
          one = i;
          other = j;
          best = joined.get();
        }
      }
    }
    if (best == null) {
      return false;
    }
    Draft taken = drafts.remove(other);
    drafts.set(one, drafts.get(one).with(best, taken));
    return true;
  }

  /** The two as one, if they must or should be. */
  private Optional<Box> joined(Box one, Box other) {
    if (!frame.isFree(one.with(other))) {
      return Optional.empty();
    }
    Box both = frame.snapped(one.with(other));
    double extra = both.area() - one.area() - other.area() + overlap(one, other);
    boolean isBetter = extra < anotherPatch || frame.leavesTooLittleBetween(one, other);
    return isBetter ? Optional.of(both) : Optional.empty();
  }

  private double gain(List<Draft> drafts, Box joined) {
    double replaced =
        drafts.stream()
            .filter(draft -> joined.holds(draft.box()))
            .mapToDouble(draft -> draft.box().area() + anotherPatch)
            .sum();
    return replaced - joined.area();
  }

  private static double overlap(Box one, Box other) {
    return one.overlaps(other) ? one.and(other).area() : 0;
  }

  /** Where two patches overlap beside an opening, the smaller gives way to the larger. */
  private static void separate(List<Draft> drafts) {
    for (int i = 0; i < drafts.size(); i++) {
      for (int j = 0; j < drafts.size(); j++) {
        Box keeper = drafts.get(i).box();
        Draft giver = drafts.get(j);
        if (i != j && keeper.overlaps(giver.box()) && keeper.area() >= giver.box().area()) {
          drafts.remove(j);
          for (Box part : outside(keeper, giver.box())) {
            drafts.add(new Draft(part, giver.marks()));
          }
          separate(drafts);
          return;
        }
      }
    }
  }

  /** The parts of a box that lie outside another: below and above it, to its left and right. */
  private static List<Box> outside(Box keeper, Box giver) {
    Box common = keeper.and(giver);
    return Stream.of(
            new Box(giver.left(), giver.bottom(), giver.right(), common.bottom()),
            new Box(giver.left(), common.top(), giver.right(), giver.top()),
            new Box(giver.left(), common.bottom(), common.left(), common.top()),
            new Box(common.right(), common.bottom(), giver.right(), common.top()))
        .filter(part -> part.width() > 0 && part.height() > 0)
        .toList();
  }
}
