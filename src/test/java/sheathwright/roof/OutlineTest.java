package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.RefusedException;

/** By hand, on squared paper: a plane of 100 by 80 in with an opening of 20 by 20 at (40, 30). */
class OutlineTest {

  private static final Outline PLANE =
      Outline.trapezoid(100, 80, 0, 0).without(Box.at(40, 30, 20, 20));

  private static void assertRefused(Runnable wrong, String reason) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(wrong::run)
        .withMessageContaining(reason);
  }

  @Test
  void area_leavesTheOpeningOut_boundsDoNot() {
    assertThat(PLANE.area()).isEqualTo(7600);
    assertThat(PLANE.bounds()).isEqualTo(new Box(0, 0, 100, 80));
    assertThat(PLANE.edges()).hasSize(4);
  }

  @Test
  void within_givesWhatOfARectangleIsDeck() {
    assertThat(PLANE.within(new Box(60, 0, 100, 80)))
        .singleElement()
        .satisfies(whole -> assertThat(whole.bounds()).isEqualTo(new Box(60, 0, 100, 80)))
        .satisfies(whole -> assertThat(whole.corners()).hasSize(4))
        .satisfies(whole -> assertThat(whole.area()).isEqualTo(3200));
    assertThat(PLANE.within(new Box(90, 70, 130, 120)))
        .singleElement()
        .satisfies(cut -> assertThat(cut.bounds()).isEqualTo(new Box(90, 70, 100, 80)))
        .satisfies(cut -> assertThat(cut.area()).isEqualTo(100));
    assertThat(PLANE.within(new Box(200, 0, 300, 80))).isEmpty();
    assertThat(PLANE.within(new Box(100, 0, 200, 80))).as("it only touches").isEmpty();
    assertThat(PLANE.within(new Box(41, 31, 59, 49))).as("in the opening").isEmpty();
    assertThat(PLANE.within(new Box(5, 0, 5, 80))).as("without width").isEmpty();
    assertThat(PLANE.within(new Box(0, 5, 80, 5))).as("without height").isEmpty();
  }

  /** The opening takes 20 in out of the middle of a strip, which leaves a part at either side. */
  @Test
  void within_tellsPartsFromTheLeftAndFromBelow() {
    assertThat(PLANE.within(new Box(10, 32, 90, 48)))
        .extracting(Region::bounds)
        .containsExactly(new Box(10, 32, 40, 48), new Box(60, 32, 90, 48));
    assertThat(PLANE.within(new Box(42, 0, 58, 80)))
        .extracting(Region::bounds)
        .containsExactly(new Box(42, 0, 58, 30), new Box(42, 50, 58, 80));
  }

  @Test
  void within_keepsTheHole() {
    assertThat(PLANE.within(new Box(30, 20, 70, 60)))
        .singleElement()
        .satisfies(round -> assertThat(round.area()).isEqualTo(1600 - 400))
        .satisfies(round -> assertThat(round.corners()).hasSize(4))
        .satisfies(
            round ->
                assertThat(round.holes())
                    .singleElement()
                    .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                    .containsExactlyInAnyOrder(
                        new Spot(40, 30), new Spot(60, 30), new Spot(60, 50), new Spot(40, 50)));
  }

  /** A sliver of 0.04 sq in only touches, one of 0.0625 is a part. */
  @Test
  void within_leavesOutWhatOnlyTouches() {
    assertThat(PLANE.within(new Box(99.96, 0, 100, 1))).hasSize(1); // inside: as it was asked for
    assertThat(PLANE.within(new Box(99.96, 79, 110, 90))).isEmpty();
    assertThat(PLANE.within(new Box(99.9375, 79, 110, 90))).hasSize(1);
  }

  @Test
  void regions_areTheWholePlane() {
    assertThat(PLANE.regions())
        .singleElement()
        .satisfies(all -> assertThat(all.area()).isEqualTo(7600))
        .satisfies(all -> assertThat(all.holes()).hasSize(1));
  }

  @Test
  void covers_takesAllOfARectangle() {
    assertThat(PLANE.covers(new Box(0, 0, 40, 80))).isTrue();
    assertThat(PLANE.covers(new Box(0, 0, 41, 80))).isFalse();
    assertThat(PLANE.covers(new Box(90, 0, 101, 80))).isFalse();
  }

  @Test
  void sides_areTheSame_whicheverWayTheCornersWereGiven() {
    List<Spot> corners =
        List.of(new Spot(0, 0), new Spot(100, 0), new Spot(70, 40), new Spot(-20, 40));
    List<Spot> back =
        List.of(new Spot(0, 0), new Spot(-20, 40), new Spot(70, 40), new Spot(100, 0));
    Edge[] sides = {
      new Edge(Edge.Kind.EAVE, new Spot(0, 0), new Spot(100, 0)),
      new Edge(Edge.Kind.HIP, new Spot(100, 0), new Spot(70, 40)),
      new Edge(Edge.Kind.RIDGE, new Spot(70, 40), new Spot(-20, 40)),
      new Edge(Edge.Kind.VALLEY, new Spot(-20, 40), new Spot(0, 0))
    };
    assertThat(Outline.of(corners).edges()).containsExactlyInAnyOrder(sides);
    assertThat(Outline.of(back).edges()).containsExactlyInAnyOrder(sides);
  }

  /** Corners are kept to 1/1024 in, so a ridge of one such step is none. */
  @Test
  void aRidgeOfOneStep_isNone() {
    assertThat(Outline.trapezoid(10, 10, 5, 5 - 1.0 / 1024).edges()).hasSize(3);
    assertThat(Outline.trapezoid(10, 10, 5, 5 - 3.0 / 1024).edges()).hasSize(4);
  }

  @Test
  void corners_areKeptToAStep() {
    Outline plane = Outline.trapezoid(10.0001, 10, 0, 0);
    assertThat(plane.area()).isEqualTo(100);
  }

  @Test
  void whatIsNoOutline_isRefusedWithThePlace() {
    assertRefused(
        () -> Outline.of(List.of(new Spot(0, 0), new Spot(9, 0))), "the outline has 2 corners; it");
    assertRefused(
        () -> PLANE.without(List.of(new Spot(0, 0))), "the opening has 1 corners; it takes at");
    List<Spot> line = List.of(new Spot(7, 0), new Spot(9, 0.01), new Spot(8, 0.005));
    assertRefused(() -> Outline.of(line), "crosses itself or has no area");
    List<Spot> crossed =
        List.of(new Spot(0, 0), new Spot(12, 12), new Spot(12, 0), new Spot(0, 12));
    assertRefused(() -> Outline.of(crossed), "near 6 in along the eave and 6 in up the slope");
    List<Spot> sliver =
        List.of(new Spot(5, 7), new Spot(6, 7), new Spot(6, 7.03125), new Spot(5, 7.03125));
    assertRefused(() -> Outline.of(sliver), "no area, near 5 in along the eave and 7 in up");
  }

  @Test
  void anOpeningOffThePlane_isToldWhereItWouldBe() {
    assertRefused(
        () -> PLANE.without(new Box(90, 10, 105, 25)),
        "the opening from 90 to 105 in along the eave and 10 to 25 in up the slope reaches off the"
            + " plane, or into another opening; measure it");
    assertRefused(
        () -> PLANE.without(new Box(5, 5, 5, 20)), "an opening of 0 by 15 in has no size; give");
    assertRefused(() -> PLANE.without(new Box(5, 5, 9, 5)), "an opening of 4 by 0 in has no");
    assertRefused(() -> PLANE.without(new Box(5, 20, 9, 5)), "an opening of 4 by -15 in has no");
  }
}
