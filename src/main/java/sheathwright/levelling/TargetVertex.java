package sheathwright.levelling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The surface computed again from the readings that carry it: four equations in a hundred decimal
 * digits, so that 7/16 in is 0.4375 and not a neighbour of it.
 */
final class TargetVertex {

  private static final MathContext DIGITS = new MathContext(100);
  private static final MathContext KEPT = new MathContext(60);
  private static final int DECIMALS = 14; // of an inch
  private static final double DEPENDENT = 1e-6;
  private static final int UNKNOWNS = 4;

  private TargetVertex() {}

  /**
   * Height of the surface at the origin, slope across, slope up, largest build-up.
   *
   * @param candidates rows that the surface meets exactly, the surest first
   */
  static BigDecimal[] of(TargetFrame frame, List<TargetRow> candidates) {
    List<TargetRow> rows = independent(candidates);
    BigDecimal[][] equations =
        rows.stream().map(row -> equation(frame, row)).toArray(BigDecimal[][]::new);
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
          default -> BigDecimal.ZERO;
        };
    return new BigDecimal[] {
      BigDecimal.ONE,
      exact(reading.x()),
      exact(reading.y()),
      row.kind() == TargetRow.Kind.LARGEST ? BigDecimal.ONE.negate() : BigDecimal.ZERO,
      exact(reading.z()).add(above)
    };
  }

  /** The first four rows of which none follows from the others. */
  private static List<TargetRow> independent(List<TargetRow> candidates) {
    List<TargetRow> chosen = new ArrayList<>();
    List<double[]> reduced = new ArrayList<>();
    List<Integer> pivots = new ArrayList<>();
    for (TargetRow candidate : candidates) {
      double[] rest = Arrays.copyOf(candidate.factors(), UNKNOWNS);
      for (int i = 0; i < reduced.size(); i++) {
        subtract(rest, reduced.get(i), rest[pivots.get(i)]);
      }
      int pivot = largest(rest);
      if (Math.abs(rest[pivot]) > DEPENDENT && chosen.size() < UNKNOWNS) {
        double scale = rest[pivot];
        reduced.add(Arrays.stream(rest).map(factor -> factor / scale).toArray());
        pivots.add(pivot);
        chosen.add(candidate);
      }
    }
    if (chosen.size() < UNKNOWNS) {
      throw new IllegalStateException("the readings found do not settle the target");
    }
    return chosen;
  }

  private static int largest(double[] row) {
    return IntStream.range(0, row.length)
        .reduce(0, (best, i) -> Math.abs(row[i]) > Math.abs(row[best]) ? i : best);
  }

  private static void subtract(double[] from, double[] row, double times) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= times * row[i];
    }
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
