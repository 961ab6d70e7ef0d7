package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;

class PlanesTest {

  private static PlaneMeasures measures(double eave, double slope, double left, double right) {
    return Planes.planeMeasures(
        PlaneSize.eave(ft(eave)).slope(ft(slope)), Leans.left(ft(left)).right(ft(right)));
  }

  /** Worked by hand: rectangle, hip triangle, hip trapezoid and valley plane. */
  @ParameterizedTest
  @CsvSource({
    "24, 12, 0, 0, 288, 24, 0, 0, 24",
    "24, 12, 12, 12, 144, 0, 33.941125, 0, 0",
    "40, 12, 12, 12, 336, 16, 33.941125, 0, 0",
    "20, 12, 0, -12, 312, 32, 0, 16.970563, 12",
    "30, 8, 6, -6, 240, 30, 10, 10, 0"
  })
  void planeMeasures_areAsWorkedByHand(
      double eave,
      double slope,
      double left,
      double right,
      double area,
      double ridge,
      double hip,
      double valley,
      double rake) {
    PlaneMeasures plane = measures(eave, slope, left, right);
    assertThat(plane.area().value()).isCloseTo(area, within(1e-6));
    assertThat(plane.ridge().value()).isCloseTo(ridge, within(1e-6));
    assertThat(plane.hip().value()).isCloseTo(hip, within(1e-6));
    assertThat(plane.valley().value()).isCloseTo(valley, within(1e-6));
    assertThat(plane.rake().value()).isCloseTo(rake, within(1e-6));
  }

  /**
   * A hip house 50 by 32 ft at 5 in 12: the plan's area times the slope factor, and four hips of
   * the hip factor times the run, are the sums over its four planes, each hip counted twice.
   */
  @Test
  void planeMeasures_ofAHipHouse_addUpToThePlan() {
    double slope = Slopes.slopeLength(ft(16), pitch(5)).value();
    PlaneMeasures side = measures(50, slope, 16, 16);
    PlaneMeasures end = measures(32, slope, 16, 16);
    double factor = Math.sqrt(1 + 25.0 / 144);
    assertThat(2 * (side.area().value() + end.area().value()))
        .isCloseTo(50 * 32 * factor, within(1e-6));
    assertThat(side.hip().value() + end.hip().value())
        .isCloseTo(4 * 16 * Math.sqrt(2 + 25.0 / 144), within(1e-6));
    assertThat(side.ridge().value()).isCloseTo(18, within(1e-9));
  }

  @Test
  void planeMeasures_refuseSidesThatCross() {
    assertThatThrownBy(() -> measures(24, 12, 12, 12.5).area().value())
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("cross below the ridge");
  }

  /** Second road: a geometry library's polygon, its sides told apart by how they lie. */
  @Test
  void planeMeasures_agreeWithTheOutline() {
    Random random = new Random(20_261_127);
    for (int i = 0; i < 200; i++) {
      double eave = 10 + random.nextInt(400) / 8.0;
      double slope = 4 + random.nextInt(200) / 8.0;
      double left = (random.nextInt(160) - 80) / 16.0;
      double right = (random.nextInt(160) - 80) / 16.0;
      PlaneMeasures plane = measures(eave, slope, left, right);
      Outline outline = Outline.trapezoid(eave * 12, slope * 12, left * 12, right * 12);
      assertThat(outline.area() / 144).isCloseTo(plane.area().value(), within(1e-6));
      assertThat(feet(outline, Edge.Kind.HIP)).isCloseTo(plane.hip().value(), within(1e-6));
      assertThat(feet(outline, Edge.Kind.VALLEY)).isCloseTo(plane.valley().value(), within(1e-6));
      assertThat(feet(outline, Edge.Kind.RAKE)).isCloseTo(plane.rake().value(), within(1e-6));
      assertThat(feet(outline, Edge.Kind.RIDGE)).isCloseTo(plane.ridge().value(), within(1e-6));
      assertThat(feet(outline, Edge.Kind.EAVE)).isCloseTo(eave, within(1e-6));
    }
  }

  private static double feet(Outline outline, Edge.Kind kind) {
    return outline.edges().stream()
        .filter(edge -> edge.kind() == kind)
        .mapToDouble(edge -> edge.length() / 12)
        .sum();
  }

  @Test
  void aPlaneOfAPlan_isLongerByTheSlopeFactor() {
    Plane plan = Plane.outlineOfPlan("east", "0 0, 24 0, 12 12", pitch(9));
    assertThat(plan.area().value()).isCloseTo(144 * 1.25, within(1e-6));
  }

  @Test
  void anOpening_isTakenOffTheArea_andOnlyWhereThePlaneIs() {
    Plane plane = Plane.rectangle("south", ft(32), ft(12));
    assertThat(plane.without(ft(10), ft(5), ft(4), ft(2)).area().value()).isEqualTo(376);
    assertThatThrownBy(() -> plane.without(ft(30), ft(5), ft(4), ft(2)))
        .hasMessageContaining("reaches off the plane");
    Plane once = plane.without(ft(10), ft(5), ft(4), ft(2));
    assertThatThrownBy(() -> once.without(ft(13), ft(6), ft(4), ft(2)))
        .hasMessageContaining("into another");
  }

  @Test
  void anOutline_isRefusedWhereItCrossesItself() {
    assertThatThrownBy(() -> Plane.outline("west", "0 0, 10 10, 10 0, 0 10"))
        .hasMessageContaining("crosses itself");
    assertThatThrownBy(() -> Plane.outline("west", "0 0, 10")).hasMessageContaining("not a corner");
    assertThatThrownBy(() -> Plane.outline("west", "0 0, 10 0")).hasMessageContaining("at least 3");
  }

  /**
   * By hand: the line y = 3 ft crosses an L of 10 by 6 less its upper right 5 by 3 along its inner
   * corner.
   */
  @Test
  void aLine_countsOnlyWhereWoodLiesOnBothSides() {
    Outline ell =
        Outline.of(
            List.of(
                new Spot(0, 0),
                new Spot(120, 0),
                new Spot(120, 36),
                new Spot(60, 36),
                new Spot(60, 72),
                new Spot(0, 72)));
    assertThat(ell.lengthInside(new Spot(-50, 36), new Spot(500, 36))).isCloseTo(60, within(1e-9));
    assertThat(ell.lengthInside(new Spot(60, -50), new Spot(60, 500))).isCloseTo(36, within(1e-9));
  }

  @Test
  void supports_areRefused_whereNoPanelCouldSpan() {
    assertThatThrownBy(() -> Supports.every(in(4))).hasMessageContaining("from 6 to 60 in");
    assertThatThrownBy(() -> Supports.at(in(0), in(24), in(90))).hasMessageContaining("60 in");
    assertThatThrownBy(() -> Supports.at(in(0), in(0.5))).hasMessageContaining("side by side");
    assertThatThrownBy(() -> Supports.at(in(0))).hasMessageContaining("at least 2");
  }

  @Test
  void supports_areFoundByPlace() {
    Supports sixteen = Supports.every(in(16), in(3));
    assertThat(sixteen.centers(Reading.aside()).between(0, 40)).containsExactly(3.0, 19.0, 35.0);
    assertThat(sixteen.centers(Reading.aside()).nearest(28)).isEqualTo(35);
    Supports measured = Supports.at(in(47.25), in(0), in(24.5));
    assertThat(measured.centers(Reading.aside()).between(20, 50)).containsExactly(24.5, 47.25);
    assertThat(measured.centers(Reading.aside()).nearest(30)).isEqualTo(24.5);
  }
}
