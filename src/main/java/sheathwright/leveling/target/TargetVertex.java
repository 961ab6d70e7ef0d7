package sheathwright.leveling.target;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The surface computed again from the readings that carry it: four equations in a hundred decimal
 * digits, so that 7/16 in is 0.4375 and not a neighbor of it.
 */
final class TargetVertex {

  private static final MathContext DIGITS = new MathContext(100);
  private static final MathContext KEPT = new MathContext(60);
  private static final int DECIMALS = 14; // of an inch

  /**
   * Factors are 1 at most, and rounding leaves 1e-15 of a row that follows from others; what is
   * left of a row that does not is its place beside them, as a part of the plane's reach. Half and
   * double give the same 240 planes.
   */
  private static final double DEPENDENT = 1e-6;

  /** Height at the origin, two slopes, the largest build-up. */
  private static final int UNKNOWNS = 4;

  private TargetVertex() {}

  /**
   * Height of the surface at the origin, slope across, slope up, largest build-up.
   *
   * @param found rows that the surface meets exactly, surely or likely
   */
  static BigDecimal[] of(TargetFrame frame, TargetSearch.Found found) {
    BigDecimal[][] equations =
        independent(found.deciding(), found.touching()).stream()
            .map(row -> equation(frame, row))
            .toArray(BigDecimal[][]::new);
    return solved(equations);
  }

  /** The build-up of each reading under a surface. */
  static List<BigDecimal> buildUps(TargetFrame frame, BigDecimal[] surface) {
    return IntStream.range(0, frame.size())
        .mapToObj(frame::reading)
        .map(
            reading ->
                surface[0]
                    .add(surface[1].multiply(exact(reading.x())))
                    .add(surface[2].multiply(exact(reading.y())))
                    .subtract(exact(reading.z()))
                    .setScale(DECIMALS, RoundingMode.HALF_EVEN))
        .toList();
  }

  /** A number as it is written. */
  static BigDecimal exact(double number) {
    return BigDecimal.valueOf(number);
  }

  private static BigDecimal[] equation(TargetFrame frame, TargetRow row) {
    if (row.kind() == TargetRow.Kind.LEVEL) {
      BigDecimal[] level = new BigDecimal[UNKNOWNS + 1];
      Arrays.fill(level, BigDecimal.ZERO);
      level[row.index()] = BigDecimal.ONE;
      return level;
    }
    TargetReading reading = frame.reading(row.index());
    BigDecimal above =
        switch (row.kind()) {
          case LEAST -> exact(reading.least());
          case MOST -> exact(frame.most(row.index()));
          case WOOD, LARGEST, RISE, FALL, LEVEL -> BigDecimal.ZERO;
        };
    return new BigDecimal[] {
      BigDecimal.ONE,
      exact(reading.x()),
      exact(reading.y()),
      row.kind() == TargetRow.Kind.LARGEST ? BigDecimal.ONE.negate() : BigDecimal.ZERO,
      exact(reading.z()).add(above)
    };
  }

  /**
   * Four rows of which none follows from the others: sure ones as long as there are any, of those
   * the one that stands farthest apart.
   */
  private static List<TargetRow> independent(List<TargetRow> sure, List<TargetRow> likely) {
    List<TargetRow> rows = new ArrayList<>(sure);
    rows.addAll(likely);
    double[][] rests =
        rows.stream().map(row -> Arrays.copyOf(row.factors(), UNKNOWNS)).toArray(double[][]::new);
    List<TargetRow> chosen = new ArrayList<>();
    while (chosen.size() < UNKNOWNS) {
      int best = farthest(rests, 0, sure.size());
      best = best < 0 ? farthest(rests, sure.size(), rests.length) : best;
      if (best < 0) {
        throw new IllegalStateException("the readings found do not settle the target");
      }
      chosen.add(rows.get(best));
      double[] row = rests[best].clone();
      int pivot = largest(row);
      for (double[] rest : rests) {
        double times = rest[pivot] / row[pivot];
        Arrays.setAll(rest, i -> rest[i] - times * row[i]);
      }
    }
    return chosen;
  }

  private static int farthest(double[][] rests, int from, int to) {
    int best = -1;
    double apart = DEPENDENT;
    for (int i = from; i < to; i++) {
      double largest = Math.abs(rests[i][largest(rests[i])]);
      if (largest > apart) {
        apart = largest;
        best = i;
      }
    }
    return best;
  }

  private static int largest(double[] row) {
    return IntStream.range(0, row.length)
        .reduce(0, (best, i) -> Math.abs(row[i]) > Math.abs(row[best]) ? i : best);
  }

  private static BigDecimal[] solved(BigDecimal[][] equations) {
    for (int column = 0; column < UNKNOWNS; column++) {
      int pivot = column;
      for (int row = column + 1; row < UNKNOWNS; row++) {
        if (equations[row][column].abs().compareTo(equations[pivot][column].abs()) > 0) {
          pivot = row;
        }
      }
      BigDecimal[] swapped = equations[pivot];
      equations[pivot] = equations[column];
      equations[column] = swapped;
      for (int row = 0; row < UNKNOWNS; row++) {
        if (row != column && equations[row][column].signum() != 0) {
          eliminate(equations[row], equations[column], column);
        }
      }
    }
    BigDecimal[] values = new BigDecimal[UNKNOWNS];
    Arrays.setAll(values, i -> equations[i][UNKNOWNS].divide(equations[i][i], KEPT));
    return values;
  }

  private static void eliminate(BigDecimal[] row, BigDecimal[] pivotRow, int column) {
    BigDecimal times = row[column].divide(pivotRow[column], DIGITS);
    for (int i = 0; i < row.length; i++) {
      row[i] = i == column ? BigDecimal.ZERO : row[i].subtract(times.multiply(pivotRow[i]), DIGITS);
    }
  }
}
