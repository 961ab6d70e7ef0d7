package sheathwright.framing.sister;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Another road to everything about sisters: two beams of finite elements, the old one on two
 * supports under an even load, the other joined to it by nails as springs. Plain numbers, in pounds
 * and inches; an element's cubic is exact between its ends.
 */
public final class TwoBeams {

  private static final double NEAR = 1e-7;

  private final double span;
  private final double load;
  private final List<Double> nodes;
  private final int[][] rafterLeft;
  private final int[][] rafterRight;
  private final int[][] sister;
  private final double[] nails;
  private final double[] forces;
  private final double[] moved;
  private final boolean bears;
  private final double sisterFrom;

  /**
   * @param nails where the nails are, from the left support
   * @param stiffness of each nail, lb/in
   * @param bears whether the sister's ends stand on the supports; they must then be there
   * @param breakAt where the old beam is cut through; outside the span if it is sound
   */
  public TwoBeams(
      double span,
      double load,
      double rafterStiffness,
      double sisterStiffness,
      double sisterFrom,
      double sisterTo,
      double[] nails,
      double stiffness,
      boolean bears,
      double breakAt) {
    this.span = span;
    this.load = load;
    this.nails = nails;
    this.bears = bears;
    this.sisterFrom = sisterFrom;
    nodes = nodes(span, sisterFrom, sisterTo, nails, breakAt);
    int count = nodes.size();
    rafterLeft = new int[count][];
    rafterRight = new int[count][];
    sister = new int[count][];
    int unknowns = 0;
    for (int i = 0; i < count; i++) {
      rafterLeft[i] = new int[] {unknowns++, unknowns++};
      boolean isCut = Math.abs(nodes.get(i) - breakAt) < NEAR;
      rafterRight[i] = isCut ? new int[] {unknowns++, unknowns++} : rafterLeft[i];
      boolean isInside = nodes.get(i) > sisterFrom - NEAR && nodes.get(i) < sisterTo + NEAR;
      sister[i] = isInside ? new int[] {unknowns++, unknowns++} : null;
    }
    double[][] matrix = new double[unknowns][unknowns];
    double[] right = new double[unknowns];
    for (int i = 0; i + 1 < count; i++) {
      double length = nodes.get(i + 1) - nodes.get(i);
      element(matrix, right, rafterRight[i], rafterLeft[i + 1], length, rafterStiffness, load);
      if (sister[i] != null && sister[i + 1] != null) {
        element(matrix, right, sister[i], sister[i + 1], length, sisterStiffness, 0);
      }
    }
    for (double nail : nails) {
      int i = indexOf(nail);
      int a = rafterLeft[i][0];
      int b = sister[i][0];
      matrix[a][a] += stiffness;
      matrix[b][b] += stiffness;
      matrix[a][b] -= stiffness;
      matrix[b][a] -= stiffness;
    }
    hold(matrix, right, rafterLeft[0][0]);
    hold(matrix, right, rafterLeft[count - 1][0]);
    if (bears) {
      hold(matrix, right, sister[indexOf(sisterFrom)][0]);
      hold(matrix, right, sister[indexOf(sisterTo)][0]);
    }
    moved = solved(matrix, right);
    forces = new double[nails.length];
    for (int n = 0; n < nails.length; n++) {
      int i = indexOf(nails[n]);
      forces[n] = stiffness * (moved[rafterLeft[i][0]] - moved[sister[i][0]]);
    }
  }

  /** Evenly set nails between two places, both included. */
  public static double[] evenly(double from, double to, int count) {
    double[] places = new double[count];
    for (int i = 0; i < count; i++) {
      places[i] = from + (to - from) * i / (count - 1);
    }
    return places;
  }

  /** What each nail brings to the sister, down being positive. */
  public double[] forces() {
    return forces.clone();
  }

  /** How far the old beam sags at mid-span. */
  public double sag() {
    return moved[rafterLeft[indexOf(span / 2)][0]];
  }

  /** The moment in the sister, by the statics of the forces on it. */
  public double sisterMoment(double x) {
    double reaction = 0;
    if (bears) {
      for (int n = 0; n < nails.length; n++) {
        reaction += forces[n] * (span - nails[n]) / span;
      }
    }
    double moment = reaction * (x - sisterFrom);
    for (int n = 0; n < nails.length; n++) {
      moment -= forces[n] * Math.max(0, x - nails[n]);
    }
    return moment;
  }

  /** The moment in the old beam where it is sound, by the statics of the forces on it. */
  public double rafterMoment(double x) {
    double moment = load * x * (span - x) / 2;
    for (int n = 0; n < nails.length; n++) {
      double up = forces[n];
      moment -= up * (span - nails[n]) / span * x;
      moment += up * Math.max(0, x - nails[n]);
    }
    return moment;
  }

  private static List<Double> nodes(
      double span, double from, double to, double[] nails, double breakAt) {
    TreeSet<Double> all = new TreeSet<>(List.of(0.0, span / 2, span, from, to));
    if (breakAt > 0 && breakAt < span) {
      all.add(breakAt);
    }
    for (double nail : nails) {
      all.add(nail);
    }
    List<Double> apart = new ArrayList<>();
    for (double x : all) {
      if (apart.isEmpty() || x - apart.get(apart.size() - 1) > NEAR) {
        apart.add(x);
      }
    }
    return apart;
  }

  private int indexOf(double x) {
    for (int i = 0; i < nodes.size(); i++) {
      if (Math.abs(nodes.get(i) - x) < 2 * NEAR) {
        return i;
      }
    }
    throw new IllegalArgumentException("there is no node at " + x);
  }

  private static void element(
      double[][] matrix,
      double[] right,
      int[] from,
      int[] to,
      double h,
      double stiffness,
      double load) {
    int[] at = {from[0], from[1], to[0], to[1]};
    double[][] own = {
      {12, 6 * h, -12, 6 * h},
      {6 * h, 4 * h * h, -6 * h, 2 * h * h},
      {-12, -6 * h, 12, -6 * h},
      {6 * h, 2 * h * h, -6 * h, 4 * h * h}
    };
    double[] pushed = {1, h / 6, 1, -h / 6};
    for (int i = 0; i < 4; i++) {
      right[at[i]] += load * h / 2 * pushed[i];
      for (int j = 0; j < 4; j++) {
        matrix[at[i]][at[j]] += stiffness / (h * h * h) * own[i][j];
      }
    }
  }

  private static void hold(double[][] matrix, double[] right, int unknown) {
    for (int i = 0; i < right.length; i++) {
      matrix[unknown][i] = 0;
      matrix[i][unknown] = 0;
    }
    matrix[unknown][unknown] = 1;
    right[unknown] = 0;
  }

  /** Elimination with the greatest pivot of each column. */
  private static double[] solved(double[][] a, double[] b) {
    int n = b.length;
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) {
          pivot = row;
        }
      }
      double[] line = a[column];
      a[column] = a[pivot];
      a[pivot] = line;
      double value = b[column];
      b[column] = b[pivot];
      b[pivot] = value;
      for (int row = column + 1; row < n; row++) {
        double factor = a[row][column] / a[column][column];
        if (factor != 0) {
          for (int j = column; j < n; j++) {
            a[row][j] -= factor * a[column][j];
          }
          b[row] -= factor * b[column];
        }
      }
    }
    double[] x = new double[n];
    for (int row = n - 1; row >= 0; row--) {
      double rest = b[row];
      for (int j = row + 1; j < n; j++) {
        rest -= a[row][j] * x[j];
      }
      x[row] = rest / a[row][row];
    }
    return x;
  }
}
