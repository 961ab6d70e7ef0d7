package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Planes and lines whose optimum is known exactly; the file of cases says from where. */
class TargetCasesTest {

  private static final Offset<Double> MILLIONTH = within(1e-6);

  static Stream<TargetCase> feasible() throws IOException {
    return TargetCase.all().filter(each -> each.has("min_total"));
  }

  static Stream<TargetCase> infeasible() throws IOException {
    return TargetCase.all().filter(each -> !each.has("min_total"));
  }

  static Stream<TargetCase> withLines() throws IOException {
    return TargetCase.all().filter(each -> each.has("per_rafter_lines_total"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("feasible")
  void leastTotal_andThenTheLeastLargest_areTheExactOnes(TargetCase each) {
    TargetPlane plane = TargetPlane.over(each.readings(), TargetObjective.TOTAL, each.cap());
    assertThat(plane.total()).isCloseTo(each.exact("min_total"), MILLIONTH);
    assertThat(plane.largest()).isCloseTo(each.exact("lexTM_max_given_min_total"), MILLIONTH);
    assertThatItsBuildUpsAreItsOwn(plane, each.readings());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("feasible")
  void leastLargest_andThenTheLeastTotal_areTheExactOnes(TargetCase each) {
    TargetPlane plane = TargetPlane.over(each.readings(), TargetObjective.LARGEST, each.cap());
    assertThat(plane.largest()).isCloseTo(each.exact("min_max"), MILLIONTH);
    assertThat(plane.total()).isCloseTo(each.exact("lexMT_total_given_min_max"), MILLIONTH);
    assertThatItsBuildUpsAreItsOwn(plane, each.readings());
  }

  private static void assertThatItsBuildUpsAreItsOwn(
      TargetPlane plane, List<TargetReading> readings) {
    for (int i = 0; i < readings.size(); i++) {
      TargetReading reading = readings.get(i);
      double above = plane.at(reading.x(), reading.y()) - reading.z();
      assertThat(plane.buildUps().get(i)).isCloseTo(above, within(1e-9)).isNotNegative();
    }
    assertThat(plane.buildUps().stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(plane.total(), within(1e-9));
    assertThat(plane.buildUps()).contains(plane.largest());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("feasible")
  void plane_isTheExactOne_whereThereIsOnlyOne(TargetCase each) {
    if (each.line().get("min_total_plane_uniqueness").equals("unique")) {
      TargetPlane plane = TargetPlane.over(each.readings(), TargetObjective.TOTAL, each.cap());
      assertThat(plane.height()).isCloseTo(each.exact("plane_a"), MILLIONTH);
      assertThat(plane.across()).isCloseTo(each.exact("plane_b"), MILLIONTH);
      assertThat(plane.up()).isCloseTo(each.exact("plane_c"), MILLIONTH);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("infeasible")
  void clash_isAsLargeAsTheExactOne(TargetCase each) {
    for (TargetObjective objective : TargetObjective.values()) {
      NoTargetException none =
          catchThrowableOfType(
              NoTargetException.class,
              () -> TargetPlane.over(each.readings(), objective, each.cap()));
      assertThat(none.lacking())
          .isCloseTo(each.exact("elastic_violation_if_infeasible"), MILLIONTH);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("withLines")
  void lines_takeTheExactTotal(TargetCase each) {
    TargetLines lines = TargetLines.over(each.readings(), TargetObjective.TOTAL, each.cap());
    assertThat(lines.total()).isCloseTo(each.exact("per_rafter_lines_total"), MILLIONTH);
  }
}
