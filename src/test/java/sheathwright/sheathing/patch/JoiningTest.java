package sheathwright.sheathing.patch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.patch.Joining.Draft;

/**
 * Beside the plain rule, which looks at every two patches anew each time: of all that are better as
 * one, those that gain most.
 */
class JoiningTest {

  private static final double ANOTHER = PatchRules.USUAL.anotherPatch().value() * 144;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void manyDrafts_areJoinedAsThePlainRuleJoinsThem(long seed) {
    RandomDecks decks = new RandomDecks(seed);
    for (int i = 0; i < 10; i++) {
      Plane plane = decks.plane();
      Supports supports = decks.supports(plane);
      PatchFrame frame = PatcherTest.frame(plane, supports, PatchRules.USUAL);
      List<Draft> drafts = new ArrayList<>();
      for (Mark mark : decks.marks(plane, 4 + 2 * i)) {
        for (Box part : frame.besideOpenings(mark.seen(Reading.aside()).box())) {
          TreeSet<String> marks = new TreeSet<>(List.of(mark.key()));
          drafts.add(new Draft(drafts.size(), frame.cutOut(part), marks));
        }
      }
      List<Draft> joined = Joining.joined(frame, ANOTHER, drafts);
      while (joinsTwo(frame, drafts)) {
        assertThat(drafts).isNotEmpty();
      }
      assertThat(joined).isEqualTo(drafts);
    }
  }

  private static boolean joinsTwo(PatchFrame frame, List<Draft> drafts) {
    double most = Double.NEGATIVE_INFINITY;
    Draft first = null;
    Draft second = null;
    Box best = null;
    for (Draft one : drafts) {
      for (Draft other : drafts.subList(drafts.indexOf(one) + 1, drafts.size())) {
        Box round = one.box().with(other.box());
        if (frame.isFree(round)) {
          Box both = frame.snapped(round);
          boolean isBetter =
              frame.leavesTooLittleBetween(one.box(), other.box())
                  || both.area() - together(one.box(), other.box()) < ANOTHER;
          double gain = replaced(drafts, both) - both.area();
          if (isBetter && gain > most) {
            most = gain;
            first = one;
            second = other;
            best = both;
          }
        }
      }
    }
    if (best == null) {
      return false;
    }
    drafts.set(drafts.indexOf(first), first.as(best, second));
    drafts.remove(second);
    return true;
  }

  private static double together(Box one, Box other) {
    double overlap = one.overlaps(other) ? one.and(other).area() : 0;
    return one.area() + other.area() - overlap;
  }

  private static double replaced(List<Draft> drafts, Box both) {
    return drafts.stream()
        .filter(draft -> both.holds(draft.box()))
        .mapToDouble(draft -> draft.box().area() + ANOTHER)
        .sum();
  }
}
