package sheathwright.figure;

import java.math.BigInteger;

/** An exact ratio of whole numbers by which a number in one unit becomes a number in another. */
public record Factor(long over, long under) {

  /** Leaves a number as it is. */
  public static final Factor ONE = new Factor(1, 1);

  public Factor {
    long common = BigInteger.valueOf(over).gcd(BigInteger.valueOf(under)).longValueExact();
    over /= common;
    under /= common;
  }

  static Factor of(long over) {
    return new Factor(over, 1);
  }

  static Factor oneIn(long under) {
    return new Factor(1, under);
  }

  Factor times(Factor other) {
    Factor left = new Factor(over, other.under);
    Factor right = new Factor(other.over, under);
    return new Factor(
        Math.multiplyExact(left.over, right.over), Math.multiplyExact(left.under, right.under));
  }

  Factor dividedBy(Factor other) {
    return times(new Factor(other.under, other.over));
  }

  Factor raisedTo(int exponent) {
    Factor result = ONE;
    for (int i = 0; i < Math.abs(exponent); i++) {
      result = result.times(this);
    }
    return exponent < 0 ? ONE.dividedBy(result) : result;
  }

  /** The number after conversion, by the same multiplications that the cell formula makes. */
  public double applyTo(double number) {
    return number * over / under;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Factor same && over == same.over && under == same.under;
  }

  @Override
  public int hashCode() {
    return 31 * Long.hashCode(over) + Long.hashCode(under);
  }
}
