package sheathwright.cutting.sheet;

import java.util.Arrays;

/**
 * A stock that is being filled: the pieces on it and its free rectangles. Every piece is put into
 * the corner of a free rectangle, and one whole cut parts the rest in two, so the pieces can always
 * be taken out by guillotine cuts.
 */
final class PackedSheet {

  /** How the rest beside and above a piece is parted. */
  enum Split {
    /** The rectangle beside the piece is as high as the piece. */
    LOW_BESIDE,
    /** The rectangle beside the piece is as high as the free one. */
    HIGH_BESIDE,
    /** The one of both that leaves the largest rectangle. */
    LARGEST_REST,
    /** The one of both that leaves the smaller one of the two as small as it can be. */
    SHORTER_SIDE
  }

  private final int stock;
  private int pieces;
  private int[] kind = new int[8];
  private long[] x = new long[8];
  private long[] y = new long[8];
  private int frees;
  private long[][] free = new long[8][];
  private double filled;

  PackedSheet(int stock, SheetTask.Stock size) {
    this.stock = stock;
    addFree(0, 0, size.width(), size.height());
  }

  /**
   * A pattern laid out, without free rectangles. Its kinds become those of the whole order.
   *
   * @param wanted of each kind of the task; pieces beyond are left out, the others counted off
   */
  PackedSheet(SheetTask task, SheetPattern pattern, int[] wanted) {
    stock = pattern.stock();
    pattern
        .block()
        .place(
            0,
            0,
            (placed, left, low) -> {
              if (wanted[placed] > 0) {
                wanted[placed]--;
                put(task.origin(placed), task.kinds().get(placed), left, low);
              }
            });
  }

  PackedSheet(PackedSheet other) {
    stock = other.stock;
    pieces = other.pieces;
    kind = other.kind.clone();
    x = other.x.clone();
    y = other.y.clone();
    frees = other.frees;
    free = other.free.clone();
    filled = other.filled;
  }

  /** The same with the kinds of the whole order instead of those of a task. */
  PackedSheet renamed(SheetTask task) {
    PackedSheet renamed = new PackedSheet(this);
    for (int piece = 0; piece < pieces; piece++) {
      renamed.kind[piece] = task.origin(kind[piece]);
    }
    return renamed;
  }

  private void addFree(long left, long low, long width, long height) {
    if (width <= 0 || height <= 0) {
      return;
    }
    if (frees == free.length) {
      free = Arrays.copyOf(free, 2 * frees);
    }
    free[frees++] = new long[] {left, low, width, height};
  }

  private void put(int placed, SheetTask.Kind size, long left, long low) {
    if (pieces == kind.length) {
      kind = Arrays.copyOf(kind, 2 * pieces);
      x = Arrays.copyOf(x, 2 * pieces);
      y = Arrays.copyOf(y, 2 * pieces);
    }
    kind[pieces] = placed;
    x[pieces] = left;
    y[pieces] = low;
    pieces++;
    filled += (double) size.width() * size.height();
  }

  /**
   * How badly a piece fits the best free rectangle.
   *
   * @param byArea area left free, else the shorter side left free
   * @return infinite if it fits none
   */
  double misfit(SheetTask.Kind size, boolean byArea) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = 0; at < frees; at++) {
      least = Math.min(least, misfit(at, size, byArea));
    }
    return least;
  }

  private double misfit(int at, SheetTask.Kind size, boolean byArea) {
    long wide = free[at][2] - size.width();
    long high = free[at][3] - size.height();
    if (wide < 0 || high < 0) {
      return Double.POSITIVE_INFINITY;
    }
    return byArea
        ? (double) free[at][2] * free[at][3] - (double) size.width() * size.height()
        : Math.min(wide, high);
  }

  /** Puts a piece into its best free rectangle; it must fit one. */
  void add(int placed, SheetTask.Kind size, boolean byArea, Split split) {
    int best = 0;
    for (int at = 1; at < frees; at++) {
      if (misfit(at, size, byArea) < misfit(best, size, byArea)) {
        best = at;
      }
    }
    long[] room = free[best];
    free[best] = free[--frees];
    put(placed, size, room[0], room[1]);
    long wide = room[2] - size.width();
    long high = room[3] - size.height();
    boolean low =
        switch (split) {
          case LOW_BESIDE -> true;
          case HIGH_BESIDE -> false;
          case LARGEST_REST ->
              Math.max((double) wide * size.height(), (double) high * room[2])
                  >= Math.max((double) wide * room[3], (double) high * size.width());
          case SHORTER_SIDE -> wide <= high;
        };
    addFree(room[0] + size.width(), room[1], wide, low ? size.height() : room[3]);
    addFree(room[0], room[1] + size.height(), low ? room[2] : size.width(), high);
  }

  int stock() {
    return stock;
  }

  int pieces() {
    return pieces;
  }

  int kind(int piece) {
    return kind[piece];
  }

  long x(int piece) {
    return x[piece];
  }

  long y(int piece) {
    return y[piece];
  }

  /** Area of the pieces, kerf included. */
  double filled() {
    return filled;
  }
}
