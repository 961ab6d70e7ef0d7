package sheathwright.figure;

/**
 * What a unit measures, as whole-number powers of the bases: length, force, time, money, the
 * counts, and the level that a load is at. Eight powers are packed into one {@code long}, a byte
 * each, offset so that adding packed values adds powers.
 */
public record Dimension(long packed) {

  private static final int OFFSET = 64;
  private static final long ZERO = 0x4040404040404040L;

  /** Of a pure number. */
  public static final Dimension NONE = new Dimension(ZERO);

  /** The bases, in the order in which their powers are packed. */
  public enum Base {
    LENGTH,
    FORCE,
    TIME,
    MONEY,
    SHEET,
    NAIL,
    PIECE,
    /** Not a thing but a level: loads with their load factors in them. */
    STRENGTH
  }

  static Dimension of(Base base) {
    return new Dimension(ZERO + (1L << (8 * base.ordinal())));
  }

  /** The power of one base: 2 for the length in an area. */
  public int power(Base base) {
    return (int) (packed >>> (8 * base.ordinal()) & 0xff) - OFFSET;
  }

  Dimension times(Dimension other) {
    return new Dimension(packed + other.packed - ZERO);
  }

  Dimension dividedBy(Dimension other) {
    return new Dimension(packed - other.packed + ZERO);
  }

  Dimension raisedTo(int exponent) {
    return new Dimension((packed - ZERO) * exponent + ZERO);
  }

  boolean hasRoot(int degree) {
    for (Base base : Base.values()) {
      if (power(base) % degree != 0) {
        return false;
      }
    }
    return true;
  }

  Dimension root(int degree) {
    long root = ZERO;
    for (Base base : Base.values()) {
      root += (long) (power(base) / degree) << (8 * base.ordinal());
    }
    return new Dimension(root);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension same && packed == same.packed;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(packed);
  }
}
