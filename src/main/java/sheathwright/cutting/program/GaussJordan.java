package sheathwright.cutting.program;

/** The inverse of a square matrix, by rows, with the largest pivot of each column. */
final class GaussJordan {

  private GaussJordan() {}

  /**
   * @param matrix changed into the unit matrix
   * @param inverse the unit matrix, changed into the inverse
   * @throws ArithmeticException if the matrix has no inverse
   */
  static void invert(double[][] matrix, double[][] inverse) {
    int size = matrix.length;
    for (int column = 0; column < size; column++) {
      int pivot = column;
      for (int row = column + 1; row < size; row++) {
        if (Math.abs(matrix[row][column]) > Math.abs(matrix[pivot][column])) {
          pivot = row;
        }
      }
      if (Math.abs(matrix[pivot][column]) < 1e-12) {
        throw new ArithmeticException("the matrix has no inverse");
      }
      swap(matrix, pivot, column);
      swap(inverse, pivot, column);
      double divisor = matrix[column][column];
      for (int at = 0; at < size; at++) {
        matrix[column][at] /= divisor;
        inverse[column][at] /= divisor;
      }
      for (int row = 0; row < size; row++) {
        double factor = matrix[row][column];
        if (row != column && factor != 0) {
          subtract(matrix[row], matrix[column], factor, column);
          subtract(inverse[row], inverse[column], factor, 0);
        }
      }
    }
  }

  private static void swap(double[][] matrix, int one, int other) {
    double[] row = matrix[one];
    matrix[one] = matrix[other];
    matrix[other] = row;
  }

  private static void subtract(double[] row, double[] pivotRow, double factor, int from) {
    for (int at = from; at < row.length; at++) {
      row[at] -= factor * pivotRow[at];
    }
  }
}
