package sheathwright.cutting.stick;

import java.util.Arrays;

/**
 * One way to cut one stick.
 *
 * @param stock which stock
 * @param piece lengths that are cut, as indexes into the problem, longest first
 * @param count how many of each, 1 or more
 */
record StickPattern(int stock, int[] piece, int[] count) {

  /** The most sticks worth cutting this way: after so many, all its pieces are there. */
  int most(int[] demand) {
    int most = 0;
    for (int i = 0; i < piece.length; i++) {
      most = Math.max(most, (demand[piece[i]] + count[i] - 1) / count[i]);
    }
    return most;
  }

  /** How many of a length it cuts. */
  int countOf(int length) {
    int at = Arrays.binarySearch(piece, length);
    return at < 0 ? 0 : count[at];
  }

  /** What its pieces are worth together. */
  long worth(long[] worthOfPiece) {
    long worth = 0;
    for (int i = 0; i < piece.length; i++) {
      worth += worthOfPiece[piece[i]] * count[i];
    }
    return worth;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StickPattern that
        && stock == that.stock
        && Arrays.equals(piece, that.piece)
        && Arrays.equals(count, that.count);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * stock + Arrays.hashCode(piece)) + Arrays.hashCode(count);
  }
}
