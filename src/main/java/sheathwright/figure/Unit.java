package sheathwright.figure;

/**
 * A unit of measure: how it is written, how many base units it holds, and what it measures.
 *
 * @param symbol as printed after a number: {@code in}, {@code sq ft}, {@code $/sheet}
 * @param suffix as it ends a column or cell name: {@code in}, {@code sf}, {@code usd}; empty for
 *     counts and ratios
 * @param factor how many base units (inch, pound, hour, dollar, one of a count) it holds, exactly
 * @param dimension what it measures
 * @param decimals how many decimals a person wants to read
 */
public record Unit<Q extends Quantity>(
    String symbol, String suffix, Factor factor, Dimension dimension, int decimals) {

  /** The exact factor that turns a number in this unit into a number in the other. */
  public Factor to(Unit<?> other) {
    return factor.dividedBy(other.factor);
  }

  boolean measuresTheSameAs(Unit<?> other) {
    return dimension.equals(other.dimension);
  }

  Unit<?> times(Unit<?> other) {
    return Units.named(
        symbol + "·" + other.symbol, factor.times(other.factor), dimension.times(other.dimension));
  }

  Unit<?> dividedBy(Unit<?> other) {
    return Units.named(
        symbol + " per " + other.symbol,
        factor.dividedBy(other.factor),
        dimension.dividedBy(other.dimension));
  }

  Unit<?> raisedTo(int exponent) {
    return Units.named(
        "(" + symbol + ")^" + exponent, factor.raisedTo(exponent), dimension.raisedTo(exponent));
  }

  /** As it is said after "a number of": {@code inches}, {@code sheets}. */
  public String spoken() {
    return equals(Units.INCH)
        ? "inches"
        : equals(Units.FOOT)
            ? "feet"
            : isCount() ? symbol + "s" : symbol.equals("$") ? "dollars" : symbol;
  }

  /** Whether it counts things, so that its symbol is a word that takes a plural. */
  public boolean isCount() {
    return (suffix.isEmpty() || suffix.equals(symbol + "s"))
        && !symbol.isEmpty()
        && symbol.chars().allMatch(Character::isLetter);
  }

  @Override
  public String toString() {
    return symbol;
  }

  /**
   * What a record makes by itself says the same, but the first that a program asks for takes Java a
   * tenth of a second: what every start compares has its own, here and in {@link Factor} and {@link
   * Dimension}.
   */
  @Override
  public boolean equals(Object other) {
    return other instanceof Unit<?> same
        && symbol.equals(same.symbol)
        && suffix.equals(same.suffix)
        && factor.equals(same.factor)
        && dimension.equals(same.dimension)
        && decimals == same.decimals;
  }

  @Override
  public int hashCode() {
    int hash = 31 * symbol.hashCode() + suffix.hashCode();
    return 31 * (31 * (31 * hash + factor.hashCode()) + dimension.hashCode()) + decimals;
  }
}
