package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.List;

/**
 * The best surface over a few readings by trying every corner: each four of the things that may
 * touch it are solved as equations in whole numbers, and the best of all answers that meet every
 * row is kept. Places and heights are whole numbers of some unit.
 */
final class TargetBruteForce {

  private static final int UNKNOWNS = 4; // height, across, up, largest

  /** One reading; {@code most} is negative where nothing limits the build-up. */
  record Whole(long x, long y, long z, long least, long most) {

    /** The same in units of so many to the inch. */
    TargetReading inches(double places, double heights) {
      return new TargetReading(
          "%d %d %d".formatted(x, y, z),
          x / places,
          y / places,
          z / heights,
          least / heights,
          most < 0 ? TargetReading.UNLIMITED : most / heights);
    }
  }

  /** Unknowns as numerators over one positive denominator. */
  private record Corner(long[] values, long under) {

    double value(int unknown) {
      return (double) values[unknown] / under;
    }
  }

  /** Numbers to make least, each only where those before it are equal. */
  private final List<long[]> objectives = new ArrayList<>();

  private final List<long[]> rows = new ArrayList<>(); // factors, then what their sum must reach
  private final List<long[]> level = new ArrayList<>();
  private final List<Whole> readings;
  private Corner best;

  private TargetBruteForce(List<Whole> readings) {
    this.readings = readings;
    level.add(new long[] {0, 1, 0, 0, 0});
    level.add(new long[] {0, 0, 1, 0, 0});
  }

  /** Total and largest build-up, slopes across and up; nothing if no surface serves. */
  static double[] best(List<Whole> readings, TargetObjective objective, long cap) {
    TargetBruteForce search = new TargetBruteForce(readings);
    long[] total = new long[UNKNOWNS];
    long heights = 0;
    for (Whole reading : readings) {
      long[] place = {1, reading.x(), reading.y(), 0};
      for (int i = 0; i < UNKNOWNS; i++) {
        total[i] += place[i];
      }
      heights += reading.z();
      search.rows.add(search.row(reading, 1, 0, reading.z() + reading.least()));
      search.rows.add(search.row(reading, -1, 1, -reading.z()));
      long most = smaller(reading.most(), cap);
      if (most >= 0) {
        search.rows.add(search.row(reading, -1, 0, -reading.z() - most));
      }
    }
    long[] largest = {0, 0, 0, 1};
    search.objectives.add(objective == TargetObjective.TOTAL ? total : largest);
    search.objectives.add(objective == TargetObjective.TOTAL ? largest : total);
    search.tryAll();
    if (search.best == null) {
      return null;
    }
    double sum = -heights;
    for (int i = 0; i < UNKNOWNS; i++) {
      sum += total[i] * search.best.value(i);
    }
    return new double[] {sum, search.best.value(3), search.best.value(1), search.best.value(2)};
  }

  /** What every bound but the wood must give. */
  static double lacking(List<Whole> readings, long cap) {
    TargetBruteForce search = new TargetBruteForce(readings);
    search.rows.add(new long[] {0, 0, 0, 1, 0});
    for (Whole reading : readings) {
      search.rows.add(search.row(reading, 1, 0, reading.z()));
      search.rows.add(search.row(reading, 1, 1, reading.z() + reading.least()));
      long most = smaller(reading.most(), cap);
      if (most >= 0) {
        search.rows.add(search.row(reading, -1, 1, -reading.z() - most));
      }
    }
    search.objectives.add(new long[] {0, 0, 0, 1});
    search.tryAll();
    return search.best.value(3);
  }

  private static long smaller(long most, long cap) {
    return most < 0 ? cap : cap < 0 ? most : Math.min(most, cap);
  }

  private long[] row(Whole reading, long sign, long extra, long least) {
    return new long[] {sign, sign * reading.x(), sign * reading.y(), extra, least};
  }

  private void tryAll() {
    List<long[]> touching = new ArrayList<>(rows);
    touching.addAll(level);
    int count = touching.size();
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        for (int k = j + 1; k < count; k++) {
          for (int l = k + 1; l < count; l++) {
            tryCorner(
                new long[][] {touching.get(i), touching.get(j), touching.get(k), touching.get(l)});
          }
        }
      }
    }
  }

  private void tryCorner(long[][] equations) {
    long under = determinant(equations, -1);
    if (under == 0) {
      return;
    }
    long[] values = new long[UNKNOWNS];
    for (int i = 0; i < UNKNOWNS; i++) {
      values[i] = (under < 0 ? -1 : 1) * determinant(equations, i);
    }
    Corner corner = new Corner(values, Math.abs(under));
    for (long[] row : rows) {
      if (times(row, corner) < Math.multiplyExact(row[UNKNOWNS], corner.under())) {
        return;
      }
    }
    if (best == null || isBetter(corner)) {
      best = corner;
    }
  }

  private boolean isBetter(Corner corner) {
    for (long[] objective : objectives) {
      int order = compare(times(objective, corner), corner.under(), times(objective, best));
      if (order != 0) {
        return order < 0;
      }
    }
    for (int slope = 1; slope <= 2; slope++) {
      int order =
          compare(Math.abs(corner.values()[slope]), corner.under(), Math.abs(best.values()[slope]));
      if (order != 0) {
        return order < 0;
      }
    }
    return false;
  }

  private int compare(long number, long under, long other) {
    return Long.compare(Math.multiplyExact(number, best.under()), Math.multiplyExact(other, under));
  }

  private static long times(long[] factors, Corner corner) {
    long sum = 0;
    for (int i = 0; i < UNKNOWNS; i++) {
      sum = Math.addExact(sum, Math.multiplyExact(factors[i], corner.values()[i]));
    }
    return sum;
  }

  /** Of the four equations' factors, one column replaced by their right-hand sides. */
  private static long determinant(long[][] equations, int replaced) {
    long[][] square = new long[UNKNOWNS][];
    for (int i = 0; i < UNKNOWNS; i++) {
      square[i] = java.util.Arrays.copyOf(equations[i], UNKNOWNS);
      if (replaced >= 0) {
        square[i][replaced] = equations[i][UNKNOWNS];
      }
    }
    return determinant(square, 0, new boolean[UNKNOWNS]);
  }

  private static long determinant(long[][] square, int row, boolean[] used) {
    if (row == UNKNOWNS) {
      return 1;
    }
    long sum = 0;
    int sign = 1;
    for (int column = 0; column < UNKNOWNS; column++) {
      if (!used[column]) {
        if (square[row][column] != 0) {
          used[column] = true;
          sum += sign * square[row][column] * determinant(square, row + 1, used);
          used[column] = false;
        }
        sign = -sign;
      }
    }
    return sum;
  }
}
