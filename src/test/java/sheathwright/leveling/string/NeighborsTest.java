package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import sheathwright.leveling.string.Neighbors.Spot;

/** By hand: straight lines through the readings beside a place, and how far it lies off them. */
class NeighborsTest {

  private static final Offset<Double> CLOSE = within(1e-12);

  private static Neighbors of(Set<Spot> unheard, double[][] places, double[][] heights) {
    List<RafterProfile.Plain> rafters = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      rafters.add(new RafterProfile.Plain("R" + i, 24 * i, new Profile(places[i], heights[i])));
    }
    return new Neighbors(new PlaneProfiles.Plain(rafters), unheard);
  }

  private static Neighbors oneRafter(double[] places, double... heights) {
    return of(Set.of(), new double[][] {places}, new double[][] {heights});
  }

  /** From 1 at 10 in and 1/2 at 30 in: 1-1/4 at the start, 1/6 in the middle, 3 at the end. */
  @Test
  void alongOneRafter_theOthersSayWhatIsExpected() {
    Neighbors line = oneRafter(new double[] {0, 10, 30}, 0, 1, 0.5);
    assertThat(line.expected(new Spot(0, 0))).isCloseTo(1.25, CLOSE);
    assertThat(line.doubt(new Spot(0, 0))).as("a little beyond them").isEqualTo(1);
    assertThat(line.expected(new Spot(0, 1))).isCloseTo(1 / 6.0, CLOSE);
    assertThat(line.departure(new Spot(0, 1))).isCloseTo(5 / 6.0, CLOSE);
    assertThat(line.expected(new Spot(0, 2))).isCloseTo(3, CLOSE);
    assertThat(line.doubt(new Spot(0, 2))).as("3 x 2, far beyond them").isCloseTo(6, CLOSE);
    assertThat(line.departure(new Spot(0, 2))).isCloseTo(2.5, CLOSE);
    assertThat(line.beside(new Spot(0, 2))).isEqualTo(1);
    // departures by doubt 1.25 and 2.5 ÷ 6: their middle
    assertThat(line.spread(new Spot(0, 1))).isCloseTo((1.25 + 2.5 / 6) / 2, CLOSE);
  }

  /** By doubt they lie off by 1, 1, 1/2 and 1/2: of the three others the middle one. */
  @Test
  void theSpread_isTheMiddleOfTheOthers() {
    Neighbors line = oneRafter(new double[] {0, 10, 20, 30}, 0, 1, 0, 0);
    assertThat(line.spread(new Spot(0, 0))).isCloseTo(0.5, CLOSE);
    assertThat(line.spread(new Spot(0, 2))).isCloseTo(1, CLOSE);
    Neighbors single = oneRafter(new double[] {0}, 3);
    assertThat(single.expected(new Spot(0, 0))).isEqualTo(3);
    assertThat(single.doubt(new Spot(0, 0))).isEqualTo(1);
    assertThat(single.spread(new Spot(0, 0))).isZero();
  }

  @Test
  void whatIsNotHeard_saysNothing() {
    Neighbors line =
        of(Set.of(new Spot(0, 1)), new double[][] {{0, 10, 20, 30}}, new double[][] {{0, 1, 0, 0}});
    assertThat(line.expected(new Spot(0, 0))).isZero();
    assertThat(line.departure(new Spot(0, 1))).isEqualTo(1);
    assertThat(line.spread(new Spot(0, 0))).isZero();
    assertThat(line.unheard()).containsExactly(new Spot(0, 1));
    assertThat(line.spots()).hasSize(4);
  }

  /** Whoever contradicts less is believed; what lies beside counts from both. */
  @Test
  void alongAndAcross_theOneThatContradictsLessIsBelieved() {
    double[] places = {0, 10, 20};
    Neighbors plane =
        of(
            Set.of(),
            new double[][] {places, places, places},
            new double[][] {{0, 0, 0}, {0, -1, 0}, {0, 0, 0}});
    assertThat(plane.expected(new Spot(1, 1))).isZero();
    assertThat(plane.departure(new Spot(1, 1))).as("below as well").isEqualTo(1);
    assertThat(plane.expected(new Spot(1, 0))).as("across, not along").isZero();
    assertThat(plane.beside(new Spot(1, 0))).as("along").isEqualTo(1);
    assertThat(plane.expected(new Spot(0, 1))).as("along, not across").isZero();
    assertThat(plane.beside(new Spot(0, 1))).as("across").isEqualTo(1);
    assertThat(plane.beside(new Spot(1, 1))).isZero();
    Neighbors deep = oneRafter(new double[] {0, 10, 20}, -3, 0, 1);
    assertThat(deep.beside(new Spot(0, 1))).isEqualTo(3);
    Neighbors turned = oneRafter(new double[] {0, 10, 20}, 1, 0, -3);
    assertThat(turned.beside(new Spot(0, 1))).isEqualTo(3);
  }

  /** One station a rafter, so that only those across can say: two on either side. */
  @Test
  void across_theNearestOnEitherSideAreAsked() {
    double[] one = {60};
    Neighbors plane =
        of(
            Set.of(),
            new double[][] {one, one, one, one, one},
            new double[][] {{0}, {2}, {7}, {0}, {0}});
    assertThat(plane.expected(new Spot(2, 0))).as("between 2 and 0").isEqualTo(1);
    assertThat(plane.expected(new Spot(1, 0))).as("between 0 and 7").isEqualTo(3.5);
    assertThat(plane.expected(new Spot(0, 0))).as("beyond 2 and 7").isEqualTo(-3);
    assertThat(plane.doubt(new Spot(0, 0))).isEqualTo(2);
    assertThat(plane.expected(new Spot(4, 0))).as("beyond 7 and 0").isEqualTo(-7);
  }

  private static double[] upTo(int stations) {
    return DoubleStream.iterate(0, up -> up + 5).limit(stations).toArray();
  }

  private static double[] waves(int stations) {
    double[] waves = new double[stations];
    for (int i = 0; i < stations; i++) {
      waves[i] = i % 2 == 0 ? 1 : -1;
    }
    return waves;
  }

  /** 24 straight readings near a place are enough: 30 wild ones further off are not asked. */
  @Test
  void theSpread_isThatOfTheTwentyFourNearest() {
    double[][] places = {upTo(12), upTo(13), upTo(30)};
    double[][] heights = {new double[12], new double[13], waves(30)};
    Neighbors right = of(Set.of(), places, heights);
    assertThat(right.spread(new Spot(0, 5))).isZero();
    Neighbors left =
        of(
            Set.of(),
            new double[][] {places[2], places[1], places[0]},
            new double[][] {heights[2], heights[1], heights[0]});
    assertThat(left.spread(new Spot(2, 5))).isZero();
    Neighbors fewer =
        of(
            Set.of(),
            new double[][] {upTo(11), upTo(13), upTo(30)},
            new double[][] {new double[11], new double[13], waves(30)});
    assertThat(fewer.spread(new Spot(0, 5))).as("23 are not enough").isPositive();
  }
}
