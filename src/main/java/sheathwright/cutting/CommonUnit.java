package sheathwright.cutting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/**
 * The largest unit of which several lengths are whole multiples, so that what fits exactly is seen
 * to fit exactly. Lengths are taken to the millionth; every binary fraction of an inch down to 1/64
 * is exact.
 */
public final class CommonUnit {

  /** Of an inch; 1/64 has six. */
  private static final int DECIMALS = 6;

  private final BigDecimal unit;

  private CommonUnit(BigDecimal unit) {
    this.unit = unit;
  }

  /** The common unit of these lengths; zeros do not matter. */
  public static CommonUnit of(double... lengths) {
    BigInteger common =
        DoubleStream.of(lengths)
            .mapToObj(length -> scaled(length).unscaledValue())
            .reduce(BigInteger.ZERO, BigInteger::gcd);
    BigInteger unit = common.signum() == 0 ? BigInteger.ONE : common;
    return new CommonUnit(new BigDecimal(unit, DECIMALS));
  }

  /** A length in units. */
  public long units(double length) {
    return scaled(length).divide(unit, 0, RoundingMode.HALF_UP).longValueExact();
  }

  /** The length of so many units. */
  public double length(long units) {
    return unit.multiply(BigDecimal.valueOf(units)).doubleValue();
  }

  /** The largest number that divides all of these; 0 if there are none but zeros. */
  public static long divisor(long... numbers) {
    return LongStream.of(numbers)
        .reduce(0, (a, b) -> BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValue());
  }

  private static BigDecimal scaled(double length) {
    return new BigDecimal(length).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
