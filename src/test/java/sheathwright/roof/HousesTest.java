package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import sheathwright.catalog.Asked;
import sheathwright.figure.Labels;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/**
 * A hip body of 50 by 32 ft with a wing of 22 ft, 16 ft out, at 5 in 12, worked by hand and by an
 * independent script: 2,114.67 sq ft; hips 94.3563, valleys 32.4350, ridges 18 and 27, eaves 174,
 * rakes 23.8333 ft. Beside it the plan's area as a union of rectangles, and the sides of the planes
 * as they are drawn, of which each hip, valley and ridge is met twice.
 */
class HousesTest {

  private static final Offset<Double> HUNDREDTH = within(0.01);
  private static final HouseBody HIP = HouseBody.length(ft(50)).width(ft(32)).rise(pitch(5));
  private static final double SLOPE = 13 / 12.0; // 5, 12, 13

  private static House hipWithWing() {
    return Houses.house(HIP, Wing.at(ft(14)).width(ft(22)).out(ft(16)));
  }

  private static double drawn(House house, Edge.Kind kind) {
    return house.planes().stream()
            .flatMap(plane -> plane.outline(Reading.aside()).edges().stream())
            .filter(edge -> edge.kind() == kind)
            .mapToDouble(Edge::length)
            .sum()
        / 12;
  }

  private static double drawnArea(House house) {
    return house.planes().stream()
        .mapToDouble(plane -> plane.outline(Reading.aside()).area() / 144)
        .sum();
  }

  private static double union(double[]... rectangles) {
    GeometryFactory shapes = new GeometryFactory();
    Geometry all = shapes.createPolygon();
    for (double[] each : rectangles) {
      all = all.union(shapes.toGeometry(new Envelope(each[0], each[1], each[2], each[3])));
    }
    return all.getArea();
  }

  @Test
  void aHipHouseWithAWing_isAsWorkedByHand() {
    House house = hipWithWing();
    assertThat(house.area().value()).isCloseTo(2114.67, within(0.005));
    assertThat(house.hip().value()).isCloseTo(94.3563, within(5e-5));
    assertThat(house.valley().value()).isCloseTo(32.4350, within(5e-5));
    assertThat(house.ridge().value()).isCloseTo(18 + 27, within(1e-9));
    assertThat(house.eave().value()).isCloseTo(174, within(1e-9));
    assertThat(house.rake().value()).isCloseTo(23.8333, within(5e-5));
  }

  @Test
  void itsPlanes_addUpToTheSame() {
    House house = hipWithWing();
    assertThat(house.planes())
        .extracting(Plane::name)
        .containsExactly("front", "front wing, left", "front wing, right", "back", "left", "right");
    assertThat(drawnArea(house)).isCloseTo(2114.67, HUNDREDTH);
    double plan = union(new double[] {0, 50, 0, 32}, new double[] {14, 36, -16, 10});
    assertThat(drawnArea(house)).isCloseTo(plan * SLOPE, HUNDREDTH);
    assertThat(drawn(house, Edge.Kind.HIP)).isCloseTo(2 * 94.3563, HUNDREDTH);
    assertThat(drawn(house, Edge.Kind.VALLEY)).isCloseTo(2 * 32.4350, HUNDREDTH);
    assertThat(drawn(house, Edge.Kind.RIDGE)).isCloseTo(2 * 45, HUNDREDTH);
    assertThat(drawn(house, Edge.Kind.EAVE)).isCloseTo(174, HUNDREDTH);
    assertThat(drawn(house, Edge.Kind.RAKE)).isCloseTo(23.8333, HUNDREDTH);
  }

  @Test
  void aGableHouseWithEverything_addsUpToItsPlan() {
    HouseBody body = HouseBody.length(ft(42)).width(ft(30)).rise(pitch(5)).ends(RoofEnds.GABLED);
    House house =
        Houses.house(body)
            .wing(HouseSide.BACK, ft(10), ft(20), ft(8))
            .porch(HouseSide.FRONT, ft(2), ft(12), ft(6))
            .dormer(HouseSide.FRONT, ft(26), ft(3), ft(6), ft(5))
            .chimney(HouseSide.FRONT, ft(18), ft(9), ft(2), ft(3));
    double plan =
        union(
            new double[] {0, 42, 0, 30},
            new double[] {10, 30, 20, 38},
            new double[] {2, 14, -6, 5});
    assertThat(house.area().value()).isCloseTo((plan - 2 * 3) * SLOPE, within(1e-6));
    assertThat(drawnArea(house)).isCloseTo((plan - 2 * 3) * SLOPE, HUNDREDTH);
    assertThat(house.planes().stream().mapToDouble(each -> each.area().value()).sum())
        .isCloseTo((plan - 2 * 3) * SLOPE, HUNDREDTH);
    // body 2 × 42, wing 2 × 8 − 20, dormer 2 × 5; the porch's eave stands in for the body's
    assertThat(house.eave().value()).isCloseTo(84 - 20 + 16 + 10, within(1e-9));
    assertThat(drawn(house, Edge.Kind.EAVE)).isCloseTo(90, HUNDREDTH);
    // body 4 × 15, wing 2 × 10, dormer 2 × 3, porch 2 × 6, all times 13 ÷ 12
    assertThat(house.rake().value()).isCloseTo((60 + 20 + 6 + 12) * SLOPE, within(1e-6));
    assertThat(drawn(house, Edge.Kind.RAKE)).isCloseTo((60 + 20 + 6 + 12) * SLOPE, HUNDREDTH);
    // body 42, wing 8 + 10, dormer 5 + 3
    assertThat(house.ridge().value()).isCloseTo(68, within(1e-9));
    assertThat(house.hip().value()).isZero();
    // the wing's 20 and the dormer's 6, each times √(2 + (5 ÷ 12)²)
    assertThat(house.valley().value()).isCloseTo(26 * Math.sqrt(2 + 25 / 144.0), within(1e-6));
  }

  @Test
  void aSquareHipHouse_isAPyramid() {
    House house = Houses.house(HouseBody.length(ft(24)).width(ft(24)).rise(pitch(5)));
    assertThat(house.ridge().value()).isZero();
    assertThat(drawnArea(house)).isCloseTo(24 * 24 * SLOPE, HUNDREDTH);
  }

  @Test
  void whatDoesNotFit_isRefusedWithTheReason() {
    House house = Houses.house(HIP);
    assertRefused(
        () -> house.wing(HouseSide.FRONT, ft(40), ft(22), ft(16)),
        "the wing reaches beyond the front");
    assertRefused(
        () -> house.wing(HouseSide.RIGHT, ft(20), ft(13), ft(16)),
        "the wing reaches beyond the right");
    assertRefused(
        () -> hipWithWing().wing(HouseSide.FRONT, ft(30), ft(10), ft(4)),
        "the wing that begins at 30' 0\" of the front stands in another one, which ends at 36' 0\"");
    assertRefused(
        () -> house.wing(HouseSide.FRONT, ft(5), ft(32), ft(16)),
        "a wing is narrower than the body");
    assertRefused(
        () -> house.chimney(HouseSide.FRONT, ft(0), ft(2), ft(2), ft(2)), "reaches off the plane");
    assertRefused(
        () -> Houses.house(HIP.ends(RoofEnds.GABLED)).wing(HouseSide.LEFT, ft(5), ft(8), ft(4)),
        "the left is a gable");
    assertRefused(
        () -> Houses.house(HouseBody.length(ft(20)).width(ft(30)).rise(pitch(5))).area().value(),
        "length_ft must not be less than width_ft");
    assertRefused(
        () -> Houses.house(HIP, Wing.none().out(ft(16))).ridge().value(), "a wing without width");
    assertRefused(
        () -> house.chimney(HouseSide.FRONT, ft(18), ft(9), ft(-2), ft(3)),
        "a measure of the chimney is -2' 0\", and none is less than 0");
    assertRefused(
        () -> house.porch(HouseSide.FRONT, ft(14), ft(12), ft(-3)), "a measure of the porch is");
    assertRefused(
        () -> house.dormer(HouseSide.FRONT, ft(14), ft(-3), ft(6), ft(5)), "of the dormer is");
    assertRefused(() -> house.wing(HouseSide.FRONT, ft(-1), ft(22), ft(6)), "of the wing is");
    assertRefused(() -> house.plane("south"), "it has front, back, left, right");
  }

  private static void assertRefused(Runnable wrong, String reason) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(wrong::run)
        .withMessageContaining(reason);
  }

  @Test
  void aPlane_isFoundByItsName() {
    assertThat(hipWithWing().plane("front wing, left").name()).isEqualTo("front wing, left");
    assertThat(hipWithWing().plan()).hasToString("50' 0\" by 32' 0\", hipped");
  }

  /** By hand: 6 ft of wing, then 8 ft beside it, on a gable body of 30 by 20 ft at 5 in 12. */
  @Test
  void wingsOfOneSide_areNumberedFromTheLeft_andMayTouch() {
    HouseBody body = HouseBody.length(ft(30)).width(ft(20)).rise(pitch(5)).ends(RoofEnds.GABLED);
    House house =
        Houses.house(body)
            .wing(HouseSide.FRONT, ft(6), ft(8), ft(4))
            .wing(HouseSide.FRONT, ft(0), ft(6), ft(4));
    assertThat(house.planes())
        .extracting(Plane::name)
        .containsExactly(
            "front",
            "front wing 1, left",
            "front wing 1, right",
            "front wing 2, left",
            "front wing 2, right",
            "back");
    assertThat(drawnArea(house)).isCloseTo((600 + 24 + 32) * SLOPE, HUNDREDTH);
    assertThat(house.plane("front wing 1, left").area().value())
        .as("4 ft of eave, 3 ft wide, and half a square of its valley")
        .isCloseTo((4 * 3 + 4.5) * SLOPE, within(1e-6));
    assertThat(house.plane("front").outline(Reading.aside()).edges())
        .as("no side without length at the corner")
        .allMatch(side -> side.length() > 1)
        .hasSize(8);
  }

  /** By hand: a chimney 9 ft from the eave in plan is 9 × 13 ÷ 12 ft up the slope, 3 ft is 3.25. */
  @Test
  void aChimney_liesWhereItIsInPlan() {
    House house = Houses.house(HIP).chimney(HouseSide.FRONT, ft(18), ft(9), ft(2), ft(3));
    assertThat(house.plane("front").openings(Reading.aside()))
        .singleElement()
        .satisfies(box -> assertThat(box.left()).isCloseTo(216, within(1e-9)))
        .satisfies(box -> assertThat(box.bottom()).isCloseTo(117, within(1e-9)))
        .satisfies(box -> assertThat(box.width()).isCloseTo(24, within(1e-9)))
        .satisfies(box -> assertThat(box.height()).isCloseTo(39, within(1e-9)));
  }

  @Test
  void eachPlane_isSolvedAgainForItsOwnMeasures() {
    House house =
        Houses.house(HIP)
            .wing(HouseSide.FRONT, ft(14), ft(22), ft(16))
            .dormer(HouseSide.BACK, ft(20), ft(3), ft(6), ft(5));
    assertThat(Labels.of(house.plane("front")::outline))
        .contains(
            "eave of the front",
            "run of the front",
            "wing of the front, along the eave",
            "wing of the front, from the eave",
            "wing of the front, width",
            "wing of the front, depth");
    assertThat(Labels.of(house.plane("back")::outline))
        .contains(
            "eave of back",
            "dormer of the back, along the eave",
            "dormer of the back, from the eave",
            "dormer of the back, width",
            "dormer of the back, depth");
    assertThat(Labels.of(house.plane("left")::outline))
        .containsExactly("eave of left", "slope length of left", "left lean of left");
  }

  @Test
  void measuresInInches_makeTheSameHouse() {
    HouseBody body = HouseBody.length(in(600)).width(in(384)).rise(pitch(5));
    House house =
        Houses.house(body)
            .wing(HouseSide.FRONT, in(168), in(264), in(192))
            .dormer(HouseSide.BACK, in(240), in(36), in(72), in(60))
            .chimney(HouseSide.BACK, in(360), in(36), in(24), in(24));
    assertThat(house.area().value()).isCloseTo(2114.67 - 4 * SLOPE, HUNDREDTH);
    assertThat(drawnArea(house)).isCloseTo(2114.67 - 4 * SLOPE, HUNDREDTH);
    assertThat(house.planes().stream().mapToDouble(each -> each.area().value()).sum())
        .isCloseTo(2114.67 - 4 * SLOPE, HUNDREDTH);
  }

  @Test
  void theWorking_namesAPartsWidth() {
    Asked house =
        Asked.line(
            "house: length_ft=50, width_ft=32, rise_in_12=5, wing_at_ft=14, wing_width_ft=22,"
                + " wing_out_ft=16");
    assertThat(house.working()).contains("wing width × wing out");
  }

  @Test
  void areas_areInSquareFeet() {
    assertThat(List.of(hipWithWing().area().unit(), hipWithWing().hip().unit()))
        .isEqualTo(List.of(Units.SQUARE_FOOT, Units.FOOT));
  }
}
