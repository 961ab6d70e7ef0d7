package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole roof planes against another library, which is given every row at once. */
class TargetLibraryTest {

  private static final double[] ONE = {0, 0, 0, 1};

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void plane_takesAsLittleAsAnotherLibrarySays(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 10; i++) {
      List<TargetReading> readings =
          TargetReadings.sagged(random, 1 + random.nextInt(8), 2 + random.nextInt(8));
      assertThatAgrees(readings, TargetReading.UNLIMITED);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35, 36})
  void plane_takesAsLittleAsAnotherLibrarySays_withinBounds(long seed) {
    Random random = new Random(seed);
    int served = 0;
    for (int i = 0; i < 20; i++) {
      List<TargetReading> readings =
          TargetReadings.bounded(
              random, TargetReadings.sagged(random, 1 + random.nextInt(6), 2 + random.nextInt(6)));
      double cap = random.nextBoolean() ? 1 + random.nextInt(32) / 16.0 : TargetReading.UNLIMITED;
      served += assertThatAgrees(readings, cap) ? 1 : 0;
    }
    assertThat(served).isBetween(2, 18); // both kinds were tried
  }

  private static boolean assertThatAgrees(List<TargetReading> readings, double cap) {
    double[] total = new double[4];
    double wood = 0;
    for (TargetReading reading : readings) {
      double[] place = row(reading, 0);
      for (int i = 0; i < total.length; i++) {
        total[i] += place[i];
      }
      wood += reading.z();
    }
    Optional<Double> leastTotal = least(total, rows(readings, cap));
    Optional<Double> leastLargest = least(ONE, rows(readings, cap));
    if (leastTotal.isEmpty()) {
      double lacking = least(ONE, givingRows(readings, cap)).orElseThrow();
      for (TargetObjective objective : TargetObjective.values()) {
        assertThat(lacking(readings, objective, cap)).isCloseTo(lacking, within(1e-6));
      }
      return false;
    }
    assertThat(TargetPlane.over(readings, TargetObjective.TOTAL, cap).total())
        .isCloseTo(leastTotal.orElseThrow() - wood, within(1e-6));
    assertThat(TargetPlane.over(readings, TargetObjective.LARGEST, cap).largest())
        .isCloseTo(leastLargest.orElseThrow(), within(1e-6));
    return true;
  }

  private static double lacking(
      List<TargetReading> readings, TargetObjective objective, double cap) {
    try {
      TargetPlane.over(readings, objective, cap);
      return 0;
    } catch (NoTargetException none) {
      return none.lacking();
    }
  }

  private static double[] row(TargetReading reading, double extra) {
    return new double[] {1, reading.x(), reading.y(), extra};
  }

  private static List<LinearConstraint> rows(List<TargetReading> readings, double cap) {
    List<LinearConstraint> rows = new ArrayList<>();
    for (TargetReading reading : readings) {
      double z = reading.z();
      rows.add(new LinearConstraint(row(reading, 0), Relationship.GEQ, z + reading.least()));
      rows.add(new LinearConstraint(row(reading, -1), Relationship.LEQ, z));
      double most = Math.min(cap, reading.most());
      if (Double.isFinite(most)) {
        rows.add(new LinearConstraint(row(reading, 0), Relationship.LEQ, z + most));
      }
    }
    return rows;
  }

  private static List<LinearConstraint> givingRows(List<TargetReading> readings, double cap) {
    List<LinearConstraint> rows = new ArrayList<>();
    for (TargetReading reading : readings) {
      double z = reading.z();
      rows.add(new LinearConstraint(row(reading, 0), Relationship.GEQ, z));
      rows.add(new LinearConstraint(row(reading, 1), Relationship.GEQ, z + reading.least()));
      double most = Math.min(cap, reading.most());
      if (Double.isFinite(most)) {
        rows.add(new LinearConstraint(row(reading, -1), Relationship.LEQ, z + most));
      }
    }
    rows.add(new LinearConstraint(ONE, Relationship.GEQ, 0));
    return rows;
  }

  private static Optional<Double> least(double[] objective, List<LinearConstraint> rows) {
    try {
      PointValuePair best =
          new SimplexSolver(1e-9, 100, 1e-13)
              .optimize(
                  new LinearObjectiveFunction(objective, 0),
                  new LinearConstraintSet(rows),
                  new NonNegativeConstraint(false));
      return Optional.of(best.getValue());
    } catch (NoFeasibleSolutionException none) {
      return Optional.empty();
    }
  }
}
