package sheathwright.sheathing.patch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import sheathwright.catalog.NaturalOrder;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Region;
import sheathwright.sheathing.patch.Joining.Draft;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;

/**
 * Makes patches of marks, place by place of the old deck: a place that is marked as a whole is
 * replaced along its own joints, cut round its openings as it was, and so is one in which a patch
 * beside an opening would be too small; in any other each mark is grown to sound wood, its ends
 * moved out to supports or joints, and neighbors made one where that is cheaper or where too little
 * of the old sheet would be left between them. Nothing is cut beyond a joint of a place without a
 * mark.
 */
final class Patcher {

  private final Function<Region, PatchFrame> frames;
  private final double anotherPatch;
  private final List<Patch> patches = new ArrayList<>();

  /**
   * @param frames what a patch of a piece of the old deck may end on
   */
  Patcher(Function<Region, PatchFrame> frames, PatchRules.Plain rules) {
    this.frames = frames;
    this.anotherPatch = rules.anotherPatch();
  }

  /** Patches for all marks that are to be cut out. */
  List<Patch> patches(PlaceMap map, Reading reading, List<Mark.Seen> marks) {
    Map<PlaceKey, List<Mark.Seen>> found = new HashMap<>();
    for (Mark.Seen mark : marks) {
      for (Place place : Mark.places(reading, map, mark)) {
        found.computeIfAbsent(place.key(), key -> new ArrayList<>()).add(mark);
      }
    }
    for (Place place : map.places(reading)) {
      if (found.containsKey(place.key())) {
        patch(place, found.get(place.key()));
      }
    }
    return List.copyOf(patches);
  }

  private void patch(Place place, List<Mark.Seen> marks) {
    PatchFrame frame = frames.apply(place.piece());
    boolean isWhole =
        marks.stream().anyMatch(mark -> !mark.whole().isEmpty() || isBesideThePiece(place, mark));
    List<Draft> drafts = isWhole ? List.of() : drafts(frame, marks);
    if (isWhole || drafts.stream().anyMatch(draft -> frame.isSmallerThanItMustBe(draft.box()))) {
      List<String> keys = marks.stream().map(Mark.Seen::key).sorted(NaturalOrder.OF_NAMES).toList();
      patches.add(
          frame.patch(patches.size() + 1, place.key(), keys, place.bounds(), place.parts()));
      return;
    }
    for (Draft draft : drafts) {
      patches.add(
          frame.patch(patches.size() + 1, place.key(), List.copyOf(draft.marks()), draft.box()));
    }
  }

  /** Whether a mark lies in what is too small to be a place and belongs to this one. */
  private static boolean isBesideThePiece(Place place, Mark.Seen mark) {
    return place.parts().stream()
        .skip(1)
        .filter(part -> part.bounds().overlaps(mark.box()))
        .anyMatch(part -> !part.outline().within(mark.box()).isEmpty());
  }

  private List<Draft> drafts(PatchFrame frame, List<Mark.Seen> marks) {
    List<Draft> drafts = new ArrayList<>();
    for (Mark.Seen mark : marks) {
      for (Box part : frame.besideOpenings(mark.box())) {
        drafts.add(Draft.of(drafts.size(), frame.cutOut(part), mark.key()));
      }
    }
    drafts = Joining.joined(frame, anotherPatch, drafts);
    separate(drafts);
    drafts.sort(
        Comparator.comparingDouble((Draft each) -> each.box().bottom())
            .thenComparingDouble(each -> each.box().left()));
    return drafts;
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
