package sheathwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.CutList;
import sheathwright.sheathing.layout.LayoutAnswer;

/**
 * The layout of a house whose slanted ends are cut in pairs: the search for a sheet less ends when
 * prices show that there is no such plan, and not when patience does.
 */
class HipLayoutTest {

  private final List<CourseLayout> planes =
      new Estimate(Job.in(Path.of("demo-data/cinder-brook")))
          .deck().parts().stream().map(Deck.Part::courses).toList();

  @Test
  void itsSearchEndsBeforePatienceDoes() {
    int[] asked = {0};
    Patience usual = Patience.asked(LayoutAnswer.PATIENCE);
    LayoutAnswer.of(
        planes,
        () -> {
          asked[0]++;
          return usual.secondsLeft();
        });
    assertTrue(asked[0] < LayoutAnswer.PATIENCE, () -> "asked " + asked[0] + " times");
  }

  @Test
  void morePatienceGivesTheSamePlan() {
    CutList usual = LayoutAnswer.of(planes, Patience.asked(LayoutAnswer.PATIENCE)).cutList();
    assertEquals(LayoutAnswer.of(planes, Patience.ENDLESS).cutList(), usual);
  }
}
