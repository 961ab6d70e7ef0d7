package sheathwright.cutting.sheet;

import java.util.Arrays;

/**
 * Pieces that guillotine cuts can take out of one rectangle: a single piece, or two blocks side by
 * side or one above the other.
 */
final class GuillotineBlock {

  private final int[] kinds;
  private final long width;
  private final long height;
  private final long worth;
  private final long hash;
  private final GuillotineBlock first;
  private final GuillotineBlock second;

  private GuillotineBlock(
      int[] kinds,
      long width,
      long height,
      long worth,
      long hash,
      GuillotineBlock first,
      GuillotineBlock second) {
    this.kinds = kinds;
    this.width = width;
    this.height = height;
    this.worth = worth;
    this.hash = hash;
    this.first = first;
    this.second = second;
  }

  static GuillotineBlock single(int kind, SheetTask.Kind size, long worth, long hash) {
    return new GuillotineBlock(
        new int[] {kind}, size.width(), size.height(), worth, hash, null, null);
  }

  /**
   * @param kinds of both, in order
   */
  static GuillotineBlock of(
      GuillotineBlock first, GuillotineBlock second, boolean beside, int[] kinds) {
    return new GuillotineBlock(
        kinds,
        beside ? first.width + second.width : Math.max(first.width, second.width),
        beside ? Math.max(first.height, second.height) : first.height + second.height,
        first.worth + second.worth,
        first.hash + second.hash,
        first,
        second);
  }

  /** Every copy of a kind once, in order. */
  int[] kinds() {
    return kinds;
  }

  long width() {
    return width;
  }

  long height() {
    return height;
  }

  long worth() {
    return worth;
  }

  /** Equal for equal pieces. */
  long hash() {
    return hash;
  }

  /** Whether this holds the same pieces in no more room. */
  boolean replaces(GuillotineBlock other) {
    return width <= other.width && height <= other.height && Arrays.equals(kinds, other.kinds);
  }

  /** What is done with each piece of a block. */
  @FunctionalInterface
  interface Place {
    void at(int kind, long x, long y);
  }

  /** Tells where each piece lies when the block's lower left corner is at x, y. */
  void place(long x, long y, Place place) {
    if (first == null) {
      place.at(kinds[0], x, y);
      return;
    }
    first.place(x, y, place);
    boolean beside = width == first.width + second.width;
    second.place(beside ? x + first.width : x, beside ? y : y + first.height, place);
  }
}
