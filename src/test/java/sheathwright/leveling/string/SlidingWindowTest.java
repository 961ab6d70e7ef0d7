package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Straightedges slid by a finer and finer step, the independent way; the same lines each time. */
class SlidingWindowTest {

  private static final double STEP = 1;

  private static Profile random(Random random, int stations, double wildness) {
    double[] places = new double[stations];
    double[] drops = new double[stations];
    for (int i = 0; i < stations; i++) {
      // whole inches, so that the slow road meets every reading
      places[i] = i == 0 ? 0 : places[i - 1] + random.nextInt(6, 40);
      drops[i] = wildness * random.nextInt(-16, 33) / 16.0;
    }
    return new Profile(places, drops);
  }

  /** Every window that begins and ends on a whole inch, with every place under it. */
  private static double slid(Profile line, double window) {
    double worst = 0;
    for (double from = line.first(); from < line.last(); from += STEP) {
      double end = Math.min(from + window, line.last());
      for (double to = from + 2 * STEP; to <= end; to += STEP) {
        for (double at : line.places()) {
          if (at > from && at < to) {
            double share = (at - from) / (to - from);
            double chord = (1 - share) * line.at(from) + share * line.at(to);
            worst = Math.max(worst, Math.abs(line.at(at) - chord));
          }
        }
      }
    }
    return worst;
  }

  @Test
  void worst_isWhatSlidingByTheInchFinds() {
    Random random = new Random(20_270_701);
    for (int i = 0; i < 300; i++) {
      Profile line = random(random, random.nextInt(1, 12), 1);
      double window = random.nextInt(2) == 0 ? 120 : 37;
      Departure found = SlidingWindow.worst(line, window);
      double slow = slid(line, window);
      // The slow road misses turning points between inches, and never finds more.
      assertThat(found.size()).isBetween(slow - 1e-9, slow + 0.02);
      assertThat(found.to() - found.from()).isLessThanOrEqualTo(window + 1e-9);
    }
  }

  @Test
  void worst_saysWhereItIs() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      Profile line = random(random, 8, 1);
      Departure found = SlidingWindow.worst(line, 90);
      double share = (found.at() - found.from()) / (found.to() - found.from());
      double chord = line.at(found.from()) + share * (line.at(found.to()) - line.at(found.from()));
      assertThat(line.at(found.at()) - chord).isCloseTo(found.amount(), within(1e-9));
    }
  }

  @Test
  void worst_ofAParabolaIsTheWindowsShareSquared() {
    // A chord of W on a parabola that sags d over L stands d (W ÷ L)² off it, wherever it lies.
    double[] places = IntStream.rangeClosed(0, 240).mapToDouble(i -> i).toArray();
    double[] drops =
        IntStream.rangeClosed(0, 240).mapToDouble(i -> 4 * 1.5 * i * (240 - i) / 57600.0).toArray();
    Departure found = SlidingWindow.worst(new Profile(places, drops), 120);
    // straight between inches: off by some hundred-thousandths
    assertThat(found.amount()).isCloseTo(1.5 / 4, within(1e-4));
  }

  @Test
  void worst_seesNeitherTiltNorLift() {
    Random random = new Random(11);
    for (int i = 0; i < 100; i++) {
      Profile line = random(random, 9, 1);
      double[] tilted = line.heights().clone();
      for (int j = 0; j < tilted.length; j++) {
        tilted[j] += 3 - 0.01 * line.places()[j];
      }
      assertThat(SlidingWindow.worst(new Profile(line.places(), tilted), 120).size())
          .isCloseTo(SlidingWindow.worst(line, 120).size(), within(1e-9));
    }
  }

  @Test
  void worst_growsWithTheWindow() {
    Random random = new Random(12);
    for (int i = 0; i < 100; i++) {
      Profile line = random(random, 10, 1);
      assertThat(SlidingWindow.worst(line, 240).size())
          .isGreaterThanOrEqualTo(SlidingWindow.worst(line, 120).size() - 1e-9);
    }
  }

  @Test
  void worst_ofOneOrTwoReadingsIsNothing() {
    assertThat(SlidingWindow.worst(new Profile(new double[] {5}, new double[] {1}), 120).size())
        .isZero();
    assertThat(
            SlidingWindow.worst(new Profile(new double[] {0, 50}, new double[] {0, 2}), 120).size())
        .isZero();
  }
}
