package sheathwright.job.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.cutting.Patience;
import sheathwright.sheathing.layout.LayoutAnswer;

/** The patience of a job is shared by its planes. */
class PatchPatienceTest {

  private static int asked(Patience patience) {
    int times = 0;
    while (!patience.isSpent()) {
      times++;
    }
    return times;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 8, 40})
  void allPlanes_areNotAskedMoreThanOne(int planes) {
    int all = 0;
    for (int plane = 0; plane < planes; plane++) {
      all += asked(PatchPatience.ofEach(planes));
    }
    assertThat(all).isBetween(LayoutAnswer.PATIENCE - planes, LayoutAnswer.PATIENCE);
  }
}
