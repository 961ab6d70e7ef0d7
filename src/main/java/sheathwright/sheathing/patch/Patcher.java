package sheathwright.sheathing.patch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import sheathwright.roof.Box;
import sheathwright.sheathing.patch.Joining.Draft;

/**
 * Makes patches of marks: each grown to sound wood, its ends moved out to supports, neighbors made
 * one where that is cheaper or where too little of the old sheet would be left between them.
 */
final class Patcher {

  private final PatchFrame frame;
  private final double anotherPatch;

  Patcher(PatchFrame frame, PatchRules.Plain rules) {
    this.frame = frame;
    this.anotherPatch = rules.anotherPatch();
  }

  /** Patches for all marks that are to be cut out. */
  List<Patch> patches(List<Mark.Seen> marks) {
    List<Draft> drafts = new ArrayList<>();
    for (Mark.Seen mark : marks) {
      for (Box part : frame.besideOpenings(mark.box())) {
        drafts.add(
            new Draft(drafts.size(), frame.cutOut(part), new TreeSet<>(List.of(mark.key()))));
      }
    }
    drafts = Joining.joined(frame, anotherPatch, drafts);
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

  /** Where two patches overlap beside an opening, the smaller gives way to the larger. */
  private static void separate(List<Draft> drafts) {
    for (int i = 0; i < drafts.size(); i++) {
      for (int j = 0; j < drafts.size(); j++) {
        Box keeper = drafts.get(i).box();
        Draft giver = drafts.get(j);
        if (i != j && keeper.overlaps(giver.box()) && keeper.area() >= giver.box().area()) {
          drafts.remove(j);
          for (Box part : outside(keeper, giver.box())) {
            drafts.add(new Draft(giver.place(), part, giver.marks()));
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
