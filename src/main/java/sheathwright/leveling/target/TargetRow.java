package sheathwright.leveling.target;

/**
 * What one reading, or a slope, asks of the new surface: that a sum over its variables be at least
 * so much. Rows of one kind for one reading are equal.
 *
 * @param kind what is asked
 * @param index of the reading, or the variable of the slope
 * @param factors of the variables
 * @param least that the sum must come to
 */
record TargetRow(Kind kind, int index, double[] factors, double least) {

  /** What a row asks. */
  enum Kind {
    /** The surface lies on or above the wood. */
    WOOD,
    /** The build-up is not less than is wanted. */
    LEAST,
    /** The build-up is not more than is allowed. */
    MOST,
    /** The build-up is not more than the largest. */
    LARGEST,
    /** A slope rises no more than its size. */
    RISE,
    /** A slope falls no more than its size. */
    FALL,
    /** There is no slope. */
    LEVEL
  }

  /** What the sum comes to beyond what is asked; negative where that is not met. */
  double slack(double[] values) {
    double sum = -least;
    for (int i = 0; i < factors.length; i++) {
      sum += factors[i] * values[i];
    }
    return sum;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TargetRow row && row.kind == kind && row.index == index;
  }

  @Override
  public int hashCode() {
    return 31 * kind.ordinal() + index;
  }
}
